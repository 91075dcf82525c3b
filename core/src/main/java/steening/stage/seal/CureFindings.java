package steening.stage.seal;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Measure;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.well.Cure;
import steening.well.Fill;
import steening.well.Well;

/** Whether the seal was begun on joints whose cement had not cured. */
final class CureFindings {
  private CureFindings() {}

  static Optional<Finding> of(Well well) {
    Optional<Cure> cure = well.get(Cure.PART);
    return cure.flatMap(c -> Stream.of(Fill.CHIPS, Fill.GROUT).flatMap(fill -> well.get(fill).pours().stream())
        .filter(pour -> pour.at().isAfter(c.joined()) && c.until().isAfter(pour.at()))
        .findFirst().map(pour -> early(c, pour)));
  }

  private static Finding early(Cure cure, Fill.Pour pour) {
    Figure waited = hours(pour.at().minutesSince(cure.joined()));
    Figure needed = new Figure(cure.time(), Scale.HOURS);
    return Finding.of("seal.before-cure", Weight.LOOK, SealStage.NAME, Phrase.of(
            "The seal was begun {0} after the last joint was cemented; the cement takes {1}, until {2}.",
            "El sello se empezó {0} después de cementar la última unión; el cemento tarda {1}, hasta {2}.",
            waited, needed, cure.clock()))
        .comparing(waited, needed)
        .because(Phrase.of(
            "A joint that is loaded before it has cured can part or leak.",
            "Una unión cargada antes de curar puede abrirse o gotear."))
        .so(Phrase.of(
            "Hold the string, no blows on it, and let the rest wait. The label of the cement decides.",
            "Sostenga la columna, sin golpes, y deje esperar lo demás. Decide la etiqueta del cemento."))
        .from(List.of(pour.entry()));
  }

  private static Figure hours(double minutes) {
    return new Figure(Measure.of(minutes, Unit.MINUTE), Scale.HOURS);
  }
}
