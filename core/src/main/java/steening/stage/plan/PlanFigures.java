package steening.stage.plan;

import java.util.List;
import java.util.Optional;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Scale;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.reckoning.Term;
import steening.well.Plan;

/** What follows from the numbers of a plan by adding and taking away; empty where one of them is absent. */
final class PlanFigures {
  static final String EACH_SIDE = "each-side";
  static final String STRING_LENGTH = "string-length";
  static final String STRING_BOTTOM = "string-bottom";
  static final Phrase EACH_SIDE_LABEL = Phrase.of("annulus on each side", "espacio anular por lado");
  static final Phrase STRING_LENGTH_LABEL = Phrase.of("length of the casing string", "longitud de la columna de ademe");
  static final Phrase STRING_BOTTOM_LABEL = Phrase.of("bottom of the casing string", "fondo de la columna de ademe");

  private PlanFigures() {}

  /** b = (D − d)/2: D hole, d outside of the casing, when the casing hangs in the middle. */
  static Optional<Outcome> eachSide(Plan plan) {
    if (!isGiven(plan, List.of(Plan.HOLE, Plan.CASING_OUTSIDE))) return Optional.empty();
    Inputs inputs = Inputs.of(plan.body());
    Term side = inputs.given("D", Plan.HOLE).minus(inputs.given("d", Plan.CASING_OUTSIDE)).over(2)
        .named("b", EACH_SIDE_LABEL, Scale.DIAMETER);
    return Optional.of(Outcome.empty().with(EACH_SIDE, side));
  }

  /** From the cap to the top above ground: screen bottom, sump and stick-up. */
  static Optional<Outcome> string(Plan plan) {
    if (!isGiven(plan, List.of(Plan.SCREEN_BOTTOM, Plan.SUMP, Plan.STICK_UP))) return Optional.empty();
    Inputs inputs = Inputs.of(plan.body());
    Term bottom = inputs.given("z", Plan.SCREEN_BOTTOM).plus(inputs.given("s", Plan.SUMP))
        .named("B", STRING_BOTTOM_LABEL, Scale.DEPTH);
    Term length = bottom.plus(inputs.given("u", Plan.STICK_UP)).named("L", STRING_LENGTH_LABEL, Scale.DEPTH);
    return Optional.of(Outcome.empty().with(STRING_BOTTOM, bottom).with(STRING_LENGTH, length));
  }

  private static boolean isGiven(Plan plan, List<QuantityField> fields) {
    return fields.stream().allMatch(f -> plan.amount(f).isPresent());
  }
}
