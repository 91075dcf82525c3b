package steening.reckoning;

import java.util.List;
import steening.language.Phrase;
import steening.language.UnitSystem;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Unit;

/**
 * A piece of a formula: something given, a number, an operation on other terms, or a named result that gets a line of
 * its own in the working. Immutable. A term has the value it was built with in either system of units, so the working
 * can be shown in both and must agree.
 */
public final class Term {
  enum Sort {
    GIVEN,
    NUMBER,
    NAMED,
    OPERATION
  }

  final Sort sort;
  final String symbol;
  final Phrase label;
  final Scale scale;
  final Operation operation;
  final List<Term> parts;
  private final double us;
  private final double metric;

  private Term(
      Sort sort, String symbol, Phrase label, Scale scale, Operation operation, List<Term> parts,
      double us, double metric) {
    this.sort = sort;
    this.symbol = symbol;
    this.label = label;
    this.scale = scale;
    this.operation = operation;
    this.parts = parts;
    this.us = us;
    this.metric = metric;
  }

  /** Something measured, chosen or known, in the unit that the scale is read in. */
  public static Term given(String symbol, Phrase label, Scale scale, Quantity quantity) {
    return new Term(
        Sort.GIVEN, symbol, label, scale, null, List.of(), quantity.in(scale.us()), quantity.in(scale.metric()));
  }

  /** A pure number of the formula, with at most a few digits: 2, 0.6, 264. */
  public static Term number(double value) {
    return new Term(Sort.NUMBER, "", null, null, null, List.of(), value, value);
  }

  /** A factor whose digits depend on the units of the formula; see {@link Coefficient}. */
  static Term coefficient(double us, double metric) {
    return new Term(Sort.NUMBER, "", null, null, null, List.of(), us, metric);
  }

  /** A result with a name: its formula becomes one line of the working. */
  public Term named(String symbol, Phrase label, Scale scale) {
    return new Term(Sort.NAMED, symbol, label, scale, null, List.of(this), us, metric);
  }

  public Term plus(Term other) {
    return Operation.ADD.of(this, other);
  }

  public Term minus(Term other) {
    return Operation.SUBTRACT.of(this, other);
  }

  public Term times(Term other) {
    if (isUnity()) return other;
    return other.isUnity() ? this : Operation.MULTIPLY.of(this, other);
  }

  public Term times(double factor) {
    return times(number(factor));
  }

  public Term over(Term other) {
    return Operation.DIVIDE.of(this, other);
  }

  public Term over(double divisor) {
    return over(number(divisor));
  }

  public Term squared() {
    return power(2);
  }

  public Term power(double exponent) {
    return power(number(exponent));
  }

  public Term power(Term exponent) {
    return Operation.POWER.of(this, exponent);
  }

  public Term squareRoot() {
    return Operation.SQUARE_ROOT.of(this);
  }

  public Term log10() {
    return Operation.LOG_10.of(this);
  }

  /** The chance of more than this by Student's t distribution. */
  public Term tail(Term degrees) {
    return Operation.TAIL.of(this, degrees);
  }

  public Term roundedUp() {
    return Operation.ROUND_UP.of(this);
  }

  public Term most(Term other) {
    return Operation.MOST.of(this, other);
  }

  public Term least(Term other) {
    return Operation.LEAST.of(this, other);
  }

  /** The well function of Theis, W(u), of this u. */
  public Term wellFunction() {
    return Operation.THEIS.of(this);
  }

  /** The leaky well function of Hantush and Jacob, W(u; r/B), of this u. */
  public Term wellFunction(Term leakage) {
    return Operation.HANTUSH.of(this, leakage);
  }

  /** The sum of at least one term. */
  public static Term sum(List<Term> terms) {
    Term sum = terms.get(0);
    for (Term term : terms.subList(1, terms.size())) sum = sum.plus(term);
    return sum;
  }

  static Term operation(Operation operation, List<Term> parts, double us, double metric) {
    return new Term(Sort.OPERATION, "", null, null, operation, parts, us, metric);
  }

  /** A number as it is written below a symbol: 12 is ₁₂. */
  public static String index(int number) {
    StringBuilder below = new StringBuilder();
    for (char digit : Integer.toString(number).toCharArray()) below.append((char) ('₀' + (digit - '0')));
    return below.toString();
  }

  /** The bare value in the units of a system. */
  public double in(UnitSystem system) {
    return system == UnitSystem.METRIC ? metric : us;
  }

  /**
   * What a given or named term stands for.
   *
   * @throws IllegalStateException for a term without a scale
   */
  public Quantity quantity() {
    if (scale == null) throw new IllegalStateException("only given and named terms are quantities");
    return scale.dimension().of(scale.us().toCoherent(us));
  }

  /** Whether this term and all that it rests on are finite numbers. */
  boolean isFinite() {
    boolean here = Math.abs(us) <= Double.MAX_VALUE && Math.abs(metric) <= Double.MAX_VALUE;
    return here && parts.stream().allMatch(Term::isFinite);
  }

  public String symbol() {
    return symbol;
  }

  public Phrase label() {
    return label;
  }

  public Scale scale() {
    return scale;
  }

  /** A factor of one in both systems, which nobody writes. */
  private boolean isUnity() {
    return sort == Sort.NUMBER && us == 1 && metric == 1;
  }

  /** A number that is one in the units of a system, but for the rounding of the conversion. */
  boolean isOne(UnitSystem system) {
    return sort == Sort.NUMBER && Math.abs(in(system) - 1) < 1e-12;
  }

  Unit unit(UnitSystem system) {
    return system == UnitSystem.METRIC ? scale.metric() : scale.us();
  }
}
