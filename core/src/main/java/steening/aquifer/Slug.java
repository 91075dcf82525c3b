package steening.aquifer;

import steening.number.Elementary;

/**
 * How a level comes back after a slug of water was put in or taken out: H / H₀ = F(β, α); β = T t / rc², α = rs² S / rc²,
 * rc radius of the casing, rs of the screen.
 *
 * <p>Source: Cooper, Bredehoeft and Papadopulos 1967, in the Laplace domain, brought back by {@link Stehfest}. Accuracy:
 * 2e-4 of H₀.
 */
public final class Slug {
  private Slug() {}

  /**
   * H / H₀, from 1 down to 0.
   *
   * @param beta above zero
   * @param alpha above zero
   */
  public static double f(double beta, double alpha) {
    if (!(beta > 0) || !(alpha > 0)) return Double.NaN;
    return Stehfest.at(beta, p -> transform(p, alpha));
  }

  private static double transform(double p, double alpha) {
    double x = Elementary.sqrt(alpha * p);
    double k0 = BesselK.k0(x);
    return k0 / (p * k0 + 2 * x * BesselK.k1(x));
  }
}
