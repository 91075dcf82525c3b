package steening.stage.test.step;

import steening.fit.Fitted;
import steening.fit.LeastSquares;
import steening.language.Phrase;
import steening.number.Elementary;
import steening.quantity.Scale;
import steening.reckoning.Answer;
import steening.reckoning.Outcome;
import steening.stage.test.curve.Curve;

/**
 * The exponent n of the well's part where it is not taken as two: s = B Q + C Qⁿ, by least squares through the
 * drawdowns.
 *
 * <p>Source: Rorabaugh 1953 (memory). Range: four steps or more. Accuracy: authors came to 2.0 to 2.7 with the very
 * same steps, so the standard error goes with it.
 */
final class LossExponent {
  static final Answer EXPONENT =
      new Answer("exponent", Phrase.of("exponent n of the well's part", "exponente n de la parte del pozo"),
          Scale.NUMBER);
  static final Answer ERROR =
      new Answer("exponent-error", Phrase.of("standard error of n", "error estándar de n"), Scale.NUMBER);

  private static final int FEWEST = 4;
  private static final double LEAST = 1.2;
  private static final double MOST = 5;
  /** With an error above this, n could be 1.5 as well as 2.5. */
  private static final double UNSURE = 0.5;

  private static final Phrase UNTOLD = Phrase.of(
      "The exponent is not determined by these steps; n = 2 is kept.",
      "Estos escalones no determinan el exponente; se mantiene n = 2.");

  private LossExponent() {}

  /** Added to the answers, or the sentence that it is not determined. */
  static Outcome added(Outcome outcome, Steps steps, double aquifer, double well) {
    if (steps.size() < FEWEST) {
      return outcome.remarking(Phrase.of(
          "The exponent is not determined: it takes {0} steps, and there are {1}; n = 2 is kept.",
          "El exponente no se determina: pide {0} escalones y hay {1}; se mantiene n = 2.",
          Integer.toString(FEWEST), Integer.toString(steps.size())));
    }
    double most = steps.most();
    double[] x = steps.shares();
    double[] start = {Elementary.ln(aquifer * most), Elementary.ln(well * most * most), 2};
    Fitted fitted = LeastSquares.fit(
        (i, p) -> Elementary.exp(p[0]) * x[i] + Elementary.exp(p[1]) * Elementary.pow(x[i], p[2]),
        steps.drawdowns(), start);
    double exponent = fitted.parameter(2);
    boolean isTold = fitted.isSettled() && exponent > LEAST && exponent < MOST && fitted.standardError(2) < UNSURE;
    if (!isTold) return outcome.remarking(UNTOLD);
    return outcome
        .with(EXPONENT.name(), Curve.given("ν", EXPONENT, Curve.number(exponent)))
        .with(ERROR.name(), Curve.given("εν", ERROR, Curve.number(fitted.standardError(2))));
  }
}
