package steening.number;

import org.hipparchus.util.FastMath;

/**
 * Student's t distribution for whole degrees of freedom, with the same bits on every platform.
 *
 * <p>With θ = arctan(t / √ν) the chance of lying between −t and t is, ν even, sin θ (1 + ½ cos²θ + (1·3)/(2·4) cos⁴θ +
 * …), up to cos^(ν−2); ν odd, 2/π (θ + sin θ (cos θ + ⅔ cos³θ + …)), up to cos^(ν−2).
 *
 * <p>Source: Abramowitz and Stegun, Handbook of Mathematical Functions, 26.7.3 and 26.7.4 (memory). Range: ν from 1.
 * Accuracy: 1e-15 of the chance; a tail smaller than that is noise, never below zero.
 */
public final class StudentT {
  private static final double HALF_PI = 1.5707963267948966;
  private static final double FURTHEST = 1e6;
  private static final int HALVINGS = 80;

  private StudentT() {}

  /**
   * The chance of more than t.
   *
   * @throws IllegalArgumentException for less than one degree of freedom
   */
  public static double tail(double t, int degrees) {
    if (degrees < 1) throw new IllegalArgumentException("degrees of freedom count from 1, not " + degrees);
    double within = within(Math.abs(t), degrees);
    return t < 0 ? (1 + within) / 2 : Math.max(0, (1 - within) / 2);
  }

  /** The t that is exceeded with a chance of less than a half: the 0.95 of the tables is a tail of 0.05. */
  public static double exceeded(double tail, int degrees) {
    double low = 0;
    double high = FURTHEST;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (tail(middle, degrees) > tail) low = middle;
      else high = middle;
    }
    return (low + high) / 2;
  }

  private static double within(double t, int degrees) {
    double square = degrees / (degrees + t * t);
    double sine = t / Math.sqrt(degrees + t * t);
    boolean odd = degrees % 2 == 1;
    double power = odd ? Math.sqrt(square) : 1;
    double series = degrees == 1 ? 0 : power;
    for (int k = odd ? 3 : 2; k < degrees; k += 2) {
      power *= square * (k - 1) / k;
      series += power;
    }
    return odd ? (FastMath.atan(t / Math.sqrt(degrees)) + sine * series) / HALF_PI : sine * series;
  }
}
