package steening.aquifer;

import steening.number.Elementary;

/**
 * The well function of a leaky aquifer whose cap stores no water, W(u, r/B): the integral of e^(−y − (r/B)² / (4 y)) / y
 * from u on; u = r² S / (4 T t), B = √(T c), c the resistance of the cap.
 *
 * <p>Source: Hantush and Jacob 1955; the parts below and above y = r/(2B) mirror each other, so that only the upper one
 * is ever worked out: by the series in E₂, E₃, … where u is below 1, else by Gauss's rule. Accuracy: 1e-12 times the
 * value at u below 1, 1e-11 above.
 */
public final class Hantush {
  private static final int PANELS = 8;

  /** Half of Gauss's rule of ten points: places and weights, symmetric about the middle (to 16 digits, by definition). */
  private static final double[] PLACES = {
    0.1488743389816312, 0.4333953941292472, 0.6794095682990244, 0.8650633666889845, 0.9739065285171717
  };
  private static final double[] WEIGHTS = {
    0.2955242247147529, 0.2692667193099964, 0.2190863625159820, 0.1494513491505806, 0.0666713443086881
  };

  private Hantush() {}

  /**
   * W(u, r/B).
   *
   * @param u zero or above; zero is the end, when leakage gives all that is pumped
   * @param ratio r/B, zero or above; zero is no leakage
   * @return NaN where there is no such value
   */
  public static double w(double u, double ratio) {
    if (!(u >= 0) || !(ratio >= 0) || u + ratio == 0) return Double.NaN;
    if (ratio == 0) return Theis.w(u);
    double half = ratio / 2;
    if (u >= half) return upper(u, half * half);
    double whole = 2 * BesselK.k0(ratio);
    if (u == 0) return whole;
    return whole - upper(half * half / u, half * half);
  }

  /** From u on, where u is at least the root of c; so c / u is at most u. */
  private static double upper(double u, double c) {
    return u < 1 ? series(u, c / u) : byGauss(u, c);
  }

  /** The sum of (−z)ⁿ / n! Eₙ₊₁(u), for z up to u up to 1. */
  private static double series(double u, double z) {
    double exponential = Elementary.exp(-u);
    double integral = Theis.w(u);
    double power = 1;
    double sum = integral;
    for (int n = 1; n < 30; n++) {
      integral = (exponential - u * integral) / n;
      power *= -z / n;
      double term = power * integral;
      sum += term;
      if (Math.abs(term) < 1e-17 * sum) return sum;
    }
    return sum;
  }

  /** With y = u eᵗ, so that the panels are narrow where the integrand is high. */
  private static double byGauss(double u, double c) {
    // the exponent falls as s, and as s² / u where c / u is near u; beyond this it is nothing
    double reach = 42 + Elementary.sqrt(42 * u);
    double width = Elementary.ln(1 + reach / u) / PANELS;
    double sum = 0;
    for (int panel = 0; panel < PANELS; panel++) {
      double middle = (panel + 0.5) * width;
      for (int i = 0; i < PLACES.length; i++) {
        double off = PLACES[i] * width / 2;
        sum += WEIGHTS[i] * (at(u, c, middle - off) + at(u, c, middle + off));
      }
    }
    return sum * width / 2;
  }

  private static double at(double u, double c, double t) {
    double y = u * Elementary.exp(t);
    return Elementary.exp(-y - c / y);
  }
}
