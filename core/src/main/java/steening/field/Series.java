package steening.field;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.number.Decimal;
import steening.quantity.Notation;
import steening.quantity.Quantity;
import steening.quantity.Unit;

/**
 * The amounts in a text: apart by semicolons, by commas that can be nothing else, or, where they are plain decimals, by
 * spaces.
 *
 * @param text what was typed, with the unit added at the end where there was none
 * @param items each amount with its unit
 */
record Series(String text, List<String> items) {

  /** Reads a text in which all amounts, or none, or only the last one, have a unit. */
  static Optional<Series> read(String typed, Unit bare) {
    List<String> parts = parts(typed);
    if (parts.isEmpty()) return Optional.empty();
    Optional<Notation.Typed> last = Notation.read(parts.get(parts.size() - 1), bare);
    if (last.isEmpty()) return Optional.empty();
    List<String> items = new ArrayList<>();
    int without = 0;
    for (String part : parts) {
      Optional<Notation.Typed> amount = Notation.read(part, last.get().unit());
      if (amount.isEmpty()) return Optional.empty();
      if (amount.get().isBare()) without++;
      items.add(amount.get().text());
    }
    boolean onlyLast = without == parts.size() - 1 && !last.get().isBare();
    if (without > 0 && without < parts.size() && !onlyLast) return Optional.empty();
    boolean unitMissing = without == parts.size() && bare != Unit.ONE;
    return Optional.of(new Series(unitMissing ? typed + " " + bare.symbol() : typed, items));
  }

  static Optional<List<Quantity>> amounts(String text, Unit bare) {
    return read(text, bare)
        .map(s -> s.items.stream().map(item -> Notation.read(item, bare).orElseThrow().quantity()).toList());
  }

  /** Whether there are commas that may be decimal signs. */
  static boolean hasUnclearCommas(String text) {
    if (text.indexOf(',') < 0) return false;
    boolean spaced = true;
    for (int i = text.indexOf(','); i >= 0; i = text.indexOf(',', i + 1)) {
      spaced &= i + 1 < text.length() && text.charAt(i + 1) == ' ';
    }
    boolean pointed = true;
    for (String part : text.split(",")) pointed &= part.indexOf('.') >= 0;
    return text.indexOf(';') >= 0 || !spaced && !pointed;
  }

  private static List<String> parts(String text) {
    if (text.indexOf(';') >= 0) return trimmed(text.split(";"));
    if (text.indexOf(',') >= 0) return trimmed(text.split(","));
    List<String> parts = new ArrayList<>();
    for (String word : text.split(" +")) {
      if (isPlain(word)) parts.add(word);
      else if (parts.isEmpty() || !isUnit(word)) return List.of(text);
      else parts.add(parts.remove(parts.size() - 1) + " " + word);
    }
    return parts;
  }

  private static List<String> trimmed(String[] parts) {
    List<String> trimmed = new ArrayList<>();
    for (String part : parts) trimmed.add(part.trim());
    return trimmed;
  }

  /** A decimal, a unit behind it perhaps; no fraction, and no feet and inches, which hold spaces of their own. */
  private static boolean isPlain(String word) {
    int end = 0;
    while (end < word.length() && "0123456789.+-".indexOf(word.charAt(end)) >= 0) end++;
    return Decimal.parse(word.substring(0, end)).isPresent() && isUnit(word.substring(end));
  }

  private static boolean isUnit(String word) {
    return word.isEmpty() || "0123456789.+-/'\"".indexOf(word.charAt(0)) < 0;
  }
}
