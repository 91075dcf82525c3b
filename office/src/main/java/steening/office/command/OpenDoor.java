package steening.office.command;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import steening.journal.Entry;
import steening.language.Phrase;
import steening.office.Office;

/** Opens an office and keeps it open until the machine, or whoever sits at it, wants it closed. */
final class OpenDoor {
  private OpenDoor() {}

  static int keep(Path database, String host, int port, List<Entry> first, String suffix, Terminal terminal)
      throws InterruptedException {
    Office office = Office.open(database, host, port, first, terminal.err());
    Runtime.getRuntime().addShutdownHook(new Thread(office::close, "close the office"));
    terminal.say(
        Phrase.of("Steening is open at {0}{1}", "Steening está abierto en {0}{1}", office.address(), suffix));
    terminal.out().flush();
    new CountDownLatch(1).await();
    return ExitStatus.FINE;
  }
}
