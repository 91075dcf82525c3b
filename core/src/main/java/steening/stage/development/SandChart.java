package steening.stage.development;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.drawing.Chart;
import steening.language.Phrase;
import steening.quantity.Scale;

/** Sand over pumped time, with the curve where one was laid through. */
final class SandChart {
  private static final int PIECES = 32;

  private SandChart() {}

  /** None before the second reading. */
  static Optional<Chart> of(SandCourse course) {
    SandSeries all = course.all();
    if (all.size() < 2) return Optional.empty();
    List<Chart.Point> points = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      boolean counted = i >= all.size() - course.last();
      points.add(new Chart.Point(all.minutes(i), all.content(i), counted));
    }
    boolean fitted =
        course.decay().filter(o -> o.answers().containsKey(SandDecay.HALF_LIFE.name())).isPresent();
    return Optional.of(new Chart(
        Phrase.of("Sand over pumped time", "Arena según el tiempo bombeado"),
        new Chart.Axis(SandSeries.TIMES.label(), Scale.MINUTES, false, false),
        new Chart.Axis(SandContent.CONTENT.label(), Scale.CONCENTRATION, false, false),
        points,
        fitted ? Optional.of(line(course.counted())) : Optional.empty()));
  }

  private static List<Chart.Point> line(SandSeries counted) {
    SandCurve curve = SandCurve.through(counted);
    double from = counted.minutes(0);
    double span = counted.minutes(counted.size() - 1) - from;
    List<Chart.Point> line = new ArrayList<>();
    for (int i = 0; i <= PIECES; i++) {
      double minutes = span * i / PIECES;
      line.add(new Chart.Point(from + minutes, curve.after(minutes), true));
    }
    return line;
  }
}
