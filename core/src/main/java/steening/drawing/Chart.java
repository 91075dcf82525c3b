package steening.drawing;

import java.util.List;
import java.util.Optional;
import steening.language.Phrase;

/**
 * Points, and perhaps a line through them, on a pair of axes; what to draw, not how.
 *
 * @param title what it shows
 * @param across the horizontal axis
 * @param down the vertical axis; drawdown is counted downward
 * @param points measured
 * @param line fitted: two points, if any
 */
public record Chart(Phrase title, Axis across, Axis down, List<Point> points, Optional<List<Point>> line) {
  public Chart {
    points = List.copyOf(points);
    line = line.map(List::copyOf);
  }

  /** What an axis measures, in which unit, and whether by logarithm. */
  public record Axis(Phrase label, String unit, boolean logarithmic, boolean downward) {}

  /** One point; {@code used} tells whether the line rests on it. */
  public record Point(double x, double y, boolean used) {}
}
