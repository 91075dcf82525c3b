package steening.fit;

/** A few linear equations with a symmetric matrix, by its root; no answer where it is not positive. */
final class Cholesky {
  /** Less of a pivot than this is the rounding of nothing. */
  private static final double NOTHING = 1e-14;

  private Cholesky() {}

  /** x of A x = b; null where A has no such root. */
  static double[] solve(double[][] a, double[] b) {
    double[][] root = root(a);
    return root == null ? null : solved(root, b);
  }

  /** A⁻¹; null where A has no such root. */
  static double[][] inverse(double[][] a) {
    double[][] root = root(a);
    if (root == null) return null;
    double[][] inverse = new double[a.length][];
    for (int i = 0; i < a.length; i++) {
      double[] unit = new double[a.length];
      unit[i] = 1;
      inverse[i] = solved(root, unit);
    }
    return inverse;
  }

  private static double[][] root(double[][] a) {
    double[][] root = new double[a.length][a.length];
    for (int i = 0; i < a.length; i++) {
      for (int j = 0; j <= i; j++) {
        double rest = a[i][j];
        for (int k = 0; k < j; k++) rest -= root[i][k] * root[j][k];
        if (i != j) root[i][j] = rest / root[j][j];
        else if (rest > NOTHING * a[i][i]) root[i][i] = Math.sqrt(rest);
        else return null;
      }
    }
    return root;
  }

  private static double[] solved(double[][] root, double[] b) {
    double[] x = b.clone();
    for (int i = 0; i < x.length; i++) {
      for (int k = 0; k < i; k++) x[i] -= root[i][k] * x[k];
      x[i] /= root[i][i];
    }
    for (int i = x.length - 1; i >= 0; i--) {
      for (int k = i + 1; k < x.length; k++) x[i] -= root[k][i] * x[k];
      x[i] /= root[i][i];
    }
    return x;
  }
}
