package steening.office.command;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code serve}: opens the firm's office. */
@Command(name = "serve")
public final class Serve implements Callable<Integer> {
  @Option(names = "--database", paramLabel = "FILE")
  private Optional<Path> database;

  @Option(names = "--port", paramLabel = "N", defaultValue = "8642")
  private int port;

  @Option(names = "--host", paramLabel = "H", defaultValue = "127.0.0.1")
  private String host;

  private final Terminal terminal;

  Serve(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws InterruptedException {
    return OpenDoor.keep(Places.database(database, Places.FIRM), host, port, List.of(), "", terminal);
  }
}
