package steening.aquifer;

import steening.number.Elementary;

/**
 * Drawdown in a pumped well that is itself a store: F(u, α), drawdown is Q F / (4 π T); u = r² S / (4 T t), α = r² S /
 * rc², r radius of the screen, rc of the casing in which the level falls. Early it is the casing that is emptied, F = α /
 * u; later it is {@link Theis#w}.
 *
 * <p>Source: Papadopulos and Cooper 1967, in the Laplace domain, brought back by {@link Stehfest}. Accuracy: 5e-4 times
 * the value.
 */
public final class LargeDiameter {
  private LargeDiameter() {}

  /**
   * F(u, α).
   *
   * @param u above zero
   * @param alpha above zero
   */
  public static double f(double u, double alpha) {
    if (!(u > 0) || !(alpha > 0)) return Double.NaN;
    return 2 * Stehfest.at(1 / (4 * u), p -> transform(p, alpha));
  }

  private static double transform(double p, double alpha) {
    double x = Elementary.sqrt(p);
    double k0 = BesselK.k0(x);
    return k0 / (p * (x * BesselK.k1(x) + p / (2 * alpha) * k0));
  }
}
