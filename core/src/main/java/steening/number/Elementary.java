package steening.number;

import org.hipparchus.util.FastMath;

/**
 * Elementary functions with the same bits on every platform. The platform's own differ in the last place between
 * virtual machines, and {@code Math.log10(1000)} is not 3 everywhere; Hipparchus computes them in plain arithmetic.
 */
public final class Elementary {
  private Elementary() {}

  public static double ln(double x) {
    return FastMath.log(x);
  }

  public static double log10(double x) {
    return FastMath.log10(x);
  }

  public static double exp(double x) {
    return FastMath.exp(x);
  }

  public static double pow(double base, double exponent) {
    return FastMath.pow(base, exponent);
  }

  /** Of an angle in radians. */
  public static double cos(double x) {
    return FastMath.cos(x);
  }

  public static double sqrt(double x) {
    return Math.sqrt(x);
  }
}
