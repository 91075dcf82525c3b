package steening.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import steening.number.Decimal;

/** A number as the trade writes it: a decimal, a fraction, or a whole number with a fraction. */
final class Numeral {
  private static final int FRACTION_PLACES = 20;
  private static final int LONGEST_PART = 9;

  private Numeral() {}

  /** Reads {@code 7.875}, {@code 7 7/8}, {@code 7-7/8}, {@code 7/8}; with a sign in front if need be. */
  static Optional<BigDecimal> read(String text) {
    int slash = text.indexOf('/');
    if (slash < 0) return Decimal.parse(text);
    boolean negative = text.startsWith("-");
    String size = negative ? text.substring(1) : text;
    return fraction(size, negative ? slash - 1 : slash).map(f -> negative ? f.negate() : f);
  }

  private static Optional<BigDecimal> fraction(String text, int slash) {
    int gap = gap(text, slash);
    String whole = gap > 0 ? text.substring(0, gap).trim() : "0";
    String above = text.substring(gap > 0 ? gap + 1 : 0, slash).trim();
    String below = text.substring(slash + 1).trim();
    if (!isWhole(whole) || !isWhole(above) || !isWhole(below)) return Optional.empty();
    BigDecimal parts = new BigDecimal(below);
    if (parts.signum() == 0) return Optional.empty();
    BigDecimal fraction = new BigDecimal(above).divide(parts, FRACTION_PLACES, RoundingMode.HALF_UP);
    return Optional.of(new BigDecimal(whole).add(fraction));
  }

  /** Whether this is a fraction with nothing in front of it: {@code 7/8}. */
  static boolean isBareFraction(String text) {
    int slash = text.indexOf('/');
    return slash >= 0 && gap(text, slash) <= 0;
  }

  /** Digits only, and not too many. */
  static boolean isWhole(String text) {
    for (int i = 0; i < text.length(); i++) if (text.charAt(i) < '0' || text.charAt(i) > '9') return false;
    return !text.isEmpty() && text.length() <= LONGEST_PART;
  }

  /** Where the number at the front of a text ends. */
  static int end(String text) {
    int end = 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean numeric = c >= '0' && c <= '9' || c == '.' || c == '/' || (c == '-' || c == '+') && i == 0;
      boolean joining = c == ' ' || c == '-';
      if (numeric) end = i + 1;
      else if (!joining) break;
    }
    return end;
  }

  /** The space or hyphen between a whole number and its fraction; not above zero where there is none. */
  private static int gap(String text, int slash) {
    return Math.max(text.lastIndexOf(' ', slash), text.lastIndexOf('-', slash));
  }
}
