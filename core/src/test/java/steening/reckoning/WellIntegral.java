package steening.reckoning;

/**
 * The well functions by their definition, the integral of e^(−y − (r/B)² / (4 y)) / y from u on, with Simpson's rule over
 * ln y: slow, and written without a look at how the program does it.
 */
final class WellIntegral {
  private static final int STEPS = 20_000;

  private WellIntegral() {}

  static double w(double u, double leakage) {
    double from = Math.log(u);
    double to = Math.log(u + 60);
    double width = (to - from) / STEPS;
    double sum = at(from, leakage) + at(to, leakage);
    for (int i = 1; i < STEPS; i++) sum += (i % 2 == 0 ? 2 : 4) * at(from + i * width, leakage);
    return sum * width / 3;
  }

  private static double at(double logarithm, double leakage) {
    double y = Math.exp(logarithm);
    return Math.exp(-y - leakage * leakage / (4 * y));
  }
}
