package steening.quantity;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * The trade's way of writing amounts, read: {@code 57' 3"}, {@code 57' 3 1/2"}, {@code 57.25 ft}, {@code 57 3} (feet
 * and inches, where a bare number is feet), {@code 7 7/8 in}, {@code 7-7/8"}, {@code .020 in}, {@code 20 slot},
 * {@code 17.45 m}, {@code 28 gpm}, {@code 9.5 lb/gal}, {@code $28/ft}. A comma is never read: it means
 * different things to different hands, so whoever asks must ask back.
 */
public final class Notation {
  /** What keyboards and printed pages write, and the plain characters it stands for. */
  private static final String[][] PLAIN = {
    {"’", "'"}, {"′", "'"}, {"”", "\""}, {"″", "\""}, {"''", "\""}, {"−", "-"}, {"\u00a0", " "}, {"\u202f", " "},
    {"½", " 1/2"}, {"¼", " 1/4"}, {"¾", " 3/4"}, {"⅛", " 1/8"}, {"⅜", " 3/8"}, {"⅝", " 5/8"}, {"⅞", " 7/8"}
  };

  private Notation() {}

  /**
   * An amount as it was read.
   *
   * @param text what was typed, with the unit added where none was
   * @param number what was typed without its unit; empty for feet and inches, which are two numbers
   * @param isBare whether no unit was typed
   * @param unit the unit it is in; feet for feet and inches
   */
  public record Typed(String text, String number, boolean isBare, Unit unit, Quantity quantity) {}

  /**
   * Reads an amount of a dimension.
   *
   * @param typed what was typed
   * @param bare the unit that a bare number is in
   * @return empty when the text is no amount, or an amount of something else
   */
  public static Optional<Typed> read(String typed, Unit bare) {
    String kept = typed.trim();
    String text = money(plain(kept));
    if (bare.dimension() == Dimension.LENGTH) {
      Optional<BigDecimal> inches = FeetAndInches.read(text, bare == Unit.FOOT);
      if (inches.isPresent()) {
        boolean isBare = text.indexOf('\'') < 0 && text.indexOf("ft") < 0;
        String whole = isBare ? kept + " ft" : kept;
        return amount(Unit.INCH, inches.get()).map(q -> new Typed(whole, "", isBare, Unit.FOOT, q));
      }
    }
    int end = Numeral.end(text);
    String number = text.substring(0, end).trim();
    String symbol = text.substring(end).trim();
    Optional<Unit> unit = symbol.isEmpty() ? Optional.of(bare) : unit(symbol, bare.dimension());
    Optional<BigDecimal> value = Numeral.read(number);
    if (value.isEmpty() || unit.isEmpty()) return Optional.empty();
    boolean isBare = symbol.isEmpty();
    String whole = isBare && bare != Unit.ONE ? kept + " " + bare.symbol() : kept;
    return amount(unit.get(), value.get()).map(q -> new Typed(whole, number, isBare, unit.get(), q));
  }

  /** The unit of a dimension that is written so. */
  public static Optional<Unit> unit(String symbol, Dimension dimension) {
    for (Unit unit : Unit.values()) {
      if (unit.dimension() == dimension && unit.isWritten(symbol)) return Optional.of(unit);
    }
    return Optional.empty();
  }

  private static Optional<Quantity> amount(Unit unit, BigDecimal value) {
    try {
      return Optional.of(unit.of(value));
    } catch (IllegalArgumentException tooLarge) {
      return Optional.empty();
    }
  }

  /** The sign of money stands before the number on paper, and after it here: {@code $28/ft} is {@code 28 $/ft}. */
  private static String money(String text) {
    if (!text.startsWith(Unit.DOLLAR.symbol())) return text;
    String rest = text.substring(Unit.DOLLAR.symbol().length()).trim();
    int slash = rest.indexOf('/');
    return slash < 0 ? rest + " $" : rest.substring(0, slash).trim() + " $" + rest.substring(slash);
  }

  private static String plain(String text) {
    String plain = text;
    for (String[] pair : PLAIN) plain = plain.replace(pair[0], pair[1]);
    return plain.trim();
  }
}
