package steening.ground;

import java.util.Optional;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Dimension;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Answer;
import steening.reckoning.Coefficient;
import steening.reckoning.Inputs;
import steening.reckoning.Term;

/**
 * Hazen's rule as it is used in the head: K = C D10², K in cm/s, D10 in cm, C 40 for poorly sorted fine sand to 150 for
 * well sorted coarse sand, 100 between (memory). Range as for the whole formula: D10 0.1 to 3 mm. Accuracy: that of C.
 */
final class SimpleHazen {
  static final QuantityField FACTOR = QuantityField.of(
          "hazen-factor", Scale.NUMBER,
          Phrase.of("factor C of Hazen's simple rule", "factor C de la regla simple de Hazen"), "100", "100")
      .between("1", "1000").usually("40", "150").optional();

  static final Answer CONDUCTIVITY = new Answer(
      "simple-hazen", Phrase.of("K by Hazen's simple rule", "K según la regla simple de Hazen"), Scale.CONDUCTIVITY);

  static final Phrase LEFT_OUT = Phrase.of(
      "Hazen's simple rule is left out; it holds for D10 0.1 to 3 mm.",
      "La regla simple de Hazen queda fuera; vale para D10 de 0.1 a 3 mm.");

  private static final Quantity USUAL = new Measure(Dimension.NUMBER, 100);

  /** C is per centimetre and second: 100 in coherent units. */
  private static final double PER_CENTIMETRE = 100;

  private SimpleHazen() {}

  static Optional<Term> of(Inputs inputs, Term effective) {
    double millimetres = effective.quantity().in(Unit.MILLIMETRE);
    if (millimetres <= 0.1 || millimetres >= 3) return Optional.empty();
    Term conductivity = Coefficient.giving(Scale.CONDUCTIVITY, PER_CENTIMETRE).of(Scale.GRAIN, 2).term()
        .times(inputs.given("C", FACTOR, USUAL))
        .times(effective.squared());
    return Optional.of(conductivity.named("Km", CONDUCTIVITY.label(), CONDUCTIVITY.scale()));
  }
}
