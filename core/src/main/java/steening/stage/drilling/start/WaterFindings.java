package steening.stage.drilling.start;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.finding.Expectation;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Outcome;
import steening.reckoning.Term;
import steening.stage.drilling.DrillingStage;

/**
 * Water for the mud: clean, and with chlorine left in it.
 *
 * <p>At least 1.0 mg/L from a public supply, 3.0 from other drinking water, at most 25 units of turbidity: COMAR
 * 26.04.04.16 (seen). No surface water: South Carolina R.61-71 (seen). Rules there, good practice elsewhere.
 */
final class WaterFindings {
  private static final Quantity PUBLIC = Measure.of(1.0, Unit.MILLIGRAM_PER_LITRE);
  private static final Quantity OTHER = Measure.of(3.0, Unit.MILLIGRAM_PER_LITRE);
  private static final Quantity CLOUDY = Measure.of(25, Unit.NTU);
  private static final Phrase RESIDUAL = Phrase.of("chlorine residual asked for", "cloro residual que se pide");

  private WaterFindings() {}

  static List<Finding> of(Start.Water water) {
    List<Finding> findings = new ArrayList<>();
    if (water.source().equals("surface")) findings.add(surface(water));
    else residual(water).ifPresent(findings::add);
    cloudy(water).ifPresent(findings::add);
    return findings;
  }

  /** Before anybody measured it: what a public supply must bring. */
  static Expectation residual() {
    Term asked = Term.given("c", RESIDUAL, Scale.CONCENTRATION, PUBLIC);
    Outcome least = Outcome.empty().with("least", asked.named("C", RESIDUAL, Scale.CONCENTRATION));
    return new Expectation(
        Phrase.of(
            "water for the mud, from where and with how much chlorine: at least",
            "agua para el lodo, de dónde y con cuánto cloro: por lo menos"),
        least.figure("least"), Optional.empty(), least);
  }

  private static Finding surface(Start.Water water) {
    return look("drilling.water-surface", water, Phrase.of(
            "The mud is made with surface water, which one rule forbids (South Carolina R.61-71).",
            "El lodo se hace con agua superficial, que una norma prohíbe (Carolina del Sur R.61-71)."))
        .so(Phrase.of(
            "Haul drinking water, or ask the authority; chlorinate it and measure what is left.",
            "Traiga agua potable o pregunte a la autoridad; clórela y mida lo que queda."));
  }

  private static Optional<Finding> residual(Start.Water water) {
    Figure least = new Figure(water.source().equals("public") ? PUBLIC : OTHER, Scale.CONCENTRATION);
    if (water.chlorine().isEmpty()) {
      return Optional.of(look("drilling.water-unmeasured", water, Phrase.of(
              "The chlorine left in the mud's water is not written down; {0} is asked for (COMAR 26.04.04.16).",
              "No se anotó el cloro residual del agua para el lodo; se piden {0} (COMAR 26.04.04.16).", least))
          .so(Phrase.of("Measure it before the mud is mixed.", "Mídalo antes de mezclar el lodo.")));
    }
    if (water.chlorine().get().coherent() >= least.quantity().coherent()) return Optional.empty();
    Figure measured = new Figure(water.chlorine().get(), Scale.CONCENTRATION);
    return Optional.of(look("drilling.water-chlorine", water, Phrase.of(
            "The mud's water carries {0} of chlorine; {1} is asked for (COMAR 26.04.04.16).",
            "El agua para el lodo lleva {0} de cloro; se piden {1} (COMAR 26.04.04.16).", measured, least))
        .comparing(measured, least)
        .so(Phrase.of(
            "Add bleach to the water, never to acid or ammonia, and measure again; see your own rule.",
            "Agregue hipoclorito al agua, nunca a ácido o amoniaco, y mida otra vez; vea su norma.")));
  }

  private static Optional<Finding> cloudy(Start.Water water) {
    if (water.turbidity().filter(t -> t.coherent() > CLOUDY.coherent()).isEmpty()) return Optional.empty();
    Figure measured = new Figure(water.turbidity().get(), Scale.TURBIDITY);
    Figure most = new Figure(CLOUDY, Scale.TURBIDITY);
    return Optional.of(look("drilling.water-cloudy", water, Phrase.of(
            "The mud's water is at {0}; {1} is the most allowed in one rule (COMAR 26.04.04.16).",
            "El agua para el lodo tiene {0}; una norma admite {1} a lo más (COMAR 26.04.04.16).", measured, most))
        .comparing(measured, most)
        .so(Phrase.of("Let it settle, or haul other water.", "Déjela asentar o traiga otra agua.")));
  }

  private static Finding look(String code, Start.Water water, Phrase text) {
    return Finding.of(code, Weight.LOOK, DrillingStage.NAME, text).from(List.of(water.entry()));
  }
}
