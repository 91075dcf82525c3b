package steening.drawing;

import java.util.List;
import java.util.function.ToDoubleFunction;
import steening.language.Phrase;
import steening.language.Reader;
import steening.number.Decimal;

/** A chart in words: the captions of its axes, and what it shows for those who listen to it. */
final class ChartWords {
  private static final int FIGURES = 4;
  private static final Phrase POINTS = Phrase.of("Points: {0}.", "Puntos: {0}.");
  private static final Phrase SPAN = Phrase.of("{0}: from {1} to {2}.", "{0}: de {1} a {2}.");
  private static final Phrase LINE = Phrase.of(
      "Line from {0}; {1} to {2}; {3}.", "Línea de {0}; {1} a {2}; {3}.");

  private ChartWords() {}

  /** What an axis measures, with its unit. */
  static String caption(Chart.Axis axis, Reader reader) {
    String label = axis.label().shownTo(reader);
    return axis.unit(reader).isEmpty() ? label : label + ", " + axis.unit(reader);
  }

  static String of(Chart chart, Reader reader) {
    StringBuilder words = new StringBuilder(POINTS.about(Integer.toString(chart.points().size())).shownTo(reader));
    span(words, chart.across(), chart.points(), Chart.Point::x, reader);
    span(words, chart.down(), chart.points(), Chart.Point::y, reader);
    chart.line().filter(line -> line.size() > 1).ifPresent(line -> {
      Chart.Point first = line.get(0);
      Chart.Point last = line.get(line.size() - 1);
      words.append(' ').append(
          LINE.about(number(first.x()), number(first.y()), number(last.x()), number(last.y())).shownTo(reader));
    });
    return words.toString();
  }

  private static void span(
      StringBuilder words,
      Chart.Axis axis,
      List<Chart.Point> points,
      ToDoubleFunction<Chart.Point> value,
      Reader reader) {
    double least = Double.POSITIVE_INFINITY;
    double greatest = Double.NEGATIVE_INFINITY;
    for (Chart.Point point : points) {
      least = Math.min(least, value.applyAsDouble(point));
      greatest = Math.max(greatest, value.applyAsDouble(point));
    }
    if (least > greatest) return;
    words.append(' ').append(SPAN.about(caption(axis, reader), number(least), number(greatest)).shownTo(reader));
  }

  private static String number(double value) {
    return ChartScale.holds(false, value) ? Decimal.significant(value, FIGURES) : "–";
  }
}
