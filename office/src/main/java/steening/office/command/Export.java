package steening.office.command;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import steening.journal.Codec;
import steening.journal.Entry;
import steening.office.FreshIds;
import steening.office.OfficeShelf;
import steening.office.Store;

/** {@code export}: the journals as a journal file, one entry a line, to keep, to send, or to read elsewhere. */
@Command(name = "export")
public final class Export implements Callable<Integer> {
  @Option(names = "--database", paramLabel = "FILE")
  private Optional<Path> database;

  @Parameters(arity = "0..1", paramLabel = "WELL", descriptionKey = "well")
  private Optional<String> well;

  private final Terminal terminal;

  Export(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    try (Store store = Store.open(Places.existing(database), new FreshIds())) {
      OfficeShelf shelf = new OfficeShelf(store);
      List<String> wells = well.map(name -> List.of(WellChoice.of(shelf, name))).orElseGet(shelf::wells);
      for (String id : wells) {
        for (Entry entry : shelf.journal(id).entries()) terminal.out().println(Codec.write(entry));
      }
      return ExitStatus.FINE;
    }
  }
}
