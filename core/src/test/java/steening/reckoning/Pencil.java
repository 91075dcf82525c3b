package steening.reckoning;

import java.math.BigDecimal;
import java.util.Map;
import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;

/**
 * Works a printed formula out from its text alone, as a person with a pencil would; knows nothing of terms. A number is
 * worth what its digits leave open: of seven figures, half a unit of the seventh either way.
 *
 * <p>Reads numbers, symbols, + − × / ^ ² √( ) log( ) up( ) tail( ; ) max( ; ) min( ; ) and brackets.
 */
final class Pencil {
  private static final int FIGURES = 7;

  private final String text;
  private final Map<String, Span> symbols;
  private int at;

  private Pencil(String text, Map<String, Span> symbols) {
    this.text = text;
    this.symbols = symbols;
  }

  /** All values that a printed number may stand for. */
  record Span(double least, double most) {
    static Span of(String printed) {
      BigDecimal value = new BigDecimal(printed.replace('−', '-'));
      int magnitude = value.precision() - value.scale();
      double half = value.signum() == 0 ? 0 : 0.5 * Math.pow(10, magnitude - FIGURES);
      return new Span(value.doubleValue() - half, value.doubleValue() + half);
    }

    double middle() {
      return (least + most) / 2;
    }

    /** Whether the two may be one number. */
    boolean meets(Span other) {
      double hair = 1e-9 * Math.max(Math.abs(least), Math.abs(most));
      return least - hair <= other.most && other.least <= most + hair;
    }

    Span map(DoubleUnaryOperator rising) {
      return new Span(rising.applyAsDouble(least), rising.applyAsDouble(most));
    }

    /** For an operation without a turn between the ends of either. */
    Span with(Span other, DoubleBinaryOperator operation) {
      double[] corners = {
        operation.applyAsDouble(least, other.least), operation.applyAsDouble(least, other.most),
        operation.applyAsDouble(most, other.least), operation.applyAsDouble(most, other.most)
      };
      double low = corners[0];
      double high = corners[0];
      for (double corner : corners) {
        low = Math.min(low, corner);
        high = Math.max(high, corner);
      }
      return new Span(low, high);
    }
  }

  /** Works out a formula with numbers in it. */
  static Span workOut(String figures) {
    return workOut(figures, Map.of());
  }

  /** Works out a formula in symbols. */
  static Span workOut(String formula, Map<String, Span> symbols) {
    Pencil pencil = new Pencil(formula.replace(" ", ""), symbols);
    Span result = pencil.sum();
    if (pencil.at < pencil.text.length()) throw pencil.lost();
    return result;
  }

  private Span sum() {
    Span sum = product();
    while (true) {
      if (take('+')) sum = sum.with(product(), Double::sum);
      else if (take('−')) sum = sum.with(product(), (a, b) -> a - b);
      else return sum;
    }
  }

  private Span product() {
    Span product = power();
    while (true) {
      if (take('×')) product = product.with(power(), (a, b) -> a * b);
      else if (take('/')) product = product.with(power(), (a, b) -> a / b);
      else return product;
    }
  }

  /** Refuses a power of a power without brackets: people read it in two ways. */
  private Span power() {
    Span base = atom();
    Span result = base;
    if (take('²')) result = base.with(base, (a, b) -> a * b);
    else if (take('^')) result = base.with(atom(), Math::pow);
    if (at < text.length() && (text.charAt(at) == '^' || text.charAt(at) == '²')) throw lost();
    return result;
  }

  private Span atom() {
    if (take('−')) return atom().with(new Span(-1, -1), (a, b) -> a * b);
    if (take('(')) return closed(sum());
    if (take('√')) return argument().map(Math::sqrt);
    String symbol = symbol();
    if (!symbol.isEmpty()) return symbols.get(symbol);
    String word = word();
    if (at < text.length() && text.charAt(at) == '(') {
      return switch (word) {
        case "log" -> argument().map(Math::log10);
        case "up" -> argument().map(Math::ceil);
        case "tail" -> pair(Pencil::tail);
        case "max" -> pair(Math::max);
        case "min" -> pair(Math::min);
        case "W" -> wellFunction();
        default -> throw lost();
      };
    }
    if (word.isEmpty() || !isDigit(word.charAt(0))) throw lost();
    return Span.of(word);
  }

  /** The longest symbol that stands here: a sum of squares may be called Σx². */
  private String symbol() {
    String longest = "";
    for (String symbol : symbols.keySet()) {
      if (symbol.length() > longest.length() && text.startsWith(symbol, at)) longest = symbol;
    }
    at += longest.length();
    return longest;
  }

  private Span argument() {
    if (!take('(')) throw lost();
    return closed(sum());
  }

  private Span pair(DoubleBinaryOperator operation) {
    if (!take('(')) throw lost();
    Span first = sum();
    if (!take(';')) throw lost();
    return closed(first.with(sum(), operation));
  }

  /** Student's t, by adding up narrow strips of its density over t = √ν tan θ; far from how the program does it. */
  private static double tail(double t, double degrees) {
    double nu = Math.rint(degrees);
    return 0.5 - strips(Math.atan(t / Math.sqrt(nu)), nu - 1) / (2 * strips(Math.PI / 2, nu - 1));
  }

  /** By Simpson's rule. */
  private static double strips(double end, double power) {
    int strips = 400;
    double sum = 0;
    for (int i = 0; i <= strips; i++) {
      int weight = i == 0 || i == strips ? 1 : i % 2 == 0 ? 2 : 4;
      sum += weight * Math.pow(Math.cos(i * end / strips), power);
    }
    return sum * end / strips / 3;
  }

  private Span wellFunction() {
    if (!take('(')) throw lost();
    Span u = sum();
    Span leakage = take(';') ? sum() : new Span(0, 0);
    return closed(u.with(leakage, WellIntegral::w));
  }

  private Span closed(Span span) {
    if (!take(')')) throw lost();
    return span;
  }

  private String word() {
    int start = at;
    while (at < text.length() && "+−×/^²()√;".indexOf(text.charAt(at)) < 0) at++;
    return text.substring(start, at);
  }

  private boolean take(char sign) {
    boolean here = at < text.length() && text.charAt(at) == sign;
    if (here) at++;
    return here;
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  private AssertionError lost() {
    return new AssertionError("cannot be worked out from character " + at + " on: " + text);
  }
}
