package steening.fit;

/**
 * The search for the least sum of squares, after Levenberg 1944 and Marquardt 1963: between Gauss's step and the way
 * straight down, nearer to the latter where a step made it worse. Written here because the library that has it does not
 * compile for the phone; tests hold it against that library.
 */
public final class LeastSquares {
  private static final int MOST_STEPS = 200;
  private static final double FIRST_DAMPING = 1e-3;
  private static final double LEAST_DAMPING = 1e-15;
  private static final double MOST_DAMPING = 1e15;
  /** At rest when a step changes no parameter by more than this times its size. */
  private static final double STEP_AT_REST = 1e-10;
  private static final double GAIN_AT_REST = 1e-14;
  private static final double DIFFERENCE = 1e-6;
  /** Parameters of a model are mostly logarithms: no step may multiply by more than e³. */
  private static final double LONGEST_STEP = 3;

  private final Model model;
  private final double[] measured;
  private double[] at;
  private double[] residuals;
  private double[][] normal;
  private double[] downhill;

  private LeastSquares(Model model, double[] measured, double[] start) {
    this.model = model;
    this.measured = measured.clone();
    this.at = start.clone();
    this.residuals = residuals(at);
  }

  /**
   * The parameters that miss least, sought from a start. Finds a valley, not always the deepest.
   *
   * @param measured as many readings as parameters, or more
   * @param start about one in size each, as logarithms are
   */
  public static Fitted fit(Model model, double[] measured, double[] start) {
    if (measured.length < start.length) throw new IllegalArgumentException("fewer readings than parameters");
    return new LeastSquares(model, measured, start).search();
  }

  private Fitted search() {
    double sum = squares(residuals);
    double damping = FIRST_DAMPING;
    boolean settled = false;
    linearise();
    for (int step = 0; step < MOST_STEPS && !settled && sum <= Double.MAX_VALUE; step++) {
      double[] change = Cholesky.solve(damped(damping), downhill);
      double[] tried = change == null ? null : moved(change);
      double[] missed = tried == null ? null : residuals(tried);
      double then = missed == null ? Double.NaN : squares(missed);
      if (then <= sum) {
        settled = isSmall(change, tried) || sum - then <= GAIN_AT_REST * sum && damping <= 1;
        at = tried;
        residuals = missed;
        sum = then;
        damping = Math.max(damping / 10, LEAST_DAMPING);
        linearise();
      } else {
        settled = change != null && isSmall(change, at);
        damping *= 10;
        if (damping > MOST_DAMPING) break;
      }
    }
    return new Fitted(at, residuals, Cholesky.inverse(normal), settled);
  }

  /** JᵀJ and Jᵀ times what is missed, by differences on both sides. */
  private void linearise() {
    int n = at.length;
    double[][] slopes = new double[n][];
    for (int i = 0; i < n; i++) slopes[i] = slope(i);
    normal = new double[n][n];
    downhill = new double[n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j <= i; j++) normal[i][j] = normal[j][i] = product(slopes[i], slopes[j]);
      downhill[i] = product(slopes[i], residuals);
    }
  }

  private double[] slope(int parameter) {
    double step = DIFFERENCE * Math.max(1, Math.abs(at[parameter]));
    double[] above = at.clone();
    double[] below = at.clone();
    above[parameter] += step;
    below[parameter] -= step;
    double[] slope = new double[measured.length];
    for (int k = 0; k < slope.length; k++) slope[k] = (model.at(k, above) - model.at(k, below)) / (2 * step);
    return slope;
  }

  private double[][] damped(double damping) {
    double[][] damped = new double[normal.length][];
    for (int i = 0; i < damped.length; i++) {
      damped[i] = normal[i].clone();
      damped[i][i] *= 1 + damping;
    }
    return damped;
  }

  private double[] moved(double[] change) {
    double longest = 0;
    for (double one : change) longest = Math.max(longest, Math.abs(one));
    double share = longest > LONGEST_STEP ? LONGEST_STEP / longest : 1;
    double[] moved = at.clone();
    for (int i = 0; i < moved.length; i++) moved[i] += share * change[i];
    return moved;
  }

  private double[] residuals(double[] parameters) {
    double[] missed = new double[measured.length];
    for (int k = 0; k < missed.length; k++) missed[k] = measured[k] - model.at(k, parameters);
    return missed;
  }

  private static boolean isSmall(double[] change, double[] parameters) {
    for (int i = 0; i < change.length; i++) {
      if (Math.abs(change[i]) > STEP_AT_REST * Math.max(1, Math.abs(parameters[i]))) return false;
    }
    return true;
  }

  private static double squares(double[] values) {
    return product(values, values);
  }

  private static double product(double[] a, double[] b) {
    double sum = 0;
    for (int k = 0; k < a.length; k++) sum += a[k] * b[k];
    return sum;
  }
}
