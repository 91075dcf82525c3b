package steening.twin;

import com.microsoft.playwright.BrowserType.LaunchOptions;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/** A browser with a compiled core in it, and the server it came from. */
final class Browser implements AutoCloseable {
  private static final String PROGRAM = "/usr/bin/chromium";
  private static final String LOAD =
      "async core => { const {load} = await import(core + '.wasm-runtime.js');"
          + " window.core = (await load(core + '.wasm')).exports; }";
  private static final String CALL = "([name, text]) => window.core[name](text)";

  private final HttpServer server;
  private final Playwright playwright;
  private final Page page;

  private Browser(HttpServer server, Playwright playwright, Page page) {
    this.server = server;
    this.playwright = playwright;
    this.page = page;
  }

  /**
   * @param core where on the class path the compiled core is, without its ending: {@code /phone/steening}
   */
  static Browser with(String core) throws IOException {
    HttpServer server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
    server.createContext("/", Browser::serve);
    server.start();
    Playwright playwright = Playwright.create(
        new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
    Page page = playwright.chromium().launch(options()).newPage();
    page.navigate("http://127.0.0.1:" + server.getAddress().getPort() + "/");
    page.evaluate(LOAD, core);
    return new Browser(server, playwright, page);
  }

  /** Calls an exported function that takes a text and gives one. */
  String call(String function, String text) {
    return (String) page.evaluate(CALL, List.of(function, text));
  }

  @Override
  public void close() {
    playwright.close();
    server.stop(0);
  }

  /** A quiet start: no sandbox, since tests may run as root, and nothing that looks for a network. */
  private static LaunchOptions options() {
    return new LaunchOptions()
        .setExecutablePath(Path.of(PROGRAM))
        .setArgs(
            List.of(
                "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
                "--disable-component-update", "--disable-sync"));
  }

  private static void serve(HttpExchange exchange) throws IOException {
    String path = exchange.getRequestURI().getPath();
    try (exchange;
        InputStream file = path.equals("/")
            ? InputStream.nullInputStream()
            : Browser.class.getResourceAsStream(path)) {
      byte[] body = file == null ? new byte[0] : file.readAllBytes();
      String type = path.endsWith(".js") ? "text/javascript"
          : path.endsWith(".wasm") ? "application/wasm"
          : "text/html";
      exchange.getResponseHeaders().set("Content-Type", type);
      exchange.sendResponseHeaders(file == null ? 404 : 200, body.length == 0 ? -1 : body.length);
      exchange.getResponseBody().write(body);
    }
  }
}
