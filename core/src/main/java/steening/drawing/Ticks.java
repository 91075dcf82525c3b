package steening.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * Round numbers along an axis, in steps of 1, 2 or 5 times a power of ten.
 *
 * @param digit 1, 2 or 5
 * @param whole the power of ten of a step of 1 or more, else 1
 * @param parts the power of ten that a smaller step is a part of, else 1: 0.3 is three tenths, not 0.1 three times
 */
record Ticks(int digit, double whole, double parts) {
  private static final int[] DIGITS = {1, 2, 5};

  /**
   * The smallest round step that divides a span into at most so many pieces.
   *
   * @param span more than zero
   */
  static Ticks of(double span, int most) {
    if (!(span > 0) || Double.isInfinite(span)) throw new IllegalArgumentException("no axis without a length");
    int pieces = Math.max(1, most);
    Ticks ticks = new Ticks(1, 1, 1);
    while (span / ticks.step() <= pieces) ticks = ticks.smaller();
    while (span / ticks.step() > pieces) ticks = ticks.larger();
    return ticks;
  }

  double step() {
    return digit * whole / parts;
  }

  /** Steps in between that may be marked without a number. */
  int minors() {
    return digit == 2 ? 2 : 5;
  }

  /** The multiples of the step that lie between two values. */
  List<Double> between(double from, double to) {
    List<Double> values = new ArrayList<>();
    double slack = step() * 1e-9;
    for (double i = Math.ceil((from - slack) / step()); i * step() <= to + slack; i++) values.add(value(i));
    return values;
  }

  /** The next multiple at or below. */
  double below(double value) {
    return value(Math.floor(value / step() + 1e-9));
  }

  /** The next multiple at or above. */
  double above(double value) {
    return value(Math.ceil(value / step() - 1e-9));
  }

  private double value(double index) {
    double value = index * digit * whole / parts;
    return value == 0 ? 0 : value;
  }

  private Ticks larger() {
    if (digit != 5) return new Ticks(DIGITS[digit == 1 ? 1 : 2], whole, parts);
    return parts > 1 ? new Ticks(1, whole, parts / 10) : new Ticks(1, whole * 10, parts);
  }

  private Ticks smaller() {
    if (digit != 1) return new Ticks(DIGITS[digit == 5 ? 1 : 0], whole, parts);
    return whole > 1 ? new Ticks(5, whole / 10, parts) : new Ticks(5, whole, parts * 10);
  }
}
