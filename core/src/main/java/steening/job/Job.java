package steening.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.field.Kind;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.journal.Entry;
import steening.journal.Journal;
import steening.language.Phrase;
import steening.stage.Progress;
import steening.stage.Stage;
import steening.well.Well;

/**
 * One well with its journal, folded.
 *
 * @param unread entries that are kept but not understood here: of a newer kind, or with a body that does not fit
 */
public record Job(Journal journal, Well well, List<Entry> unread) {
  /** Site, permit and plan are the desk's; the rig moves after them. */
  private static final int DESK_WORK = 3;

  /** Folds a journal. Pure: equal journals give equal wells. */
  public static Job of(String id, Journal journal) {
    Well well = Well.named(id);
    List<Entry> unread = new ArrayList<>();
    for (Entry entry : journal.facts()) {
      Optional<Kind> kind = Stages.kind(entry.kind());
      boolean readable = kind.isPresent() && entry.schema() <= kind.get().schema() && kind.get().faults(entry.body()).isEmpty();
      if (readable) well = Stages.ofKind(entry.kind()).orElseThrow().fold(well, entry);
      else unread.add(entry);
    }
    return new Job(journal, well, List.copyOf(unread));
  }

  /** All findings, the heaviest first, otherwise in the order of the job. */
  public List<Finding> findings() {
    List<Finding> findings = new ArrayList<>();
    for (Stage stage : Stages.all()) findings.addAll(stage.findings(well));
    findings.addAll(aboutTheJournal());
    findings.sort((a, b) -> b.weight().compareTo(a.weight()));
    return findings;
  }

  /**
   * The stage to work on: the latest that anything was entered for, or the one after it once it is done. Before the
   * first foot, whatever of the desk work is still open comes first.
   */
  public Stage present() {
    List<Stage> stages = Stages.all();
    int latest = 0;
    for (int i = 0; i < stages.size(); i++) if (progress(i) != Progress.NOT_BEGUN) latest = i;
    int present = progress(latest) == Progress.DONE ? Math.min(latest + 1, stages.size() - 1) : latest;
    for (int i = 0; present <= DESK_WORK && i < present; i++) if (progress(i) != Progress.DONE) return stages.get(i);
    return stages.get(present);
  }

  private Progress progress(int stage) {
    return Stages.all().get(stage).progress(well);
  }

  private List<Finding> aboutTheJournal() {
    List<Finding> findings = new ArrayList<>();
    for (Entry entry : journal.waiting()) {
      findings.add(Finding.of(
              "journal.waiting", Weight.LOOK, "journal",
              Phrase.of(
                  "A correction names an entry that has not arrived yet.", "Una corrección nombra un registro que aún no ha llegado."))
          .from(List.of(entry.id())));
    }
    for (List<Entry> rivals : journal.rivals()) {
      findings.add(Finding.of(
              "journal.rivals", Weight.LOOK, "journal",
              Phrase.of(
                  "Two corrections of one entry do not know of each other; the later one holds.",
                  "Dos correcciones de un mismo registro no se conocen; vale la más reciente."))
          .so(Phrase.of("Choose one and withdraw the other.", "Elija una y retire la otra."))
          .from(rivals.stream().map(Entry::id).toList()));
    }
    for (Entry entry : unread) {
      findings.add(Finding.of(
              "journal.unread", Weight.NOTE, "journal",
              Phrase.of(
                  "An entry of kind {0} is kept but not understood here.", "Un registro de tipo {0} se conserva pero aquí no se entiende.",
                  entry.kind()))
          .from(List.of(entry.id())));
    }
    return findings;
  }
}
