package steening.fit;

/**
 * A model laid through readings.
 *
 * <p>Standard errors are those of the model made straight at the best place, for readings that miss independently and
 * alike: the root of s² (JᵀJ)⁻¹, s² the sum of squares over readings less parameters. Readings of one falling level are
 * not independent, so the true error is larger.
 */
public final class Fitted {
  private final double[] parameters;
  private final double[] residuals;
  private final double[][] inverse;
  private final boolean settled;

  /**
   * For {@link LeastSquares}.
   *
   * @param residuals measured less reckoned
   * @param inverse of JᵀJ; null where it has none
   * @param settled whether the search came to rest
   */
  Fitted(double[] parameters, double[] residuals, double[][] inverse, boolean settled) {
    this.parameters = parameters;
    this.residuals = residuals;
    this.inverse = inverse;
    this.settled = settled;
  }

  public double parameter(int i) {
    return parameters[i];
  }

  /** Measured less reckoned, reading by reading. */
  public double residual(int reading) {
    return residuals[reading];
  }

  public double sumOfSquares() {
    double sum = 0;
    for (double residual : residuals) sum += residual * residual;
    return sum;
  }

  /** How far a reading is missed, by root mean square. */
  public double misfit() {
    return Math.sqrt(sumOfSquares() / residuals.length);
  }

  /** Whether the search came to rest; where it did not, the parameters are only where it was given up. */
  public boolean isSettled() {
    return settled;
  }

  /** Of one parameter; infinite where the readings do not tell it, or where no reading is to spare. */
  public double standardError(int i) {
    int spare = residuals.length - parameters.length;
    if (inverse == null || spare < 1 || !(inverse[i][i] >= 0)) return Double.POSITIVE_INFINITY;
    return Math.sqrt(inverse[i][i] * sumOfSquares() / spare);
  }

  /** Between two parameters, −1 to 1: near the ends one can be traded for the other. Zero where it is not known. */
  public double correlation(int i, int j) {
    if (inverse == null) return 0;
    double scale = Math.sqrt(inverse[i][i] * inverse[j][j]);
    return scale > 0 ? inverse[i][j] / scale : 0;
  }
}
