package steening.office.command;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import steening.job.Stages;
import steening.journal.JournalFile;
import steening.language.Phrase;
import steening.office.FreshIds;
import steening.office.Receipt;
import steening.office.Store;

/** {@code import}: stores the entries of a journal file, all of them or none. What is there already stays as it is. */
@Command(name = "import")
public final class Import implements Callable<Integer> {
  private static final Phrase TAKEN = Phrase.of(
      "{0} entries stored, {1} were there already, {2} set aside because their id is taken.",
      "{0} registros guardados, {1} ya estaban, {2} apartados porque su id está ocupado.");

  @Option(names = "--database", paramLabel = "FILE")
  private Optional<Path> database;

  @Parameters(paramLabel = "FILE.jsonl", descriptionKey = "file")
  private Path file;

  private final Terminal terminal;

  Import(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    JournalFile read = JournalFile.read(Read.text(file), Stages::faults);
    if (!read.isSound()) {
      Read.complain(file, read, terminal);
      return ExitStatus.UNREADABLE;
    }
    try (Store store = Store.open(Places.database(database, Places.FIRM), new FreshIds())) {
      Receipt receipt = store.append(read.entries());
      terminal.say(TAKEN.about(
          Integer.toString(receipt.stored().size()), Integer.toString(receipt.known().size()),
          Integer.toString(receipt.clashing().size())));
      return receipt.clashing().isEmpty() ? ExitStatus.FINE : ExitStatus.STOPPED;
    }
  }
}
