package steening.drawing;

import java.util.ArrayList;
import java.util.List;
import steening.number.Decimal;
import steening.number.Elementary;

/**
 * One axis of a chart: from a round number to a round number, or over whole decades, laid along a stretch of the sheet.
 *
 * @param from the value at {@code start}
 * @param to the value at {@code end}
 * @param majors the values that have a number
 */
record ChartScale(boolean logarithmic, double from, double to, List<Double> majors, double start, double end) {
  private static final int PLAIN_UP_TO = 5;
  private static final int PLAIN_DOWN_TO = -4;
  private static final String RAISED = "⁰¹²³⁴⁵⁶⁷⁸⁹";

  /** Room for all of the values that such an axis can hold, with at most so many numbers along it. */
  static ChartScale of(boolean logarithmic, List<Double> values, int most) {
    double least = Double.POSITIVE_INFINITY;
    double greatest = Double.NEGATIVE_INFINITY;
    for (double value : values) {
      if (!holds(logarithmic, value)) continue;
      least = Math.min(least, value);
      greatest = Math.max(greatest, value);
    }
    boolean none = least > greatest;
    if (logarithmic) return none ? decades(1, 10, most) : decades(least, greatest, most);
    return none ? linear(0, 1, most) : linear(least, greatest, most);
  }

  /** Whether an axis has a place for a value. */
  static boolean holds(boolean logarithmic, double value) {
    return Math.abs(value) < 1e15 && (!logarithmic || value > 1e-15);
  }

  private static ChartScale linear(double least, double greatest, int most) {
    double low = least > 0 && least < greatest / 2 ? 0 : least;
    double high = greatest;
    if (!(high - low > Math.abs(high) * 1e-9)) {
      double room = high == 0 ? 1 : Math.abs(high) / 10;
      low -= room;
      high += room;
    }
    Ticks ticks = Ticks.of(high - low, most);
    double from = ticks.below(low);
    double to = ticks.above(high);
    return new ChartScale(false, from, to, ticks.between(from, to), 0, 1);
  }

  private static ChartScale decades(double least, double greatest, int most) {
    int first = exponent(least);
    int last = exponent(greatest);
    if (power(last) < greatest || first == last) last++;
    int pieces = Math.max(1, most);
    int step = (last - first + pieces - 1) / pieces;
    List<Double> majors = new ArrayList<>();
    for (int i = first; i <= last; i += step) majors.add(power(i));
    return new ChartScale(true, power(first), power(last), majors, 0, 1);
  }

  ChartScale along(double newStart, double newEnd) {
    return new ChartScale(logarithmic, from, to, majors, newStart, newEnd);
  }

  /** Where a value stands on the sheet. */
  double place(double value) {
    double share = logarithmic
        ? (Elementary.log10(value) - Elementary.log10(from)) / (Elementary.log10(to) - Elementary.log10(from))
        : (value - from) / (to - from);
    return share * (end - start) + start;
  }

  /** Two to nine times each power of ten; on an even axis none. */
  List<Double> minors() {
    List<Double> minors = new ArrayList<>();
    if (!logarithmic) return minors;
    for (int i = exponent(from); i < exponent(to); i++) {
      for (int digit = 2; digit <= 9; digit++) minors.add(digit * power(i));
    }
    return minors;
  }

  String number(double value) {
    if (!logarithmic) return Decimal.upTo(value, 9);
    int exponent = exponent(value);
    if (exponent <= PLAIN_UP_TO && exponent >= PLAIN_DOWN_TO) return Decimal.upTo(value, -PLAIN_DOWN_TO);
    return "10" + raised(exponent);
  }

  double widest() {
    double widest = 0;
    for (double value : majors) widest = Math.max(widest, Lettering.width(number(value)));
    return widest;
  }

  /** The power of ten at or below a value. */
  private static int exponent(double value) {
    int exponent = (int) Math.floor(Elementary.log10(value));
    if (power(exponent + 1) <= value) return exponent + 1;
    return power(exponent) > value ? exponent - 1 : exponent;
  }

  private static double power(int exponent) {
    double power = 1;
    for (int i = 0; i < Math.abs(exponent); i++) power *= 10;
    return exponent < 0 ? 1 / power : power;
  }

  private static String raised(int number) {
    StringBuilder out = new StringBuilder(number < 0 ? "⁻" : "");
    for (char digit : Integer.toString(Math.abs(number)).toCharArray()) out.append(RAISED.charAt(digit - '0'));
    return out.toString();
  }
}
