package steening.number;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/** Decimal text to numbers and back. A point is the only decimal sign written or stored. */
public final class Decimal {
  private static final long EXACT = 1L << 53;
  private static final double[] POWERS = {
    1e0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15, 1e16, 1e17, 1e18, 1e19, 1e20,
    1e21, 1e22
  };
  private static final int LONGEST = 40;

  private Decimal() {}

  /**
   * Reads digits with at most one point and an optional sign: {@code 57}, {@code -83.1}, {@code .020}. No exponent, no
   * grouping, no comma.
   *
   * @return the exact value, or empty when the text is anything else
   */
  public static Optional<BigDecimal> parse(String text) {
    int digits = 0;
    int points = 0;
    if (text.length() > LONGEST) return Optional.empty();
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c >= '0' && c <= '9') digits++;
      else if (c == '.' && points == 0) points++;
      else if (!((c == '-' || c == '+') && i == 0 && text.length() > 1)) return Optional.empty();
    }
    return digits == 0 ? Optional.empty() : Optional.of(new BigDecimal(text));
  }

  /**
   * The double nearest to a decimal. With at most 15 or so digits one exact division does it, correctly rounded; the
   * platform's own conversion, which is off by one unit on some of them for long digit strings, is the fallback.
   */
  public static double nearest(BigDecimal decimal) {
    BigDecimal plain = decimal.stripTrailingZeros();
    int scale = plain.scale();
    if (plain.unscaledValue().bitLength() <= 53 && scale < POWERS.length && -scale < POWERS.length) {
      long unscaled = plain.unscaledValue().longValue();
      if (Math.abs(unscaled) <= EXACT) return scale >= 0 ? unscaled / POWERS[scale] : unscaled * POWERS[-scale];
    }
    return decimal.doubleValue();
  }

  /** Exactly {@code places} decimals, half up on the value the double really has. */
  public static String fixed(double value, int places) {
    return rounded(value, places).toPlainString();
  }

  /** At most {@code places} decimals; zeros at the end are left out. */
  public static String upTo(double value, int places) {
    return shortest(rounded(value, places));
  }

  /** All decimals it has; zeros at the end are left out. */
  public static String shortest(BigDecimal value) {
    if (value.signum() == 0) return "0";
    BigDecimal stripped = value.stripTrailingZeros();
    return (stripped.scale() < 0 ? stripped.setScale(0, RoundingMode.UNNECESSARY) : stripped).toPlainString();
  }

  /**
   * About {@code figures} significant figures, never in exponent form: 0.01234 with 3 is 0.0123, 1234.5 with 3 is 1235.
   */
  public static String significant(double value, int figures) {
    if (value == 0 || Double.isNaN(value) || Double.isInfinite(value)) return upTo(value, 0);
    int magnitude = 0;
    double size = Math.abs(value);
    while (size >= 10) {
      size /= 10;
      magnitude++;
    }
    while (size < 1) {
      size *= 10;
      magnitude--;
    }
    return upTo(value, Math.max(0, Math.min(20, figures - 1 - magnitude)));
  }

  private static BigDecimal rounded(double value, int places) {
    if (Double.isNaN(value) || Double.isInfinite(value)) {
      throw new IllegalArgumentException("no decimal text for a value that is not a finite number");
    }
    BigDecimal rounded = new BigDecimal(value).setScale(places, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? BigDecimal.ZERO.setScale(places, RoundingMode.UNNECESSARY) : rounded;
  }
}
