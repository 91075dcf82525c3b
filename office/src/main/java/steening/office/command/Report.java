package steening.office.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import steening.language.Language;
import steening.language.Reader;
import steening.language.UnitSystem;
import steening.office.FreshIds;
import steening.office.OfficeClock;
import steening.office.OfficeShelf;
import steening.office.Store;
import steening.office.paper.ReportPrinter;
import steening.report.Paper;

/** {@code report}: prints the completion report of a well into a file. */
@Command(name = "report")
public final class Report implements Callable<Integer> {
  @Option(names = "--database", paramLabel = "FILE")
  private Optional<Path> database;

  @Option(names = "--out", paramLabel = "FILE.pdf", required = true)
  private Path out;

  @Option(names = "--paper", paramLabel = "letter|a4", defaultValue = "letter")
  private String paper;

  @Option(names = "--language", paramLabel = "en|es")
  private Optional<String> language;

  @Option(names = "--metric")
  private boolean metric;

  @Parameters(paramLabel = "WELL", descriptionKey = "well")
  private String well;

  private final Terminal terminal;

  Report(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    try (Store store = Store.open(Places.existing(database), new FreshIds())) {
      OfficeShelf shelf = new OfficeShelf(store);
      byte[] pdf =
          ReportPrinter.print(
              shelf.job(WellChoice.of(shelf, well)),
              reader(),
              Paper.of(paper),
              new OfficeClock().get());
      Files.write(out, pdf);
      return ExitStatus.FINE;
    } catch (IOException e) {
      throw new WrongUsage(
          "{0} cannot be written; name another file with --out.",
          "No se puede escribir {0}; indique otro archivo con --out.",
          out);
    }
  }

  private Reader reader() {
    Reader here = terminal.reader(metric ? UnitSystem.METRIC : UnitSystem.US);
    return language.map(code -> new Reader(Language.of(code), here.units())).orElse(here);
  }
}
