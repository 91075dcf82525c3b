package steening.stage.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.drawing.Chart;
import steening.language.Phrase;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.quantity.Volume;
import steening.reckoning.Outcome;
import steening.reckoning.Term;
import steening.well.Fill;

/** The tape over the bags, measured points on the line that was expected: a bridge leaps off it, a washout lags. */
final class PackChart {
  /** More bags than this are drawn lot by lot. */
  private static final int BAG_BY_BAG = 200;

  private PackChart() {}

  /** None before the first reading. */
  static Optional<Chart> of(Pouring pouring) {
    if (pouring.pack().tags().isEmpty()) return Optional.empty();
    List<Chart.Point> points = new ArrayList<>();
    for (Fill.Tag tag : pouring.pack().tags()) points.add(point(tag.bags(), tag.depth()));
    List<Chart.Point> line = line(pouring);
    return Optional.of(new Chart(
        Phrase.of("Tape and bags; the line is what was expected", "Sonda y sacos; la línea es lo esperado"),
        new Chart.Axis(Phrase.of("bags", "sacos"), Scale.NUMBER, false, false),
        new Chart.Axis(Phrase.of("depth of the pack", "profundidad del filtro"), Scale.DEPTH, false, true),
        points,
        line.size() > 1 ? Optional.of(line) : Optional.empty()));
  }

  private static List<Chart.Point> line(Pouring pouring) {
    List<Chart.Point> line = new ArrayList<>(List.of(point(0, pouring.bottom())));
    int bags = 0;
    Volume volume = Volume.NONE;
    for (Fill.Pour pour : pouring.pack().pours()) {
      int step = pouring.pack().bags() > BAG_BY_BAG ? pour.bags() : 1;
      for (int poured = step; poured <= pour.bags(); poured += step) {
        volume = volume.plus(pour.bag().times(step));
        bags += step;
        Optional<Length> top = expected(pouring, volume);
        if (top.isEmpty()) return List.of();
        line.add(point(bags, top.get()));
      }
    }
    return line;
  }

  private static Optional<Length> expected(Pouring pouring, Volume volume) {
    Term poured = Term.given("V", ExpectedTape.POURED, Scale.VOLUME, volume);
    return Outcome.ifReckonable(() -> Outcome.empty()
            .with("tape", pouring.annulus().top("z", ExpectedTape.TAPE.label(), pouring.bottom(), poured)))
        .map(o -> (Length) o.quantity("tape"));
  }

  private static Chart.Point point(int bags, Length depth) {
    return new Chart.Point(bags, depth.inFeet(), true);
  }
}
