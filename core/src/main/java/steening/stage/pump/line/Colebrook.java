package steening.stage.pump.line;

import steening.number.Elementary;

/**
 * The friction factor of Darcy and Weisbach: 64/Re below 2300, the root of Colebrook's equation from 4000 on. Source:
 * Colebrook 1939. Accuracy: 1e-12 of the factor.
 */
final class Colebrook {
  static final double LAMINAR = 2300;
  static final double TURBULENT = 4000;

  private static final int MOST_TRIALS = 100;
  private static final double CLOSE = 1e-13;

  private Colebrook() {}

  /**
   * The factor of turbulent flow.
   *
   * @param reynolds 4000 and more
   * @param roughness over the inside diameter
   */
  static double factor(double reynolds, double roughness) {
    double x = 7; // 1/√f
    for (int i = 0; i < MOST_TRIALS; i++) {
      double next = -2 * Elementary.log10(roughness / 3.7 + 2.51 * x / reynolds);
      if (Math.abs(next - x) < CLOSE * next) return 1 / (next * next);
      x = next;
    }
    return 1 / (x * x);
  }
}
