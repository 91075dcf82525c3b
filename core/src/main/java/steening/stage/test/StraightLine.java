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
record StraightLine(Term slope, Term start) {
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
  record Sums(Term n, Term x, Term y, Term xy, Term xx) {
    static Sums of(List<Point> points, Phrase logarithms) {
      double x = 0;
      double y = 0;
      double xy = 0;
      double xx = 0;
      for (Point point : points) {
        double depth = point.y().coherent();
        x += point.x();
        y += depth;
        xy += point.x() * depth;
        xx += point.x() * point.x();
      }
      return new Sums(
          Inputs.count("n", COUNT, points.size()),
          Inputs.count("Σx", Phrase.of("sum of x = {0}", "suma de x = {0}", logarithms), x),
          Term.given("Σy", Phrase.of("sum of the drawdowns y", "suma de los abatimientos y"), Scale.DEPTH,
              Length.ofMetres(y)),
          Term.given("Σxy", Phrase.of("sum of the products", "suma de los productos"), Scale.DEPTH,
              Length.ofMetres(xy)),
          Inputs.count("Σxx", Phrase.of("sum of the squares of x", "suma de los cuadrados de x"), xx));
    }

    Term slope() {
      return n.times(xy).minus(x.times(y)).over(n.times(xx).minus(x.times(x)));
    }

    /** Of the line that is made to go through x = 0, y = 0. */
    Term slopeThroughOrigin() {
      return xy.over(xx);
    }

    StraightLine line(Term slope, String start, Phrase label) {
      return new StraightLine(slope, y.minus(slope.times(x)).over(n).named(start, label, Scale.DEPTH));
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
