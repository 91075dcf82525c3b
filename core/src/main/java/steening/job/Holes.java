package steening.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.finding.Finding;
import steening.journal.Dates;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Scale;
import steening.stage.Progress;
import steening.stage.Sheet;
import steening.stage.Stage;
import steening.well.MovedOver;
import steening.well.Plugs;
import steening.well.Well;

/** The holes of a job, each for itself: what was found, and what there is to show of it. */
public final class Holes {
  private Holes() {}

  public static Phrase name(int number) {
    return Phrase.of("Hole {0}", "Barreno {0}", Integer.toString(number));
  }

  /** What stands out in one hole, the heaviest first, otherwise in the order of the job. */
  public static List<Finding> findings(Well hole) {
    List<Finding> findings = new ArrayList<>();
    for (Stage stage : Stages.all()) findings.addAll(stage.findings(hole));
    findings.sort((a, b) -> b.weight().compareTo(a.weight()));
    return findings;
  }

  /** The stages that were begun in a hole itself, beyond the desk. */
  public static List<Stage> stages(Well hole) {
    return Stages.all().subList(Job.DESK_WORK, Stages.all().size()).stream()
        .filter(stage -> isBegun(stage, hole) && !sheet(stage, hole).isEmpty()).toList();
  }

  /** The holes that are closed, or that somebody began to close, each by itself. */
  public static List<Well> closed(Well well) {
    List<Well> holes = new ArrayList<>(well.earlier());
    holes.add(well.alone());
    return holes.stream().filter(hole -> hole.get(Plugs.PART).isBegun()).toList();
  }

  private static boolean isBegun(Stage stage, Well hole) {
    Progress progress = stage.progress(hole);
    return progress == Progress.UNDER_WAY || progress == Progress.DONE;
  }

  /** What a stage has to show of a hole where no more work is done. */
  public static Sheet sheet(Stage stage, Well hole) {
    Sheet sheet = stage.sheet(hole);
    return new Sheet(sheet.lines(), sheet.tables(), sheet.charts(), List.of());
  }

  /** How a hole was left; nothing for one that was not given up. */
  public static Optional<Phrase> givenUp(Well hole) {
    return hole.get(MovedOver.AWAY).map(moved -> Phrase.of(
        "Given up on {0} at {1}: {2}. The rig moved over {3}, to the {4}.",
        "Abandonado el {0} a {1}: {2}. El equipo se movió {3}, hacia el {4}.",
        Dates.format(moved.at().date()), new Figure(moved.depth(), Scale.DEPTH), moved.why().label(),
        new Figure(moved.distance(), Scale.DISTANCE), moved.direction().label()));
  }
}
