package steening.office.command;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import steening.office.demo.DemoFirm;
import steening.office.Office;

/** {@code warm-up}: a short day at the office, so that Java can remember which classes it needs. */
@Command(name = "warm-up", hidden = true)
public final class WarmUp implements Callable<Integer> {
  private final Terminal terminal;

  WarmUp(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException, InterruptedException {
    Path folder = Files.createTempDirectory("steening");
    Path database = folder.resolve("warm-up.db");
    try (Office office = Office.open(database, "127.0.0.1", 0, DemoFirm.entries(), terminal.err())) {
      String well = DemoFirm.entries().get(0).well();
      String room = "/well/" + well;
      for (String path : List.of("/", "/style.css", "/new", "/reckon", room, room + "/journal", room + "/report.pdf")) {
        ask(HttpRequest.newBuilder(URI.create(office.address() + path)).build());
      }
      ask(HttpRequest.newBuilder(URI.create(office.address() + "/settings"))
          .header("Content-Type", "application/x-www-form-urlencoded")
          .POST(HttpRequest.BodyPublishers.ofString("units=metric"))
          .build());
    } finally {
      remove(folder);
    }
    return ExitStatus.FINE;
  }

  private static void ask(HttpRequest request) throws IOException, InterruptedException {
    HttpClient.newHttpClient().send(request, BodyHandlers.discarding());
  }

  private static void remove(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.toList()) Files.delete(file);
    }
    Files.delete(folder);
  }
}
