package steening.office.web;

import io.javalin.Javalin;
import io.javalin.compression.CompressionStrategy;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.util.JavalinBindException;
import java.io.PrintStream;
import java.util.function.Supplier;
import steening.journal.Moment;
import steening.language.Phrase;
import steening.office.FreshIds;
import steening.office.OfficeShelf;
import steening.office.Store;
import steening.office.StoreTrouble;

/** The office on the network. */
public final class OfficeServer implements AutoCloseable {
  private final Gate gate;
  private final Counter counter;
  private final PrintStream notes;
  private final Javalin javalin;

  private OfficeServer(Gate gate, Counter counter, PrintStream notes) {
    this.gate = gate;
    this.counter = counter;
    this.notes = notes;
    this.javalin = Javalin.create(this::configure);
  }

  /**
   * Opens the office; it is answering when this returns.
   *
   * @param host the address to bind to; {@code 127.0.0.1} for this machine only
   * @param port 0 for any that is free
   * @param notes where troubles of our own making are noted, a line each
   * @throws PortTaken when another program has the port, or the host is none of this machine's
   */
  public static OfficeServer open(
      String host, int port, Store store, OfficeShelf shelf, FreshIds ids, Supplier<Moment> clock, PrintStream notes) {
    OfficeServer server = new OfficeServer(new Gate(host), new Counter(store, shelf, ids, clock), notes);
    try {
      server.javalin.start(host, port);
      return server;
    } catch (JavalinBindException e) {
      server.close();
      throw new PortTaken(host, port);
    }
  }

  /** Where to find it. */
  public String address() {
    String name = gate.isLoopback() ? "localhost" : gate.host();
    return "http://" + (name.indexOf(':') < 0 ? name : "[" + name + "]") + ":" + port();
  }

  public int port() {
    return javalin.port();
  }

  /** Takes no more requests, finishes those that are under way. */
  @Override
  public void close() {
    javalin.stop();
  }

  private void configure(JavalinConfig config) {
    config.startup.showJavalinBanner = false;
    config.startup.showOldJavalinVersionWarning = false;
    config.startup.startupWatcherEnabled = false;
    config.http.compressionStrategy = CompressionStrategy.GZIP;
    config.jetty.modifyHttpConfiguration(http -> http.setSendServerVersion(false));
    config.jetty.modifyServer(server -> server.setErrorHandler(new UnreadableRequest()));
    config.routes.before(this::answer);
    config.routes.exception(Refusal.class, (refusal, context) -> show(context, refusal.status(), refusal.phrase()));
    config.routes.exception(StoreTrouble.class, (trouble, context) -> show(context, 503, trouble.phrase()));
    config.routes.exception(Exception.class, this::unexpected);
  }

  private void answer(Context context) {
    Headers.ALL.forEach(context.res()::setHeader);
    gate.check(
        context.req().getMethod(), context.header("Host"), context.header("Origin"), context.header("Sec-Fetch-Site"));
    counter.answer(context);
    context.skipRemainingHandlers();
  }

  private static void show(Context context, int status, Phrase phrase) {
    if (status == 405) context.header("Allow", "GET, HEAD, POST");
    context.status(status).html(TroublePage.of(phrase));
  }

  /** The fault is ours. The page says so; the note, with the place in the program, goes to whoever can mend it. */
  private void unexpected(Exception e, Context context) {
    StackTraceElement[] places = e.getStackTrace();
    String place = places.length == 0 ? "" : " at " + places[0];
    notes.println(context.req().getMethod() + " " + context.path() + ": " + e + place);
    show(
        context,
        500,
        Phrase.of(
            "Something in Steening itself went wrong; what was stored before is safe. Go back and try once more.",
            "Algo falló en el propio Steening; lo que estaba guardado está a salvo. Vuelva atrás e intente otra vez."));
  }
}
