package steening.ground;

import java.util.List;
import steening.field.ChoiceField;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Scale;
import steening.reckoning.Answer;
import steening.reckoning.Coefficient;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.reckoning.Term;

/**
 * What a sand of some thickness gives, roughly.
 *
 * <p>T = K b; specific capacity T / 2000 confined, T / 1500 unconfined, gpd/ft to gpm/ft (Driscoll 1986, memory).
 * Accuracy: × or ÷ 3 (common practice, no source).
 */
final class SandYield {
  static final QuantityField SAND = QuantityField.of(
          "thickness", Scale.DEPTH, Phrase.of("thickness of the sand", "espesor de la arena"), "20 ft", "6 m")
      .between("0.1 ft", "5000 ft").usually("1 ft", "500 ft");
  static final QuantityField THICKNESS = SAND.optional();
  static final ChoiceField AQUIFER = ChoiceField.of(
          "aquifer", Phrase.of("aquifer", "acuífero"),
          ChoiceField.option("confined", "confined", "confinado"),
          ChoiceField.option("unconfined", "unconfined", "libre"))
      .optional();

  static final Answer TRANSMISSIVITY = new Answer(
      "transmissivity", Phrase.of("transmissivity", "transmisividad"), Scale.TRANSMISSIVITY);
  static final Answer CAPACITY =
      capacity("specific-capacity", "specific capacity, rough", "capacidad específica, aproximada");
  static final Answer LEAST =
      capacity("specific-capacity-least", "specific capacity, ÷ 3", "capacidad específica, ÷ 3");
  static final Answer MOST = capacity("specific-capacity-most", "specific capacity, × 3", "capacidad específica, × 3");
  static final List<Answer> ANSWERS = List.of(TRANSMISSIVITY, CAPACITY, LEAST, MOST);

  private static final Phrase ASSUMED = Phrase.of(
      "Taken as confined; unconfined, the specific capacity would be a third more.",
      "Se toma como confinado; si es libre, la capacidad específica sería un tercio mayor.");

  static final double THREEFOLD = 3;

  /** T / 2000 in gpd/ft and gpm/ft, as a ratio of like units: minutes in a day over the factor. */
  private static final double CONFINED = 1440.0 / 2000;

  private static final double UNCONFINED = 1440.0 / 1500;

  private SandYield() {}

  static Outcome added(Outcome outcome, Term conductivity, Inputs inputs) {
    if (inputs.find(THICKNESS).isEmpty()) return outcome;
    return added(outcome, conductivity, inputs.given("b", THICKNESS), inputs);
  }

  static Outcome added(Outcome outcome, Term conductivity, Term thickness, Inputs inputs) {
    Term transmissivity = Coefficient.giving(Scale.TRANSMISSIVITY, 1).of(Scale.CONDUCTIVITY).of(Scale.DEPTH).term()
        .times(conductivity)
        .times(thickness)
        .named("T", TRANSMISSIVITY.label(), TRANSMISSIVITY.scale());
    boolean unconfined = inputs.find(AQUIFER).map(o -> o.code().equals("unconfined")).orElse(false);
    Term capacity = Coefficient.giving(Scale.SPECIFIC_CAPACITY, unconfined ? UNCONFINED : CONFINED)
        .of(Scale.TRANSMISSIVITY).term()
        .times(transmissivity)
        .named("c", CAPACITY.label(), CAPACITY.scale());
    Outcome with = inputs.find(AQUIFER).isPresent() ? outcome : outcome.remarking(ASSUMED);
    return with
        .with(TRANSMISSIVITY.name(), transmissivity)
        .with(CAPACITY.name(), capacity)
        .with(LEAST.name(), capacity.over(THREEFOLD).named("c₁", LEAST.label(), LEAST.scale()))
        .with(MOST.name(), capacity.times(THREEFOLD).named("c₂", MOST.label(), MOST.scale()));
  }

  private static Answer capacity(String name, String english, String spanish) {
    return new Answer(name, Phrase.of(english, spanish), Scale.SPECIFIC_CAPACITY);
  }
}
