package steening.stage.test;

import java.util.List;
import steening.language.Phrase;
import steening.language.UnitSystem;
import steening.number.Elementary;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Term;

/**
 * The straight line through levels over the logarithm of a time, by unweighted least squares, from the five sums that a
 * person would write under the columns.
 *
 * <p>slope = (n Σxy − Σx Σy) / (n Σxx − Σx Σx); at x = 0, (Σy − slope Σx) / n. Source: arithmetic.
 *
 * @param slope per log cycle
 * @param start where the line crosses x = 0
 */
public record StraightLine(Term slope, Term start) {
  /** A slope below a micrometre is what rounding leaves of none. */
  private static final double LEVEL = 1e-6;

  private static final Phrase COUNT = Phrase.of("number of readings used", "número de lecturas usadas");

  /**
   * One reading.
   *
   * @param minutes as read: since the start, or since the stop
   * @param x common logarithm
   * @param y drawdown
   */
  record Point(double minutes, double x, Length y) {
    static Point at(double minutes, double ratio, Length y) {
      return new Point(minutes, Elementary.log10(ratio), y);
    }
  }

  /** The sums over the points, as terms. */
  public record Sums(Term n, Term x, Term y, Term xy, Term xx) {
    static Sums of(List<Point> points, Phrase logarithms) {
      double[] x = points.stream().mapToDouble(Point::x).toArray();
      double[] y = points.stream().mapToDouble(p -> p.y().coherent()).toArray();
      return of(x, y, Scale.DEPTH, logarithms, Phrase.of("the drawdowns", "los abatimientos"));
    }

    /**
     * The sums over pairs.
     *
     * @param y in coherent units of the scale
     * @param across what x is
     * @param up what y is, with its article
     */
    public static Sums of(double[] x, double[] y, Scale scale, Phrase across, Phrase up) {
      double sumX = 0;
      double sumY = 0;
      double sumXy = 0;
      double sumXx = 0;
      for (int i = 0; i < x.length; i++) {
        sumX += x[i];
        sumY += y[i];
        sumXy += x[i] * y[i];
        sumXx += x[i] * x[i];
      }
      return new Sums(
          Inputs.count("n", COUNT, x.length),
          Inputs.count("Σx", Phrase.of("sum of x = {0}", "suma de x = {0}", across), sumX),
          Term.given("Σy", Phrase.of("sum of {0} y", "suma de {0} y", up), scale, scale.dimension().of(sumY)),
          Term.given("Σxy", Phrase.of("sum of the products", "suma de los productos"), scale,
              scale.dimension().of(sumXy)),
          Inputs.count("Σxx", Phrase.of("sum of the squares of x", "suma de los cuadrados de x"), sumXx));
    }

    /** Upwards; above zero where y grows with x. */
    public Term slope() {
      return n.times(xy).minus(x.times(y)).over(n.times(xx).minus(x.times(x)));
    }

    /** Of the line that is made to go through x = 0, y = 0. */
    Term slopeThroughOrigin() {
      return xy.over(xx);
    }

    StraightLine line(Term slope, String start, Phrase label) {
      return new StraightLine(slope, start(slope).named(start, label, Scale.DEPTH));
    }

    /** Where a line of this slope crosses x = 0. */
    public Term start(Term slope) {
      return y.minus(slope.times(x)).over(n);
    }
  }

  static boolean rises(Term slope) {
    return slope.in(UnitSystem.METRIC) > LEVEL;
  }

  /** A line always comes out; how far it misses tells whether the readings lie on one. */
  Phrase misfit(List<Point> used) {
    Point worst = used.get(0);
    for (Point point : used) if (miss(point) > miss(worst)) worst = point;
    return Phrase.of(
        "The line misses the readings by {0} at most, at {1}.",
        "La recta se aparta de las lecturas {0} como máximo, a {1}.",
        new Figure(Length.ofMetres(miss(worst)), Scale.DEPTH), Window.minutes(worst.minutes()));
  }

  /** How far the line misses a reading, in metres. */
  double miss(Point point) {
    return Math.abs(point.y().coherent() - at(point.x()));
  }

  /** The line at a logarithm, in metres. */
  double at(double x) {
    return start.in(UnitSystem.METRIC) + slope.in(UnitSystem.METRIC) * x;
  }

  /** The points whose times lie in a window; none of them at minute zero, which has no logarithm. */
  static List<Point> within(List<Point> points, double from, double to) {
    List<Point> used = points.stream().filter(p -> p.minutes() > 0 && p.minutes() >= from && p.minutes() <= to)
        .toList();
    boolean differ = used.stream().anyMatch(p -> p.x() != used.get(0).x());
    if (!differ) {
      throw new NotReckonable(
          "A line needs readings at two times at least; the window holds {0}.",
          "Una recta necesita lecturas en dos tiempos por lo menos; la ventana tiene {0}.",
          Integer.toString(used.size()));
    }
    return used;
  }
}
