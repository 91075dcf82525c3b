package steening.office.command;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import steening.office.demo.DemoFirm;

/** {@code demo}: opens the office of an invented firm, for looking around. */
@Command(name = "demo")
public final class Demo implements Callable<Integer> {
  @Option(names = "--database", paramLabel = "FILE")
  private Optional<Path> database;

  @Option(names = "--port", paramLabel = "N", defaultValue = "8642")
  private int port;

  private final Terminal terminal;

  Demo(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws InterruptedException {
    Path place = Places.database(database, Places.DEMO);
    return OpenDoor.keep(place, "127.0.0.1", port, DemoFirm.entries(), " (" + DemoFirm.NAME + ")", terminal);
  }
}
