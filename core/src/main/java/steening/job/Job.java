package steening.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.field.Kind;
import steening.finding.Finding;
import steening.journal.Entry;
import steening.journal.Journal;
import steening.language.Phrase;
import steening.stage.Progress;
import steening.stage.Sheet;
import steening.stage.Stage;
import steening.well.Well;

/**
 * One well with its journal, folded.
 *
 * @param unread entries that are kept but not understood here: of a newer kind, or with a body that does not fit
 */
public record Job(Journal journal, Well well, List<Entry> unread) {
  /** Site, permit and plan are the desk's; the rig moves after them. */
  static final int DESK_WORK = 3;

  /** Folds a journal. Pure: equal journals give equal wells. */
  public static Job of(String id, Journal journal) {
    Well well = Well.named(id);
    List<Entry> unread = new ArrayList<>();
    for (Entry entry : journal.facts()) {
      Optional<Kind> kind = Stages.kind(entry.kind());
      boolean readable = kind.isPresent()
          && entry.schema() <= kind.get().schema()
          && kind.get().faults(entry.body()).isEmpty();
      if (readable) well = Stages.ofKind(entry.kind()).orElseThrow().fold(well, entry);
      else unread.add(entry);
    }
    return new Job(journal, well, List.copyOf(unread));
  }

  /** All findings, the heaviest first, otherwise in the order of the job. */
  public List<Finding> findings() {
    List<Finding> findings = new ArrayList<>(Holes.findings(well));
    findings.addAll(JournalFindings.of(this));
    findings.sort((a, b) -> b.weight().compareTo(a.weight()));
    return findings;
  }

  /** The latest fact of a kind. */
  public Optional<Entry> last(Kind kind) {
    return journal.facts().stream().filter(e -> e.kind().equals(kind.name())).reduce((earlier, later) -> later);
  }

  /**
   * The stage to work on: the latest on the line that anything was entered for, or the one after it once it is done.
   * Before the first foot, whatever of the desk work is still open comes first. A stage beside the line is it while
   * the crew is at it, once all else is done, and when it ends the job.
   */
  public Stage present() {
    return beside().orElseGet(this::onTheLine);
  }

  private Optional<Stage> beside() {
    Optional<Stage> latest = journal.facts().stream().reduce((earlier, later) -> later)
        .flatMap(entry -> Stages.ofKind(entry.kind()));
    boolean lineDone = Stages.all().stream().filter(s -> !s.isBesideTheLine()).allMatch(this::isOver);
    return Stages.all().stream().filter(Stage::isBesideTheLine)
        .filter(stage -> stage.endsTheJob(well)
            || !isOver(stage) && (lineDone || latest.filter(s -> s == stage).isPresent()))
        .findFirst();
  }

  private Stage onTheLine() {
    List<Stage> stages = Stages.all().stream().filter(s -> !s.isBesideTheLine()).toList();
    int latest = 0;
    for (int i = 0; i < stages.size(); i++) {
      if (stages.get(i).progress(well) != Progress.NOT_BEGUN) latest = i;
    }
    int present = isOver(stages.get(latest)) ? Math.min(latest + 1, stages.size() - 1) : latest;
    boolean firstFootAhead = present <= DESK_WORK && well.number() == 1;
    for (int i = 0; firstFootAhead && i < present; i++) if (!isOver(stages.get(i))) return stages.get(i);
    return stages.get(present);
  }

  /** What a stage has to show, with all its cautions, which go when it is done. */
  public Sheet sheet(Stage stage) {
    Sheet own = stage.sheet(well);
    Sheet bare = new Sheet(own.lines(), own.tables(), own.charts(), List.of());
    List<Phrase> cautions = cautions(stage);
    return cautions.isEmpty() ? bare : bare.cautioning(cautions).cautioning(List.of(Cautions.DEFER));
  }

  /** Where the work still to do in a stage can hurt someone. */
  public List<Phrase> cautions(Stage stage) {
    if (isOver(stage)) return List.of();
    List<Phrase> cautions = new ArrayList<>(stage.sheet(well).cautions());
    cautions.addAll(Cautions.of(stage));
    return List.copyOf(cautions);
  }

  /** Whether nothing is left to do in any stage, or the well is closed for good. */
  public boolean isDone() {
    return Stages.all().stream().allMatch(this::isOver) || Stages.all().stream().anyMatch(s -> s.endsTheJob(well));
  }

  private boolean isOver(Stage stage) {
    Progress progress = stage.progress(well);
    return progress == Progress.DONE || progress == Progress.NOT_NEEDED;
  }
}
