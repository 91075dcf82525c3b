package steening.stage.development;

import steening.fit.Fitted;
import steening.fit.LeastSquares;
import steening.number.Elementary;

/**
 * Sand that halves again and again down to a floor, laid through readings: c = f + a 2^(−t/h), t from the first one.
 *
 * <p>All readings weigh alike, since a cone is read to the same fraction of a millilitre whether it holds much or
 * little. Sought as c/c₀ and the logarithms of a/c₀ and of h over the time spanned, all near one in size.
 */
final class SandCurve {
  private static final double LN_2 = 0.69314718055994531;
  private static final double START = -1;

  private final SandSeries series;
  private final Fitted fitted;
  private final double most;
  private final double span;

  private SandCurve(SandSeries series) {
    this.series = series;
    this.most = series.most();
    this.span = series.minutes(series.size() - 1) - series.minutes(0);
    this.fitted = LeastSquares.fit(this::at, series.contents(), new double[] {0.05, Elementary.ln(0.9), START});
  }

  /** Of at least three readings, of which one has sand. */
  static SandCurve through(SandSeries series) {
    return new SandCurve(series);
  }

  private double at(int reading, double[] p) {
    return value(series.minutes(reading) - series.minutes(0), p[0], p[1], p[2]);
  }

  private double value(double minutes, double floor, double height, double halfLife) {
    double halvings = minutes / (span * Elementary.exp(halfLife));
    return most * (floor + Elementary.exp(height - LN_2 * halvings));
  }

  /** Sand in mg/L, so many minutes after the first reading. */
  double after(double minutes) {
    return value(minutes, fitted.parameter(0), fitted.parameter(1), fitted.parameter(2));
  }

  /** A half-life within what the readings could show: no longer than three times the time they span. */
  boolean isFalling() {
    return fitted.isSettled() && fitted.parameter(2) < Elementary.ln(3);
  }

  /** Minutes. */
  double halfLife() {
    return span * Elementary.exp(fitted.parameter(2));
  }

  /** As a share of it. */
  double halfLifeError() {
    return fitted.standardError(2);
  }

  /** In mg/L; less than nothing where the readings scatter. */
  double floor() {
    return most * fitted.parameter(0);
  }

  double floorError() {
    return most * fitted.standardError(0);
  }
}
