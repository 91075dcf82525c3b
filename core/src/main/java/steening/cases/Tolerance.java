package steening.cases;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.number.Decimal;
import steening.quantity.Notation;
import steening.quantity.Unit;

/**
 * How far an answer may be from what was published: {@code exact}, {@code 0.5 %} of the value, {@code 0.02 ft}, or the
 * wider of two: {@code 2 % or 5 lb}. What follows in a source, as in {@code 2 % gauge hole}, is a remark and not read.
 */
record Tolerance(List<String> limits) {
  private static final String EXACT = "exact";

  static final Tolerance EXACTLY = new Tolerance(List.of(EXACT));

  /** What is left of exactness after arithmetic with doubles. */
  private static final double HAIR = 1e-9;

  Tolerance {
    limits = List.copyOf(limits);
  }

  /** Empty where the text does not begin with a limit. */
  static Optional<Tolerance> read(String text) {
    List<String> limits = new ArrayList<>();
    for (String part : text.trim().split(" or ")) {
      Optional<String> limit = limit(part.trim());
      if (limit.isEmpty()) break;
      limits.add(limit.get());
    }
    return limits.isEmpty() ? Optional.empty() : Optional.of(new Tolerance(limits));
  }

  /** {@code exact}, or the number at the front with the one word behind it. */
  private static Optional<String> limit(String text) {
    if (text.startsWith(EXACT)) return Optional.of(EXACT);
    String[] words = text.split("[ ,;]+");
    boolean sound = Decimal.parse(words[0]).filter(v -> v.signum() >= 0).isPresent();
    if (!sound) return Optional.empty();
    return Optional.of(words.length == 1 ? words[0] : words[0] + " " + words[1]);
  }

  /** The widest of the limits, in the unit of the value. */
  double around(BigDecimal value, Unit unit) {
    double widest = 0;
    for (String limit : limits) widest = Math.max(widest, width(limit, value, unit));
    return widest;
  }

  private static double width(String limit, BigDecimal value, Unit unit) {
    double size = Math.abs(Decimal.nearest(value));
    if (limit.equals(EXACT)) return HAIR * Math.max(1, size);
    String[] words = limit.split(" ");
    double number = Decimal.nearest(Decimal.parse(words[0]).orElseThrow());
    if (words.length == 1) return number;
    if (words[1].equals(Unit.PERCENT.symbol())) return size * number / 100;
    // A difference, so a scale's shifted zero must not come into it.
    Unit own = Notation.unit(words[1], unit.dimension()).orElse(unit);
    return (own.toCoherent(number) - own.toCoherent(0)) / (unit.toCoherent(1) - unit.toCoherent(0));
  }

  @Override
  public String toString() {
    return String.join(" or ", limits);
  }
}
