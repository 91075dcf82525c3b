package steening.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import steening.number.Decimal;

/**
 * The trade's way of writing amounts, read: {@code 57' 3"}, {@code 57' 3 1/2"}, {@code 57.25 ft}, {@code 57 3} (feet and
 * inches, where a bare number is feet), {@code 7 7/8 in}, {@code 7-7/8"}, {@code .020 in}, {@code 20 slot},
 * {@code 17.45 m}, {@code 28 gpm}, {@code 9.5 lb/gal}. A comma is never read: it means different things to different
 * hands, so whoever asks must ask back.
 */
public final class Notation {
  private static final int FRACTION_PLACES = 20;

  private Notation() {}

  /** An amount as it was read: the text with its unit, the unit, and the quantity. */
  public record Typed(String text, Unit unit, Quantity quantity) {}

  /**
   * Reads an amount of a dimension.
   *
   * @param typed what was typed
   * @param bare the unit that a bare number is in
   * @return empty when the text is no amount, or an amount of something else
   */
  public static Optional<Typed> read(String typed, Unit bare) {
    String text = typed.trim().replace('’', '\'').replace('”', '"').replace('′', '\'').replace('″', '"');
    if (bare.dimension() == Dimension.LENGTH) {
      Optional<Typed> feetAndInches = feetAndInches(text, bare);
      if (feetAndInches.isPresent()) return feetAndInches;
    }
    int split = numberEnd(text);
    Optional<BigDecimal> number = number(text.substring(0, split).trim());
    String symbol = text.substring(split).trim();
    Optional<Unit> unit = symbol.isEmpty() ? Optional.of(bare) : unit(symbol, bare.dimension());
    if (number.isEmpty() || unit.isEmpty()) return Optional.empty();
    String whole = symbol.isEmpty() && bare != Unit.ONE ? text + " " + bare.symbol() : text;
    return typed(whole, unit.get(), number.get());
  }

  /** The unit of a dimension that is written so. */
  public static Optional<Unit> unit(String symbol, Dimension dimension) {
    for (Unit unit : Unit.values()) {
      if (unit.dimension() == dimension && unit.isWritten(symbol)) return Optional.of(unit);
    }
    return Optional.empty();
  }

  private static Optional<Typed> typed(String text, Unit unit, BigDecimal number) {
    try {
      return Optional.of(new Typed(text, unit, unit.of(number)));
    } catch (IllegalArgumentException tooLarge) {
      return Optional.empty();
    }
  }

  /** {@code 57' 3 1/2"}, {@code 57 ft 3 in}, and {@code 57 3} where feet are meant. */
  private static Optional<Typed> feetAndInches(String text, Unit bare) {
    int mark = text.indexOf('\'');
    int skip = 1;
    if (mark < 0) {
      mark = text.indexOf("ft ");
      skip = 2;
    }
    String feet;
    String inches;
    if (mark > 0) {
      feet = text.substring(0, mark).trim();
      inches = withoutInchMark(text.substring(mark + skip).trim());
      if (inches == null) return Optional.empty();
    } else {
      String plain = text.endsWith("ft") ? text.substring(0, text.length() - 2).trim() : text;
      int space = plain.indexOf(' ');
      boolean twoNumbers = space > 0 && allDigits(plain.substring(0, space)) && number(plain.substring(space + 1)).isPresent();
      if (bare != Unit.FOOT && plain.equals(text) || !twoNumbers) return Optional.empty();
      feet = plain.substring(0, space);
      inches = plain.substring(space + 1).trim();
    }
    Optional<BigDecimal> whole = Decimal.parse(feet);
    Optional<BigDecimal> part = number(inches);
    boolean sensible =
        whole.isPresent() && part.isPresent() && part.get().signum() >= 0 && part.get().compareTo(new BigDecimal(12)) < 0;
    if (!sensible) return Optional.empty();
    BigDecimal inTotal = whole.get().multiply(new BigDecimal(12));
    BigDecimal sum = feet.startsWith("-") ? inTotal.subtract(part.get()) : inTotal.add(part.get());
    String kept = mark > 0 || text.endsWith("ft") ? text : text + " ft";
    return typed(kept, Unit.INCH, sum).map(t -> new Typed(t.text(), Unit.FOOT, t.quantity()));
  }

  /** The number before an inch mark, or null where something else stands. Nothing at all is no inches. */
  private static String withoutInchMark(String text) {
    if (text.isEmpty()) return "0";
    if (text.endsWith("\"")) return text.substring(0, text.length() - 1).trim();
    if (text.endsWith("in")) return text.substring(0, text.length() - 2).trim();
    return number(text).isPresent() ? text : null;
  }

  /** A decimal, a fraction, or a whole number with a fraction: {@code 7 7/8}, {@code 7-7/8}, {@code 7/8}. */
  private static Optional<BigDecimal> number(String text) {
    int slash = text.indexOf('/');
    if (slash < 0) return Decimal.parse(text);
    int gap = Math.max(text.lastIndexOf(' ', slash), text.lastIndexOf('-', slash));
    String whole = gap > 0 ? text.substring(0, gap).trim() : "0";
    String above = text.substring(gap > 0 ? gap + 1 : 0, slash).trim();
    String below = text.substring(slash + 1).trim();
    if (!allDigits(whole) || !allDigits(above) || !allDigits(below)) return Optional.empty();
    BigDecimal parts = new BigDecimal(below);
    if (parts.signum() == 0) return Optional.empty();
    BigDecimal fraction = new BigDecimal(above).divide(parts, FRACTION_PLACES, RoundingMode.HALF_UP);
    return Optional.of(new BigDecimal(whole).add(fraction));
  }

  /** Where the number ends and the unit begins. */
  private static int numberEnd(String text) {
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

  private static boolean allDigits(String text) {
    for (int i = 0; i < text.length(); i++) if (text.charAt(i) < '0' || text.charAt(i) > '9') return false;
    return !text.isEmpty() && text.length() < 10;
  }
}
