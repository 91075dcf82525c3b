package steening.job;

import java.util.ArrayList;
import java.util.List;
import steening.field.Kind;
import steening.field.Reading;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.journal.Entry;
import steening.language.Phrase;
import steening.language.Reader;

/** What stands out in a journal itself, whatever its entries are about. */
final class JournalFindings {
  private JournalFindings() {}

  static List<Finding> of(Job job) {
    List<Finding> findings = new ArrayList<>();
    for (Entry entry : job.journal().waiting()) {
      findings.add(Finding.of(
              "journal.waiting", Weight.LOOK, "journal",
              Phrase.of(
                  "A correction names an entry that has not arrived yet.",
                  "Una corrección nombra un registro que aún no ha llegado."))
          .from(List.of(entry.id())));
    }
    for (List<Entry> rivals : job.journal().rivals()) {
      findings.add(Finding.of(
              "journal.rivals", Weight.LOOK, "journal",
              Phrase.of(
                  "Two corrections of one entry do not know of each other; the later one holds.",
                  "Dos correcciones de un mismo registro no se conocen; vale la más reciente."))
          .so(Phrase.of("Choose one and withdraw the other.", "Elija una y retire la otra."))
          .from(rivals.stream().map(Entry::id).toList()));
    }
    for (Entry entry : job.journal().clashes()) {
      findings.add(Finding.of(
              "journal.clash", Weight.LOOK, "journal",
              Phrase.of(
                  "Two different entries came under one id, perhaps from a copied device;"
                      + " one holds, the other is set aside.",
                  "Llegaron dos registros distintos con un mismo id, quizá de un aparato copiado;"
                      + " vale uno, el otro se aparta."))
          .from(List.of(entry.id())));
    }
    for (Entry entry : job.unread()) {
      findings.add(Finding.of(
              "journal.unread", Weight.NOTE, "journal",
              Phrase.of(
                  "An entry of kind {0} is kept but not understood here.",
                  "Un registro de tipo {0} se conserva pero aquí no se entiende.",
                  entry.kind()))
          .from(List.of(entry.id())));
    }
    findings.addAll(job.unusual());
    return findings;
  }

  /** Values that a form would have asked about, in entries that came another way and that nobody confirmed. */
  static List<Finding> unusual(Kind kind, Entry entry) {
    List<Finding> findings = new ArrayList<>();
    for (Reading reading : kind.read(entry.body().values(), Reader.US_ENGLISH).values()) {
      if (reading instanceof Reading.Asked asked) {
        String stage = Stages.ofKind(kind.name()).orElseThrow().name();
        findings.add(Finding.of("journal.unusual", Weight.LOOK, stage, asked.question())
            .so(Phrase.of("Correct the entry, or confirm it.", "Corrija el registro, o confírmelo."))
            .from(List.of(entry.id())));
      }
    }
    return findings;
  }
}
