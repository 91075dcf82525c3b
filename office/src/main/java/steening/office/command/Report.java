package steening.office.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import steening.job.WellName;
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
    Path place = Places.database(database, "steening.db");
    if (!Files.exists(place)) {
      throw new WrongUsage(
          "There is no database {0}; name one with --database.",
          "No existe la base de datos {0}; indique una con --database.",
          place);
    }
    try (Store store = Store.open(place, new FreshIds())) {
      OfficeShelf shelf = new OfficeShelf(store);
      byte[] pdf =
          ReportPrinter.print(
              shelf.job(found(shelf)),
              terminal.reader(metric ? UnitSystem.METRIC : UnitSystem.US),
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

  /** A well by its id, or by a part of its name where only one has it. */
  private String found(OfficeShelf shelf) {
    if (shelf.wells().contains(well)) return well;
    List<String> named =
        shelf.wells().stream().filter(id -> lower(WellName.of(shelf.journal(id))).contains(lower(well))).toList();
    if (named.size() == 1) return named.get(0);
    throw named.isEmpty()
        ? new WrongUsage("There is no well \"{0}\" here.", "Aquí no hay un pozo «{0}».", well)
        : new WrongUsage(
            "Several wells are called so: {1}.", "Varios pozos se llaman así: {1}.", well, String.join(", ", named));
  }

  private static String lower(String text) {
    return text.toLowerCase(Locale.ROOT);
  }
}
