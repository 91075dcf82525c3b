package steening.reckoning;

import java.util.List;
import java.util.function.DoubleBinaryOperator;
import steening.aquifer.Hantush;
import steening.aquifer.Theis;
import steening.language.UnitSystem;
import steening.number.Elementary;
import steening.number.StudentT;

/** What a formula does to one or two terms, and how tightly it binds when written. */
enum Operation {
  ADD(1, " + ", (a, b) -> a + b),
  SUBTRACT(1, " − ", (a, b) -> a - b),
  MULTIPLY(2, " × ", (a, b) -> a * b),
  DIVIDE(2, " / ", (a, b) -> a / b),
  POWER(4, "^", Operation::power),
  SQUARE_ROOT(5, "√", (a, b) -> Elementary.sqrt(a)),
  LOG_10(5, "log", (a, b) -> Elementary.log10(a)),
  ROUND_UP(5, "up", (a, b) -> roundUp(a)),
  /** The chance of more than t by Student's distribution, with so many degrees of freedom. */
  TAIL(5, "tail", Operation::tail),
  MOST(5, "max", Math::max),
  LEAST(5, "min", Math::min),
  THEIS(5, "W", (a, b) -> Theis.w(a)),
  HANTUSH(5, "W", Hantush::w);

  /** A billionth of a bag over is not another bag: it is the rounding of the arithmetic before it. */
  private static final double HAIR = 1e-9;

  final int binding;
  final String sign;
  private final DoubleBinaryOperator function;

  Operation(int binding, String sign, DoubleBinaryOperator function) {
    this.binding = binding;
    this.sign = sign;
    this.function = function;
  }

  Term of(Term... parts) {
    Term first = parts[0];
    Term second = parts[parts.length - 1];
    double us = function.applyAsDouble(first.in(UnitSystem.US), second.in(UnitSystem.US));
    double metric =
        function.applyAsDouble(first.in(UnitSystem.METRIC), second.in(UnitSystem.METRIC));
    return Term.operation(this, List.of(parts), us, metric);
  }

  boolean isFunction() {
    return binding == 5;
  }

  private static double power(double base, double exponent) {
    return exponent == 2 ? base * base : Elementary.pow(base, exponent);
  }

  private static double tail(double t, double degrees) {
    return StudentT.tail(t, (int) Math.max(1, Math.floor(degrees)));
  }

  private static double roundUp(double value) {
    return Math.ceil(value - HAIR);
  }
}
