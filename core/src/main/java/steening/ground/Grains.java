package steening.ground;

import java.util.Optional;
import steening.language.Phrase;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Coefficient;
import steening.reckoning.NotReckonable;
import steening.reckoning.Term;

/**
 * What the formulas from grain size to conductivity take.
 *
 * <p>n = 0.255 (1 + 0.83^Cu). Source: Vukovic and Soro 1992 (memory).
 *
 * @param n porosity, from the uniformity coefficient
 */
record Grains(Term effective, Optional<Term> twenty, Term sixty, Term viscosity, Term uniformity, Term n) {
  static final Phrase POROSITY = Phrase.of("porosity, from Cu", "porosidad, según Cu");

  /** Standard gravity, m/s², exact by definition. */
  private static final double GRAVITY_M_S2 = 9.80665;

  static Grains of(Term effective, Optional<Term> twenty, Term sixty, Term viscosity) {
    double smallest = millimetres(effective);
    double middle = twenty.map(Grains::millimetres).orElse(smallest);
    if (middle < smallest || millimetres(sixty) < middle) {
      throw new NotReckonable(
          "D10, D20 and D60 are percent finer, so each is as large as the one before or larger.",
          "D10, D20 y D60 son de porcentaje que pasa: cada uno es igual al anterior o mayor.");
    }
    Term uniformity =
        sixty.over(effective).named("Cu", SieveCurve.UNIFORMITY.label(), SieveCurve.UNIFORMITY.scale());
    Term porosity = Term.number(0.255).times(Term.number(1).plus(Term.number(0.83).power(uniformity)))
        .named("n", POROSITY, Scale.NUMBER);
    return new Grains(effective, twenty, sixty, viscosity, uniformity, porosity);
  }

  double d10() {
    return millimetres(effective);
  }

  Optional<Term> d20() {
    return twenty;
  }

  double d60() {
    return millimetres(sixty);
  }

  double cu() {
    return uniformity.quantity().coherent();
  }

  /** (g / ν) C f D10². */
  Term byViscosity(double factor, Term function) {
    return Coefficient.giving(Scale.CONDUCTIVITY, GRAVITY_M_S2 * factor)
        .of(Scale.GRAIN, 2).of(Scale.VISCOSITY, -1).term()
        .times(function).times(effective.squared()).over(viscosity);
  }

  private static double millimetres(Term size) {
    return size.quantity().in(Unit.MILLIMETRE);
  }
}
