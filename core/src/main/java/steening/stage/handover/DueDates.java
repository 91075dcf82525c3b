package steening.stage.handover;

import java.time.LocalDate;
import java.util.List;
import steening.journal.Dates;
import steening.language.Phrase;
import steening.language.Shown;
import steening.stage.Sheet;

/**
 * When the report is due, by the rules of some states: the firm looks up its own.
 *
 * <p>Days after completion: 30 in Minn. R. 4725.1851, 15A NCAC 02C .0114, WAC 173-160-141; 45 in COMAR 26.04.04.29; 60
 * in MCL 333.12707, 16 TAC 76.70; 90 in 10 VSA 1396 (all seen). What starts the clock differs as well: grouted, ready
 * for use, or pump set.
 */
final class DueDates {
  static final int SHORTEST = 30;

  private DueDates() {}

  static Sheet with(Sheet sheet, LocalDate completed) {
    return sheet.table(
        Phrase.of("Report due by, where the rule says", "Informe a entregar a más tardar, según la norma"),
        List.of(
            Phrase.of("days", "días"), Phrase.of("last day", "último día"), Phrase.of("for example", "por ejemplo")),
        List.of(
            row(completed, SHORTEST, Phrase.of("Minnesota, Washington", "Minnesota, Washington")),
            row(completed, 45, Phrase.same("Maryland")),
            row(completed, 60, Phrase.of("Michigan, Texas", "Míchigan, Texas")),
            row(completed, 90, Phrase.same("Vermont"))));
  }

  private static List<Shown> row(LocalDate completed, int days, Phrase where) {
    return List.of(Phrase.same(Integer.toString(days)), Phrase.same(Dates.format(completed.plusDays(days))), where);
  }
}
