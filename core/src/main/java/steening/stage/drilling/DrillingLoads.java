package steening.stage.drilling;

import java.util.List;
import java.util.Optional;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Mass;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Outcome;
import steening.reckoning.Term;
import steening.stage.Load;
import steening.stage.drilling.fluid.PitVolume;
import steening.well.Plan;
import steening.well.Well;

/** Bit, bentonite and water for the planned hole. */
final class DrillingLoads {
  /** Common practice, no source. */
  private static final Mass BAG = Mass.of(50, Unit.POUND);

  private DrillingLoads() {}

  static List<Load> of(Well well) {
    Plan plan = well.get(Plan.PART);
    if (plan.hole().isEmpty()) return List.of();
    Outcome pit = PitVolume.of(plan.hole(), plan.length(Plan.DEPTH).orElseThrow());
    Outcome bags = pit.with("bags", bags(pit.term("bentonite")));
    return List.of(
        new Load(
            Phrase.of("drill bit", "barrena"),
            new Figure(plan.length(Plan.HOLE).orElseThrow(), Scale.DIAMETER),
            Optional.empty()),
        new Load(
            Phrase.of(
                "bags of drilling bentonite, {0} each", "sacos de bentonita de perforación, de {0}",
                new Figure(BAG, Scale.WEIGHT)),
            bags.figure("bags"),
            Optional.of(bags)),
        new Load(Phrase.of("water for the mud", "agua para el lodo"), pit.figure("mud"), Optional.of(pit)));
  }

  private static Term bags(Term bentonite) {
    return bentonite
        .over(Term.given("b", Phrase.of("weight of a bag", "peso de un saco"), Scale.WEIGHT, BAG))
        .roundedUp()
        .named("N", Phrase.of("bags of bentonite", "sacos de bentonita"), Scale.NUMBER);
  }
}
