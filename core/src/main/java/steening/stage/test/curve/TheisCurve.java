package steening.stage.test.curve;

import steening.quantity.Scale;
import steening.reckoning.Coefficient;
import steening.reckoning.Term;

/** The drawdown of Theis as terms: u = r² S / (4 T t), s = Q W(u) / (4 π T). */
public final class TheisCurve {
  static final double FOUR_PI = 12.566370614359172;

  private TheisCurve() {}

  public static Term u(Term distance, Term storativity, Term transmissivity, Term minutes) {
    return Coefficient.giving(Scale.NUMBER, 0.25)
        .of(Scale.DISTANCE, 2).of(Scale.TRANSMISSIVITY, -1).of(Scale.MINUTES, -1).term()
        .times(distance.squared()).times(storativity).over(transmissivity.times(minutes));
  }

  /** c = B² / T. */
  static Term resistance(Term factor, Term transmissivity) {
    return Coefficient.giving(Scale.DAYS, 1).of(Scale.DISTANCE, 2).of(Scale.TRANSMISSIVITY, -1).term()
        .times(factor.squared()).over(transmissivity);
  }

  public static Term drawdown(Term rate, Term transmissivity, Term wellFunction) {
    return Coefficient.giving(Scale.DEPTH, 1 / FOUR_PI).of(Scale.FLOW).of(Scale.TRANSMISSIVITY, -1).term()
        .times(rate).over(transmissivity).times(wellFunction);
  }
}
