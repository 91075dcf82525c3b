package steening.aquifer;

import java.util.function.DoubleUnaryOperator;
import steening.number.Elementary;

/**
 * A function of time from its Laplace transform, read at a dozen places on the real axis: f(t) ≈ ln 2 / t Σ Vᵢ F(i ln 2
 * / t).
 *
 * <p>Source: Stehfest 1970, algorithm 368 of the ACM. Range: smooth functions without oscillation. Accuracy: about 1e-4
 * with twelve weights, which is what doubles carry; more weights cancel.
 */
final class Stehfest {
  static final int TERMS = 12;
  private static final double LN_2 = 0.693147180559945309;
  private static final double[] WEIGHTS = weights(TERMS);

  private Stehfest() {}

  static double at(double time, DoubleUnaryOperator transform) {
    double step = LN_2 / time;
    double sum = 0;
    for (int i = 1; i <= TERMS; i++) sum += WEIGHTS[i - 1] * transform.applyAsDouble(i * step);
    return step * sum;
  }

  /**
   * The weights V₁ to Vₙ.
   *
   * @param count even, up to 18
   */
  static double[] weights(int count) {
    int half = count / 2;
    double[] weights = new double[count];
    for (int i = 1; i <= count; i++) {
      double sum = 0;
      for (int k = (i + 1) / 2; k <= Math.min(i, half); k++) {
        sum += Elementary.pow(k, half) * factorial(2 * k)
            / (factorial(half - k) * factorial(k) * factorial(k - 1) * factorial(i - k) * factorial(2 * k - i));
      }
      weights[i - 1] = (half + i) % 2 == 0 ? sum : -sum;
    }
    return weights;
  }

  private static double factorial(int n) {
    double product = 1;
    for (int i = 2; i <= n; i++) product *= i;
    return product;
  }
}
