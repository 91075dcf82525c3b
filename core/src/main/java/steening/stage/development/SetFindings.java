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
import steening.well.Setting;
import steening.well.Well;

/** Whether the well was developed while the cement round it was setting: Minn. 4725.3050 forbids it (seen). */
final class SetFindings {
  private SetFindings() {}

  static Optional<Finding> of(Well well) {
    return well.get(Setting.PART).flatMap(setting -> well.get(Development.PART).cycles().stream()
        .filter(cycle -> setting.isDisturbedAt(cycle.at())).findFirst().map(cycle -> early(setting, cycle)));
  }

  private static Finding early(Setting setting, Development.Cycle cycle) {
    Figure waited =
        new Figure(Measure.of(cycle.at().minutesSince(setting.placed()), Unit.MINUTE), Scale.HOURS);
    Figure asked = new Figure(setting.time(), Scale.HOURS);
    return Finding.of("development.before-set", Weight.LOOK, DevelopmentStage.NAME, Phrase.of(
            "Developed {0} after the cement was placed; it is left {1} to set.",
            "Se desarrolló {0} después de colocar el cemento; se deja {1} para fraguar.", waited, asked))
        .comparing(waited, asked)
        .because(Phrase.of(
            "Surging cracks cement that sets, and draws it down.", "El pistoneo agrieta el cemento que fragua y lo baja."))
        .so(Phrase.of(
            "Stop until it has set, then sound it. Your rules decide the hours.",
            "Pare hasta que fragüe y luego sondéelo. Las horas las decide su norma."))
        .from(List.of(setting.entry(), cycle.entry()));
  }
}
