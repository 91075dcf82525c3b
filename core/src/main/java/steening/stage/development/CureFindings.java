package steening.stage.development;

import java.util.List;
import java.util.Optional;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Measure;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.well.Cure;
import steening.well.Well;

/** Whether the well was worked on joints whose cement had not cured. */
final class CureFindings {
  /** What hardly shakes the string. */
  private static final String GENTLE = "bailing";

  private CureFindings() {}

  static Optional<Finding> of(Well well) {
    return well.get(Cure.PART).flatMap(cure -> well.get(Development.PART).cycles().stream()
        .filter(c -> c.at().isAfter(cure.joined()) && cure.until().isAfter(c.at()))
        .filter(c -> c.method().filter(m -> !m.code().equals(GENTLE)).isPresent())
        .findFirst().map(c -> early(cure, c)));
  }

  private static Finding early(Cure cure, Development.Cycle cycle) {
    Figure waited = new Figure(Measure.of(cycle.at().minutesSince(cure.joined()), Unit.MINUTE), Scale.HOURS);
    Figure needed = new Figure(cure.time(), Scale.HOURS);
    return Finding.of("development.before-cure", Weight.LOOK, DevelopmentStage.NAME, Phrase.of(
            "Development by {0}: {1} after the last joint was cemented; the cement takes {2}, until {3}.",
            "Desarrollo por {0}: {1} después de cementar la última unión; el cemento tarda {2}, hasta {3}.",
            cycle.method().orElseThrow().label(), waited, needed, cure.clock()))
        .comparing(waited, needed)
        .because(Phrase.of(
            "Air and surging shake the string; a joint that has not cured can part or leak.",
            "El aire y el pistoneo sacuden la columna; una unión sin curar puede abrirse o gotear."))
        .so(Phrase.of(
            "Stop until then. The label of the cement decides.",
            "Pare hasta entonces. Decide la etiqueta del cemento."))
        .from(List.of(cycle.entry()));
  }
}
