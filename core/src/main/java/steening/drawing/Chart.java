package steening.drawing;

import java.util.List;
import java.util.Optional;
import steening.language.Phrase;
import steening.language.Reader;
import steening.quantity.Scale;

/**
 * Points, and perhaps a line through them, on a pair of axes; what to draw, not how.
 *
 * @param title what it shows
 * @param across the horizontal axis
 * @param down the vertical axis; drawdown is counted downward
 * @param points measured
 * @param line fitted or expected, from point to point, if any
 */
public record Chart(Phrase title, Axis across, Axis down, List<Point> points, Optional<List<Point>> line) {
  public Chart {
    points = List.copyOf(points);
    line = line.map(List::copyOf);
  }

  /** The same chart with its numbers in the reader's own units. */
  Chart inUnitsOf(Reader reader) {
    return new Chart(title, across, down, converted(points, reader), line.map(ends -> converted(ends, reader)));
  }

  private List<Point> converted(List<Point> points, Reader reader) {
    return points.stream().map(p -> new Point(across.in(reader, p.x()), down.in(reader, p.y()), p.used())).toList();
  }

  /** What an axis measures and in which units; whether by logarithm, and whether it counts downward. */
  public record Axis(Phrase label, Scale scale, boolean logarithmic, boolean downward) {
    String unit(Reader reader) {
      return scale.of(reader).printed();
    }

    private double in(Reader reader, double value) {
      return scale.of(reader).fromCoherent(scale.us().toCoherent(value));
    }
  }

  /** One point, in the US units of the two scales; {@code used} tells whether the line rests on it. */
  public record Point(double x, double y, boolean used) {}
}
