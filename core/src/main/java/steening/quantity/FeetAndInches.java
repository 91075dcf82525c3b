package steening.quantity;

import java.math.BigDecimal;
import java.util.Optional;

/** A length in two numbers: {@code 57' 3 1/2"}, {@code 57 ft 3 in}, and {@code 57 3} where feet are meant. */
final class FeetAndInches {
  private static final BigDecimal TWELVE = new BigDecimal(12);

  private FeetAndInches() {}

  /**
   * The length in inches.
   *
   * @param bareFeet whether two bare numbers are feet and inches
   * @return empty when the text is anything else, or has twelve inches or more
   */
  static Optional<BigDecimal> read(String text, boolean bareFeet) {
    int mark = text.indexOf('\'');
    if (mark > 0) return sum(text.substring(0, mark), withoutInchMark(text.substring(mark + 1).trim()));
    int word = text.indexOf("ft");
    String behind = word > 0 ? text.substring(word + 2).trim() : "";
    if (!behind.isEmpty()) return sum(text.substring(0, word), withoutInchMark(behind));
    return word > 0 || bareFeet ? twoNumbers(word > 0 ? text.substring(0, word).trim() : text) : Optional.empty();
  }

  /** {@code 57 7/8} is one number, 57.875, and not read here. */
  private static Optional<BigDecimal> twoNumbers(String text) {
    int space = text.indexOf(' ');
    if (space < 0) return Optional.empty();
    String inches = text.substring(space + 1).trim();
    return Numeral.isBareFraction(inches) ? Optional.empty() : sum(text.substring(0, space), inches);
  }

  private static Optional<BigDecimal> sum(String before, String inches) {
    String feet = before.trim();
    boolean negative = feet.startsWith("-");
    if (!Numeral.isWhole(negative ? feet.substring(1) : feet)) return Optional.empty();
    BigDecimal whole = new BigDecimal(feet).multiply(TWELVE);
    return Numeral.read(inches)
        .filter(part -> part.signum() >= 0 && part.compareTo(TWELVE) < 0)
        .map(part -> negative ? whole.subtract(part) : whole.add(part));
  }

  private static String withoutInchMark(String text) {
    if (text.endsWith("\"")) return text.substring(0, text.length() - 1).trim();
    return text.endsWith("in") ? text.substring(0, text.length() - 2).trim() : text;
  }
}
