package steening.office.command;

import java.io.PrintStream;
import java.util.List;
import java.util.stream.Collectors;
import steening.finding.Finding;
import steening.job.Job;
import steening.job.Stages;
import steening.job.WellName;
import steening.language.Phrase;
import steening.language.Reader;
import steening.language.Shown;
import steening.stage.Sheet;
import steening.stage.Stage;

/** A well as built, and what was found about it, as lines of text. */
final class WellText {
  private static final Phrase HEAD = Phrase.of("{0}: {1}; {2} entries", "{0}: {1}; {2} registros");

  private WellText() {}

  static void tell(Job job, Reader reader, PrintStream out) {
    String count = Integer.toString(job.journal().size());
    out.println(HEAD.about(WellName.of(job.journal()), job.present().title(), count).shownTo(reader));
    for (Finding finding : job.findings()) out.println("  " + line(finding, reader));
    for (Stage stage : Stages.all()) {
      Sheet sheet = stage.sheet(job.well());
      if (sheet.lines().isEmpty() && sheet.tables().isEmpty()) continue;
      out.println();
      out.println(stage.title().shownTo(reader));
      for (Sheet.Line line : sheet.lines()) {
        out.println("  " + line.label().shownTo(reader) + ": " + line.value().shownTo(reader));
      }
      for (Sheet.Table table : sheet.tables()) table(table, reader, out);
    }
  }

  private static void table(Sheet.Table table, Reader reader, PrintStream out) {
    out.println("  " + table.title().shownTo(reader));
    out.println("    " + row(table.heads(), reader));
    for (List<Shown> cells : table.rows()) out.println("    " + row(cells, reader));
  }

  private static String row(List<? extends Shown> cells, Reader reader) {
    return cells.stream().map(cell -> cell.shownTo(reader)).collect(Collectors.joining(" | "));
  }

  private static String line(Finding finding, Reader reader) {
    StringBuilder line = new StringBuilder(finding.weight().label().shownTo(reader) + ": ");
    line.append(finding.text().shownTo(reader));
    finding.cause().ifPresent(cause -> line.append(' ').append(cause.shownTo(reader)));
    finding.next().ifPresent(next -> line.append(' ').append(next.shownTo(reader)));
    return line.append("  [").append(finding.code()).append(']').toString();
  }
}
