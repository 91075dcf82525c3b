package steening.reckoning;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import steening.language.Phrase;
import steening.language.Reader;
import steening.language.UnitSystem;
import steening.number.Decimal;

/**
 * The steps that lead to an answer, each checkable with a pencil: what was given, then one line per named result with
 * its formula in symbols, the same with the numbers in it, and what that makes.
 */
public record Working(List<Line> lines) {
  private static final int FIGURES = 7;

  public Working {
    lines = List.copyOf(lines);
  }

  /**
   * One step.
   *
   * @param symbol what the step is called in the formulas
   * @param label what it is in words
   * @param formula in symbols; empty for something given
   * @param figures the formula with the numbers in it; empty for something given
   * @param value the number it makes, in {@code unit}
   * @param unit as printed; may be empty
   */
  public record Line(String symbol, Phrase label, String formula, String figures, String value, String unit) {
    public boolean isGiven() {
      return formula.isEmpty();
    }
  }

  /** The working of named terms, in the order they are needed. */
  public static Working of(List<Term> answers, Reader reader) {
    Set<Term> ordered = new LinkedHashSet<>();
    for (Term answer : answers) collect(answer, ordered);
    // Two terms that write the same line are one step, however often the formula was built.
    Set<Line> lines = new LinkedHashSet<>();
    for (Term term : ordered) if (term.sort == Term.Sort.GIVEN) lines.add(line(term, reader.units()));
    for (Term term : ordered) if (term.sort == Term.Sort.NAMED) lines.add(line(term, reader.units()));
    return new Working(List.copyOf(lines));
  }

  private static void collect(Term term, Set<Term> ordered) {
    for (Term part : term.parts) collect(part, ordered);
    if (term.sort == Term.Sort.GIVEN || term.sort == Term.Sort.NAMED) ordered.add(term);
  }

  private static Line line(Term term, UnitSystem system) {
    boolean given = term.sort == Term.Sort.GIVEN;
    Term formula = given ? term : term.parts.get(0);
    return new Line(
        term.symbol,
        term.label,
        given ? "" : write(formula, true, system, 0),
        given ? "" : write(formula, false, system, 0),
        Decimal.significant(term.in(system), FIGURES),
        term.unit(system).printed());
  }

  private static String write(Term term, boolean symbols, UnitSystem system, int around) {
    if (term.sort == Term.Sort.NUMBER) return numeral(term.in(system), around);
    if (term.sort != Term.Sort.OPERATION) return symbols ? term.symbol : numeral(term.in(system), around);
    Operation operation = term.operation;
    // A factor may be one in these units only; nobody writes it.
    for (int i = 0; i < 2 && operation == Operation.MULTIPLY; i++) {
      if (term.parts.get(i).isOne(system)) return write(term.parts.get(1 - i), symbols, system, around);
    }
    // A power of a power keeps its brackets too: people read one without them in two ways.
    int left = operation == Operation.POWER ? operation.binding + 1 : operation.binding;
    String first = write(term.parts.get(0), symbols, system, operation.isFunction() ? 0 : left);
    if (operation.isFunction()) {
      String rest = term.parts.size() > 1 ? "; " + write(term.parts.get(1), symbols, system, 0) : "";
      return operation.sign + "(" + first + rest + ")";
    }
    // The right side of − and / binds one tighter: a − (b − c) keeps its brackets.
    String second = write(term.parts.get(1), symbols, system, operation.binding + 1);
    String whole = operation == Operation.POWER && second.equals("2") ? first + "²" : first + operation.sign + second;
    return operation.binding < around ? "(" + whole + ")" : whole;
  }

  private static String numeral(double value, int around) {
    String text = numeral(value);
    return value < 0 && around > 0 ? "(" + text + ")" : text;
  }

  private static String numeral(double value) {
    String text = Decimal.significant(value, FIGURES);
    return text.startsWith("-") ? "−" + text.substring(1) : text;
  }
}
