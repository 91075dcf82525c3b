package steening.job;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.pcollections.PVector;
import org.pcollections.TreePVector;
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
 * One well with its journal, folded. It grows with its journal: what was folded before a new entry stays folded, and of
 * an entry that belongs further back only what comes after it is folded again, from the last mark before it.
 */
public final class Job {
  /** Site, permit and plan are the desk's; the rig moves after them. */
  static final int DESK_WORK = 3;

  /** So many facts lie between two marks. */
  private static final int BETWEEN_MARKS = 256;

  private final Journal journal;
  private final Well well;
  private final Fold fold;
  private final PVector<Fold> marks;

  private Job(Journal journal, Fold fold, PVector<Fold> marks) {
    this.journal = journal;
    this.well = fold.well();
    this.fold = fold;
    this.marks = marks;
  }

  /** Folds a journal. Pure: equal journals give equal wells. */
  public static Job of(String id, Journal journal) {
    Fold nothing = Fold.nothing(id);
    return folded(journal, nothing, TreePVector.singleton(nothing));
  }

  /** The same as folding the union of the journal and these entries. */
  public Job with(Collection<Entry> more) {
    Journal.Growth growth = journal.grown(more);
    if (growth.kept() >= fold.facts()) return folded(growth.journal(), fold, marks);
    PVector<Fold> standing = marks;
    while (last(standing).facts() > growth.kept()) standing = standing.minus(standing.size() - 1);
    return folded(growth.journal(), last(standing), standing);
  }

  private static Job folded(Journal journal, Fold from, PVector<Fold> marks) {
    List<Entry> facts = journal.facts();
    Fold fold = from;
    PVector<Fold> more = marks;
    while (fold.facts() < facts.size()) {
      fold = fold.and(facts.get(fold.facts()));
      if (fold.facts() % BETWEEN_MARKS == 0) more = more.plus(fold);
    }
    return new Job(journal, fold, more);
  }

  private static Fold last(PVector<Fold> marks) {
    return marks.get(marks.size() - 1);
  }

  public Journal journal() {
    return journal;
  }

  public Well well() {
    return well;
  }

  /** Entries that are kept but not understood here: of a newer kind, or with a body that does not fit. */
  public List<Entry> unread() {
    return fold.unread();
  }

  /** Values that a form would have asked about, in entries that came another way and that nobody confirmed. */
  List<Finding> unusual() {
    return fold.unusual();
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
    return Optional.ofNullable(fold.latest().get(kind.name()));
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
    List<Entry> facts = journal.facts();
    Optional<Stage> latest =
        facts.isEmpty() ? Optional.empty() : Stages.ofKind(facts.get(facts.size() - 1).kind());
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
    List<Phrase> cautions = cautions(stage, own);
    return cautions.isEmpty() ? bare : bare.cautioning(cautions).cautioning(List.of(Cautions.DEFER));
  }

  /** Where the work still to do in a stage can hurt someone. */
  public List<Phrase> cautions(Stage stage) {
    return cautions(stage, stage.sheet(well));
  }

  private List<Phrase> cautions(Stage stage, Sheet own) {
    if (isOver(stage)) return List.of();
    List<Phrase> cautions = new ArrayList<>(own.cautions());
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
