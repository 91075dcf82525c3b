package steening.stage.site;

import java.util.List;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.well.MovedOver;
import steening.well.Well;

/** Distances that were measured from a hole since given up: they may have shrunk by as much as the rig moved. */
final class MovedSetbacks {
  private MovedSetbacks() {}

  static List<Finding> of(Well well) {
    Setbacks setbacks = well.get(Setbacks.PART);
    return setbacks.measured().stream()
        .filter(s -> s.hole() < well.number() && !setbacks.isMeasuredAgain(s))
        .filter(s -> s.distance().minus(moved(well, s)).isLessThan(s.required()))
        .map(s -> finding(well, s))
        .toList();
  }

  private static Finding finding(Well well, Setbacks.Setback setback) {
    Length moved = moved(well, setback);
    Figure least = distance(setback.distance().minus(moved).max(Length.ZERO));
    Figure required = distance(setback.required());
    return Finding.of("site.setback-moved", Weight.LOOK, SiteStage.NAME, Phrase.of(
            "{0}: {1} from hole {2}, and the rig moved {3}: it may be only {4} now; {5} required.",
            "{0}: {1} desde el barreno {2}, y el equipo se movió {3}: puede ser solo {4}; {5} exigidos.",
            setback.hazard().label(), distance(setback.distance()), Integer.toString(setback.hole()), distance(moved),
            least, required))
        .comparing(least, required)
        .so(Phrase.of(
            "Measure it from the new hole before it is drilled on.",
            "Mídala desde el barreno nuevo antes de seguir perforando."))
        .from(List.of(setback.entry()));
  }

  /** How far the rig moved in all since. */
  private static Length moved(Well well, Setbacks.Setback setback) {
    return well.earlier().stream()
        .filter(hole -> hole.number() >= setback.hole())
        .flatMap(hole -> hole.get(MovedOver.AWAY).stream())
        .map(MovedOver::distance)
        .reduce(Length.ZERO, Length::plus);
  }

  private static Figure distance(Length length) {
    return new Figure(length, Scale.DISTANCE);
  }
}
