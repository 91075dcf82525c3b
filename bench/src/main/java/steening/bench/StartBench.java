package steening.bench;

import java.io.IOException;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** From the start of the process to its first page, against the same without the archive of classes. */
final class StartBench {
  private static final int RUNS = 4;
  private static final int PATIENCE = 30_000;

  private StartBench() {}

  static Row measure(Path folder, Path jar, Path archive) throws Exception {
    double with = Stopwatch.median(RUNS, new Start(folder, jar, List.of("-XX:SharedArchiveFile=" + archive)));
    double without = Stopwatch.median(RUNS, new Start(folder, jar, List.of("-Xshare:off")));
    return Row.time("process start to first page", with, "without class-data sharing", without);
  }

  /** One start, first page, and end. */
  private record Start(Path folder, Path jar, List<String> options) implements Stopwatch.Work {
    @Override
    public void run() throws Exception {
      int port = freePort();
      String java = ProcessHandle.current().info().command().orElse("java");
      String database = folder.resolve("start.db").toString();
      List<String> command = new ArrayList<>(List.of(java, "-XX:+UseSerialGC", "-Xmx256m"));
      command.addAll(options);
      command.addAll(List.of(
          "-jar", jar.toString(), "serve", "--database", database, "--port", Integer.toString(port)));
      Process process = new ProcessBuilder(command)
          .redirectErrorStream(true)
          .redirectOutput(ProcessBuilder.Redirect.DISCARD)
          .start();
      try {
        awaitPage(port);
      } finally {
        process.destroy();
        process.waitFor();
      }
    }

    private static void awaitPage(int port) throws InterruptedException {
      HttpClient client = HttpClient.newHttpClient();
      HttpRequest request = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + "/")).build();
      long start = System.nanoTime();
      while (System.nanoTime() - start < PATIENCE * 1_000_000L) {
        try {
          if (client.send(request, HttpResponse.BodyHandlers.ofString()).statusCode() == 200) return;
        } catch (IOException notYet) {
          Thread.sleep(4);
        }
      }
      throw new IllegalStateException("no page within " + PATIENCE + " ms");
    }

    private static int freePort() throws IOException {
      try (ServerSocket socket = new ServerSocket(0)) {
        return socket.getLocalPort();
      }
    }
  }
}
