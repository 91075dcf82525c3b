package steening.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresOptimizer.Optimum;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.MultivariateJacobianFunction;
import org.hipparchus.util.Pair;
import org.junit.jupiter.api.Test;
import steening.aquifer.Theis;

/** Against the Levenberg–Marquardt of Hipparchus, on curves of Theis and of decay. */
class LeastSquaresTest {
  private static final double[] MINUTES = {1, 2, 3, 5, 8, 12, 20, 30, 45, 60, 90, 120, 180, 240};

  /** Parameters are the logarithms of the factor and of u at one minute. */
  private static final Model THEIS = (i, p) -> Math.exp(p[0]) * Theis.w(Math.exp(p[1]) / MINUTES[i]);
  private static final Model DECAY = (i, p) -> p[2] + Math.exp(p[0] - Math.exp(p[1]) * MINUTES[i]);

  @Test
  void findsTheSameAsHipparchus() {
    SplittableRandom random = new SplittableRandom(20261125);
    for (int trial = 0; trial < 50; trial++) {
      double[] theis = {random.nextDouble(-2, 1), random.nextDouble(-4, 0)};
      isAlike(THEIS, noisy(THEIS, theis, random), new double[] {0, -2});
      double[] decay = {random.nextDouble(0, 3), random.nextDouble(-4.5, -2.5), random.nextDouble(0, 2)};
      isAlike(DECAY, noisy(DECAY, decay, random), new double[] {1, -3.5, 1});
    }
  }

  @Test
  void aStraightLineIsFoundWithTheErrorsOfTheBook() {
    // y = 1 + 2x with misses of ±0.1: by the normal equations, worked out by hand
    double[] measured = {1.1, 2.9, 5.1, 6.9};
    Fitted fitted = LeastSquares.fit((i, p) -> p[0] + p[1] * i, measured, new double[] {0, 0});
    assertThat(fitted.parameter(0)).isCloseTo(1.06, within(1e-8));
    assertThat(fitted.parameter(1)).isCloseTo(1.96, within(1e-8));
    // s² = 0.032 / 2; variances s² (1/4 + 1.5²/5) and s² / 5
    assertThat(fitted.sumOfSquares()).isCloseTo(0.032, within(1e-9));
    assertThat(fitted.standardError(0)).isCloseTo(Math.sqrt(0.016 * 0.7), within(1e-7));
    assertThat(fitted.standardError(1)).isCloseTo(Math.sqrt(0.016 / 5), within(1e-7));
    assertThat(fitted.correlation(0, 1)).isCloseTo(-1.5 / Math.sqrt(3.5), within(1e-7));
  }

  @Test
  void twoParametersThatDoTheSameAreNotTold() {
    Fitted fitted = LeastSquares.fit((i, p) -> p[0] + p[1], new double[] {1, 2, 3}, new double[] {0, 0});
    assertThat(fitted.standardError(0)).isInfinite();
    assertThat(fitted.correlation(0, 1)).isZero();
  }

  @Test
  void aModelWithoutValuesDoesNotComeToRest() {
    Fitted fitted = LeastSquares.fit((i, p) -> Double.NaN, new double[] {1, 2, 3}, new double[] {0});
    assertThat(fitted.isSettled()).isFalse();
  }

  private static void isAlike(Model model, double[] measured, double[] start) {
    Fitted ours = LeastSquares.fit(model, measured, start);
    Optimum theirs = new LevenbergMarquardtOptimizer().optimize(new LeastSquaresBuilder()
        .start(start).model(differences(model)).target(measured).maxEvaluations(1000).maxIterations(1000).build());
    assertThat(ours.isSettled()).isTrue();
    double best = theirs.getCost() * theirs.getCost();
    assertThat(ours.sumOfSquares()).as("no worse").isLessThanOrEqualTo(best * (1 + 1e-9));
    for (int i = 0; i < start.length; i++) {
      assertThat(ours.parameter(i)).isCloseTo(theirs.getPoint().getEntry(i), within(1e-5));
      double error = theirs.getSigma(1e-14).getEntry(i) * Math.sqrt(best / (measured.length - start.length));
      assertThat(ours.standardError(i) / error).isCloseTo(1, within(1e-3));
    }
  }

  private static double[] noisy(Model model, double[] parameters, SplittableRandom random) {
    double[] measured = new double[MINUTES.length];
    for (int i = 0; i < measured.length; i++) {
      measured[i] = model.at(i, parameters) + random.nextDouble(-0.02, 0.02);
    }
    return measured;
  }

  private static MultivariateJacobianFunction differences(Model model) {
    return point -> {
      double[] at = point.toArray();
      double[] values = new double[MINUTES.length];
      RealMatrix slopes = new Array2DRowRealMatrix(values.length, at.length);
      for (int k = 0; k < values.length; k++) {
        values[k] = model.at(k, at);
        for (int i = 0; i < at.length; i++) {
          double[] above = at.clone();
          double[] below = at.clone();
          above[i] += 1e-6;
          below[i] -= 1e-6;
          slopes.setEntry(k, i, (model.at(k, above) - model.at(k, below)) / 2e-6);
        }
      }
      return new Pair<>(new ArrayRealVector(values), slopes);
    };
  }
}
