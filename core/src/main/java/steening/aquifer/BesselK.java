package steening.aquifer;

import steening.number.Elementary;

/**
 * The modified Bessel functions of the second kind K₀ and K₁: the integrals of e^(−x cosh t) and of it times cosh t,
 * from t = 0 on, by the trapezoidal rule, which is exact to the last digits for what falls off so fast.
 *
 * <p>Source: definition. Range: x from 1e-12 to 700. Accuracy: 1e-14 times the value.
 */
final class BesselK {
  private static final double STEP = 0.125;
  /** e^−x below this is nothing beside what was added before. */
  private static final double GONE = 42;

  private BesselK() {}

  static double k0(double x) {
    return sum(x, false);
  }

  static double k1(double x) {
    return sum(x, true);
  }

  private static double sum(double x, boolean first) {
    double scale = Elementary.exp(-x);
    double sum = 0.5;
    double grow = Elementary.exp(STEP);
    double up = 1;
    // cosh t − 1 = (e^t + e^−t) / 2 − 1; the factor e^−x stands before the sum, so that it does not vanish early
    for (int i = 1; ; i++) {
      up *= grow;
      double cosh = (up + 1 / up) / 2;
      double fall = x * (cosh - 1);
      if (fall > GONE) return STEP * scale * sum;
      double term = Elementary.exp(-fall);
      sum += first ? term * cosh : term;
    }
  }
}
