package steening.stage.casing;

import static steening.stage.casing.CasingFindings.depth;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.language.Phrase;
import steening.quantity.Length;
import steening.quantity.Unit;
import steening.well.CasingString;
import steening.well.GroundLog;
import steening.well.Plan;
import steening.well.Screen;
import steening.well.Stratum;
import steening.well.Well;

/** The screen against the driller's log: where it stands, or where it is planned as long as it does not stand yet. */
final class GroundFindings {
  /** A log is kept to the tenth of a foot at best. Common practice, no source. */
  private static final Length TENTH = Length.of(0.1, Unit.FOOT);

  private GroundFindings() {}

  static List<Finding> of(Well well) {
    boolean set = well.get(CasingString.PART).isSet();
    List<Finding> findings = new ArrayList<>();
    for (Screen screen : set ? well.get(CasingString.PART).screens() : planned(well.get(Plan.PART))) {
      for (Stratum stratum : well.get(GroundLog.PART).between(screen.top(), screen.bottom())) {
        Screen against = new Screen(
            screen.top().max(stratum.from()), screen.bottom().min(stratum.to()), screen.entry());
        if (against.length().isMoreThan(TENTH)) finding(screen, stratum, against, set).ifPresent(findings::add);
      }
    }
    return findings;
  }

  private static List<Screen> planned(Plan plan) {
    Optional<Length> top = plan.length(Plan.SCREEN_TOP);
    Optional<Length> bottom = plan.length(Plan.SCREEN_BOTTOM);
    return top.isPresent() && bottom.isPresent() ? List.of(new Screen(top.get(), bottom.get(), "")) : List.of();
  }

  private static Optional<Finding> finding(Screen screen, Stratum stratum, Screen against, boolean set) {
    boolean tight = stratum.material().isTight();
    if (!tight && (stratum.material().givesWater() || stratum.waterBearing())) return Optional.empty();
    Phrase ground = Phrase.of(
        set
            ? "The screen from {0} to {1} stands against {2} from {3} to {4}."
            : "The screen planned from {0} to {1} would stand against {2} from {3} to {4}.",
        set
            ? "La rejilla de {0} a {1} queda frente a {2}, de {3} a {4}."
            : "La rejilla planeada de {0} a {1} quedaría frente a {2}, de {3} a {4}.",
        depth(screen.top()),
        depth(screen.bottom()),
        stratum.material().label(),
        depth(against.top()),
        depth(against.bottom()));
    List<String> entries = set ? List.of(stratum.entry(), screen.entry()) : List.of(stratum.entry());
    if (!tight) {
      return Optional.of(Finding.of("casing.screen-not-in-water", Weight.LOOK, CasingStage.NAME, ground)
          .because(Phrase.of("That ground gives little water.", "Ese terreno da poca agua."))
          .so(Phrase.of(
              "Compare the tally with the log; move the screen.",
              "Compare la columna con el registro; mueva la rejilla."))
          .from(entries));
    }
    return Optional.of(Finding.of(
            "casing.screen-in-clay", stratum.waterBearing() ? Weight.LOOK : Weight.STOP, CasingStage.NAME, ground)
        .because(Phrase.of(
            "An error in the tally or in the log, or a lens that was logged after the plan.",
            "Un error en la columna o en el registro, o un lente registrado después del plan."))
        .so(Phrase.of(
            "Put nothing around it yet. Compare tally and log; move the screen.",
            "No coloque nada alrededor todavía. Compare columna y registro; mueva la rejilla."))
        .from(entries));
  }
}
