package steening.aquifer;

import steening.number.Elementary;

/**
 * The well function of a confined aquifer without end, W(u) = E₁(u), the integral of e^−y / y from u on; u = r² S / (4 T
 * t). Drawdown is Q W(u) / (4 π T).
 *
 * <p>Source: Theis 1935. Computed by its series for u up to 1, beyond by Chebyshev series of u eᵘ E₁(u) in 1 / u, whose
 * coefficients were worked out with 50 digits for this program. Accuracy: 1e-15 times the value for u from 1e-300 to
 * 700; beyond that zero.
 */
public final class Theis {
  /** −γ, of Euler. */
  static final double MINUS_GAMMA = -0.577215664901532861;

  private static final double SERIES_TO = 1;
  private static final double NEAR_TO = 4;
  /** Beyond this a double holds nothing of it. */
  private static final double GONE = 740;

  /** For 1 / u from 1/4 to 1. */
  private static final double[] NEAR = {
      1.39422675335939654, -0.1125352434836609, 0.0134322662479027795, -0.00192684518738114572,
      0.000309118337720603183, -0.0000535641321296184188, 9.8278128802474924e-6, -1.88536898491651828e-6,
      3.74943193568947354e-7, -7.68234558705526393e-8, 1.61432705671987776e-8, -3.46680221149073546e-9,
      7.58754209190362776e-10, -1.68864333298814126e-10, 3.81457067495522657e-11, -8.73302663244462927e-12,
      2.0236728645867961e-12, -4.74132830395558347e-13, 1.12211720483898643e-13, -2.68042254348403099e-14,
      6.45785144177165303e-15, -1.56827605016664788e-15, 3.83678653993154049e-16, -9.45171730275791305e-17,
      2.34348122889495733e-17
  };

  /** For 1 / u from 0 to 1/4. */
  private static final double[] FAR = {
      1.81070819992469832, -0.0864811785525987149, 0.00722410154374659475, -0.00080975594575573862,
      0.000109991344326613887, -0.0000171733299893776737, 2.98562751447928332e-6, -5.65964914577193006e-7,
      1.15268083971414002e-7, -2.49503044026933823e-8, 5.69232420183375437e-9, -1.35995766480560034e-9,
      3.38466288876088459e-10, -8.73785390447468195e-11, 2.33158866322265972e-11, -6.41148104921378597e-12,
      1.81224698020481643e-12, -5.25383176155846069e-13, 1.5592182725919257e-13, -4.72916829708039872e-14,
      1.4637618643932435e-14, -4.6173889887129241e-15, 1.48271034828936932e-15, -4.84167249623922915e-16,
      1.60621557570029041e-16, -5.40891753895717095e-17, 1.84747015934689788e-17, -6.39583079275909448e-18
  };

  private Theis() {}

  /**
   * W(u).
   *
   * @param u above zero
   * @return NaN where u is not above zero
   */
  public static double w(double u) {
    if (!(u > 0)) return Double.NaN;
    if (u <= SERIES_TO) return series(u);
    if (u > GONE) return 0;
    double inverse = 1 / u;
    double scaled = u <= NEAR_TO ? chebyshev(NEAR, (inverse - 0.625) / 0.375) : chebyshev(FAR, inverse * 8 - 1);
    return scaled * inverse * Elementary.exp(-u);
  }

  /** −γ − ln u: what the straight line of Cooper and Jacob rests on; 2 % too little at u = 0.05. */
  public static double straightLine(double u) {
    return MINUS_GAMMA - Elementary.ln(u);
  }

  /**
   * Residual drawdown after the stop, W(u) − W(u′), with the same storativity before and after.
   *
   * @param u at the time since the start
   * @param ratio of the time since the start to the time since the stop, above one
   */
  public static double recovery(double u, double ratio) {
    return w(u) - w(u * ratio);
  }

  private static double series(double u) {
    double power = u;
    double sum = u;
    for (int k = 2; Math.abs(power) > 1e-17 * sum; k++) {
      power *= -u / k;
      sum += power / k;
    }
    return straightLine(u) + sum;
  }

  /** Clenshaw's sum, t from −1 to 1; the first coefficient counts half. */
  private static double chebyshev(double[] c, double t) {
    double last = 0;
    double before = 0;
    for (int k = c.length - 1; k > 0; k--) {
      double next = 2 * t * last - before + c[k];
      before = last;
      last = next;
    }
    return t * last - before + c[0] / 2;
  }
}
