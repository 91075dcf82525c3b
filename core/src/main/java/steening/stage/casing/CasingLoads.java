package steening.stage.casing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.reckoning.Term;
import steening.stage.Load;
import steening.well.Plan;
import steening.well.Well;

/** Joints of 20 ft and one to spare (common practice, no source), the screen, the sump and its cap. */
final class CasingLoads {
  private static final int SPARE = 1;

  private CasingLoads() {}

  static List<Load> of(Well well) {
    Plan plan = well.get(Plan.PART);
    Optional<Length> top = plan.length(Plan.SCREEN_TOP);
    Optional<Length> bottom = plan.length(Plan.SCREEN_BOTTOM);
    Optional<Length> outside = plan.length(Plan.CASING_OUTSIDE);
    if (top.isEmpty() || bottom.isEmpty() || outside.isEmpty()) return List.of();
    Outcome joints = joints(plan, top.get());
    Figure across = new Figure(outside.get(), Scale.DIAMETER);
    List<Load> loads = new ArrayList<>();
    loads.add(new Load(
        Phrase.of(
            "joints of casing {0}, {1} each, one to spare", "tubos de ademe de {0}, de {1}, con uno de repuesto",
            across, depth(ToCome.USUAL_JOINT)),
        joints.figure("joints"),
        Optional.of(joints)));
    loads.add(new Load(screen(plan, across), depth(bottom.get().minus(top.get())), Optional.empty()));
    plan.length(Plan.SUMP).filter(s -> s.isMoreThan(Length.ZERO)).ifPresent(sump -> loads.add(new Load(
        Phrase.of("sump and cap {0}", "tramo ciego inferior y tapón de {0}", across), depth(sump), Optional.empty())));
    return loads;
  }

  private static Phrase screen(Plan plan, Figure across) {
    return plan.length(Plan.SLOT)
        .map(slot ->
            Phrase.of("screen {0}, slot {1}", "rejilla de {0}, ranura {1}", across, new Figure(slot, Scale.SLOT)))
        .orElse(Phrase.of("screen {0}", "rejilla de {0}", across));
  }

  /** All that stands above the screen. */
  private static Outcome joints(Plan plan, Length screenTop) {
    Term casing = Term.given("Y", Plan.SCREEN_TOP.label(), Scale.DEPTH, screenTop)
        .plus(Term.given("a", Plan.STICK_UP.label(), Scale.DEPTH, plan.length(Plan.STICK_UP).orElse(Length.ZERO)))
        .named("R", Phrase.of("casing above the screen", "ademe sobre la rejilla"), Scale.DEPTH);
    Term joint =
        Term.given("l", Phrase.of("length of a joint", "longitud de un tubo"), Scale.DEPTH, ToCome.USUAL_JOINT);
    Term joints = casing.over(joint).roundedUp()
        .plus(Inputs.count("r", Phrase.of("joints to spare", "tubos de repuesto"), SPARE))
        .named("N", Phrase.of("joints to load", "tubos por cargar"), Scale.NUMBER);
    return Outcome.empty().with("joints", joints);
  }

  private static Figure depth(Length length) {
    return CasingFindings.depth(length);
  }
}
