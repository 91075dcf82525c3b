package steening.office.command;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import steening.cases.Verdict;
import steening.language.Phrase;
import steening.language.Reader;

/** Verdicts as a table of text, file by file, and how many came out which way. */
final class CasesText {
  private static final Phrase PASSED = Phrase.of("passed", "pasa");
  private static final Phrase FAILED = Phrase.of("failed", "falla");
  private static final Phrase NOT_COVERED = Phrase.of("not covered", "sin cubrir");

  /** Longer names push the rest of their own line aside, and not everyone's. */
  private static final int WIDEST = 60;

  private CasesText() {}

  static void tell(List<Verdict> verdicts, Reader reader, PrintStream out) {
    Map<String, List<Verdict>> byFile = new LinkedHashMap<>();
    for (Verdict verdict : verdicts) byFile.computeIfAbsent(verdict.file(), file -> new ArrayList<>()).add(verdict);
    byFile.forEach((file, rows) -> {
      out.println(file);
      int widest = rows.stream().mapToInt(v -> v.id().length()).max().orElse(0);
      for (Verdict row : rows) out.println("  " + row(row, Math.min(widest, WIDEST), reader));
    });
    out.println(Phrase.of(
            "{0} passed, {1} failed, {2} not covered", "{0} pasan, {1} fallan, {2} sin cubrir",
            count(verdicts, Verdict.Status.PASSED), count(verdicts, Verdict.Status.FAILED),
            count(verdicts, Verdict.Status.NOT_COVERED))
        .shownTo(reader));
  }

  private static String row(Verdict verdict, int widest, Reader reader) {
    String start = padded(word(verdict.status()).shownTo(reader), 11) + "  " + padded(verdict.id(), widest);
    String reason = verdict.reason().shownTo(reader);
    if (verdict.status() == Verdict.Status.NOT_COVERED) return start + "  " + reason;
    Phrase values = Phrase.of(
        "published {0}, reckoned {1} {2}", "publicado {0}, calculado {1} {2}",
        verdict.expected(), verdict.got(), verdict.unit());
    String row = start + "  " + padded(verdict.reckoning(), 18) + "  " + values.shownTo(reader).trim();
    return reason.isEmpty() ? row : row + ": " + reason;
  }

  private static Phrase word(Verdict.Status status) {
    return switch (status) {
      case PASSED -> PASSED;
      case FAILED -> FAILED;
      case NOT_COVERED -> NOT_COVERED;
    };
  }

  private static String padded(String text, int width) {
    return text + " ".repeat(Math.max(0, width - text.length()));
  }

  private static long count(List<Verdict> verdicts, Verdict.Status status) {
    return verdicts.stream().filter(v -> v.status() == status).count();
  }
}
