package steening.stage.disinfection;

import java.util.Optional;
import steening.language.Phrase;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.reckoning.Outcome;
import steening.reckoning.Term;
import steening.well.Well;

/** What the chlorine put in makes of the water in the well. */
final class Reached {
  static final String CONCENTRATION = "concentration";

  private Reached() {}

  static Outcome outcome(Term concentration) {
    return Outcome.empty().with(
        CONCENTRATION,
        concentration.named("c", Phrase.of("chlorine reached in the well", "cloro alcanzado en el pozo"),
            Scale.CONCENTRATION));
  }

  /** Absent where the dose is not one amount of its product, or the water is not known. */
  static Optional<Outcome> of(Well well, Dosing.Dose dose) {
    Optional<Term> water = WaterInWell.of(well).outcome().map(o -> o.term(WaterToTreat.WATER.name()));
    Optional<Quantity> measured = dose.measured();
    if (water.isEmpty() || measured.isEmpty()) return Optional.empty();
    return Optional.of(dose.isDry()
        ? DryChlorineDose.reached(water.get(), measured.get(), dose.strength())
        : DisinfectionDose.reached(water.get(), measured.get(), dose.strength()));
  }
}
