package steening.office;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.LongStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import steening.journal.Entry;
import steening.journal.Moment;
import steening.office.Wire.Answer;
import steening.office.web.OfficeServer;
import steening.office.web.PortTaken;

class OfficeServerTest {
  private static final Moment NOW = Moment.parse("2026-05-06T14:05:00-05:00");
  private static final String CALL = "caller=A.+Ejemplo&need=domestic&hand=" + encoded("Ana Muñoz; ½");

  @TempDir Path folder;
  private final FreshIds ids = new FreshIds();
  private final ByteArrayOutputStream notes = new ByteArrayOutputStream();
  private boolean clockIsBroken;
  private Store store;
  private OfficeServer server;
  private Wire wire;

  @BeforeEach
  void open() {
    store = Store.open(folder.resolve("steening.db"), ids);
    server = open("127.0.0.1", 0);
    wire = new Wire(server.port());
  }

  @AfterEach
  void close() {
    server.close();
    store.close();
  }

  @Test
  void aPageComesWithWhatKeepsItFromHarm() throws IOException {
    Answer page = wire.get("/");
    assertThat(page.status()).isEqualTo(200);
    assertThat(page.header("Content-Type")).isEqualTo("text/html;charset=utf-8");
    assertThat(page.header("Content-Security-Policy")).contains("default-src 'self'", "frame-ancestors 'none'");
    assertThat(page.header("Content-Security-Policy").split("style-src")[0]).doesNotContain("unsafe-inline");
    assertThat(page.header("X-Content-Type-Options")).isEqualTo("nosniff");
    assertThat(page.header("Referrer-Policy")).isEqualTo("same-origin");
    assertThat(page.header("Server")).isEmpty();
    assertThat(page.body()).startsWith("<!DOCTYPE html>").contains("Steening");
  }

  @Test
  void whatWasPostedIsOnDiskAndTheHandIsRemembered() throws IOException {
    Answer posted = wire.post("/new", CALL);
    assertThat(posted.status()).isEqualTo(303);
    assertThat(store.all()).extracting(Entry::who).containsExactly("Ana Muñoz; ½");
    Entry entry = store.all().get(0);
    assertThat(entry.recordedAt()).isEqualTo(NOW);
    assertThat(entry.device()).isEqualTo(store.device());
    assertThat(posted.header("Location")).isEqualTo("/well/" + entry.well());
    assertThat(posted.header("Set-Cookie")).startsWith("hand=").contains("Path=/", "SameSite=Lax", "Max-Age=31536000");
    String cookie = posted.header("Set-Cookie").split(";")[0];
    assertThat(wire.get("/well/" + entry.well(), "Cookie: " + cookie).body()).contains("Ana Muñoz; ½");
  }

  @Test
  void anotherSitesPageCannotWrite() throws IOException {
    String own = "http://localhost:" + server.port();
    for (String foreign : List.of(
        "Origin: http://evil.example", "Origin: null", "Origin: " + own + "0", "Sec-Fetch-Site: cross-site",
        "Sec-Fetch-Site: same-site")) {
      assertThat(wire.post("/new", CALL, foreign).status()).as(foreign).isEqualTo(403);
    }
    assertThat(store.all()).isEmpty();
    assertThat(wire.get("/", "Sec-Fetch-Site: cross-site").status()).isEqualTo(200);
    assertThat(wire.post("/new", CALL, "Origin: " + own, "Sec-Fetch-Site: same-origin").status()).isEqualTo(303);
  }

  @Test
  void aStrangersNameThatLeadsHereIsNotAnswered() throws IOException {
    assertThat(wire.get("/", "Host: evil.example:" + server.port()).status()).isEqualTo(421);
    assertThat(wire.get("/", "Host: localhost.evil.example").status()).isEqualTo(421);
    for (String own : List.of("localhost", "LOCALHOST:1", "127.0.0.1:80", "[::1]:80")) {
      assertThat(wire.get("/", "Host: " + own).status()).as(own).isEqualTo(200);
    }
  }

  @Test
  void onANetworkAddressesAndLocalNamesAreAnswered() throws IOException {
    try (OfficeServer open = open("0.0.0.0", 0)) {
      Wire network = new Wire(open.port());
      for (String name : List.of("192.168.1.7:80", "office", "office.local:80", "[fe80::1]:80")) {
        assertThat(network.get("/", "Host: " + name).status()).as(name).isEqualTo(200);
      }
      assertThat(network.get("/", "Host: evil.example").status()).isEqualTo(421);
    }
  }

  @Test
  void whatIsTooLargeOrNoFormIsRefused() throws IOException {
    assertThat(wire.post("/new", CALL + "&remark=" + "x".repeat(1 << 20)).status()).isEqualTo(413);
    assertThat(wire.ask("POST", "/new", "<a/>", "Content-Type: text/xml").status()).isEqualTo(415);
    assertThat(wire.post("/new", "caller=%zz").status()).isEqualTo(400);
    Answer put = wire.ask("PUT", "/new", "");
    assertThat(put.status()).isEqualTo(405);
    assertThat(put.header("Allow")).isEqualTo("GET, HEAD, POST");
    assertThat(store.all()).isEmpty();
  }

  @Test
  void whatIsNotHttpGetsACalmPageToo() throws IOException {
    for (Answer answer : List.of(wire.get("/%zz"), wire.get("/", "Host: a b"), wire.get("/" + "x".repeat(20_000)))) {
      assertThat(answer.status()).isBetween(400, 499);
      assertThat(answer.head() + answer.body()).doesNotContainIgnoringCase("jetty").doesNotContain("Exception");
    }
  }

  @Test
  void filesOfTheProgramAreServedAndNothingElse() throws IOException {
    Answer style = wire.get("/style.css");
    assertThat(style.status()).isEqualTo(200);
    assertThat(style.header("Content-Type")).isEqualTo("text/css; charset=utf-8");
    assertThat(style.header("Cache-Control")).isEqualTo("no-cache");
    Answer again = wire.get("/style.css", "If-None-Match: " + style.header("ETag"));
    assertThat(again.status()).isEqualTo(304);
    assertThat(again.body()).isEmpty();
    for (String path : List.of(
        "/../steening/office/schema/1.sql", "/..%2fsteening/office/schema/1.sql", "/schema/1.sql", "/public/style.css",
        "/steening/office/Store.class", "//style.css/", "/.css", "/META-INF/MANIFEST.MF")) {
      assertThat(wire.get(path).status()).as(path).isBetween(400, 404);
    }
  }

  @Test
  void largePagesArePacked() throws IOException {
    Answer packed = wire.get("/new", "Accept-Encoding: gzip");
    assertThat(packed.header("Content-Encoding")).isEqualTo("gzip");
    assertThat(wire.get("/new").header("Content-Encoding")).isEmpty();
  }

  @Test
  void aHeadIsAPageWithoutItsBody() throws IOException {
    Answer head = wire.ask("HEAD", "/", "");
    assertThat(head.status()).isEqualTo(200);
    assertThat(head.body()).isEmpty();
  }

  @Test
  void whatCannotBeStoredIsNotAcknowledged() throws IOException {
    store.pragma("query_only = on");
    Answer refused = wire.post("/new", CALL);
    assertThat(refused.status()).isEqualTo(503);
    assertThat(refused.body()).contains("cannot be written", "No se puede escribir").doesNotContain("Exception");
    assertThat(wire.get("/").body()).doesNotContain("A. Ejemplo");
    store.pragma("query_only = off");
    assertThat(wire.post("/new", CALL).status()).isEqualTo(303);
    assertThat(wire.get("/").body()).contains("A. Ejemplo");
    assertThat(store.all()).hasSize(1);
  }

  @Test
  void aFaultOfOurOwnIsOwnedUpToAndNoted() throws IOException {
    clockIsBroken = true;
    Answer answer = wire.get("/new");
    assertThat(answer.status()).isEqualTo(500);
    assertThat(answer.body()).contains("in Steening itself went wrong").doesNotContain("the clock has stopped");
    assertThat(notes.toString(StandardCharsets.UTF_8)).contains("GET /new", "the clock has stopped").hasLineCount(1);
  }

  @Test
  void thoseWhoWriteAtOnceAreTakenOneAfterTheOther() throws Exception {
    int writers = 8;
    int each = 15;
    ExecutorService hands = Executors.newFixedThreadPool(writers);
    List<Future<Boolean>> written = new ArrayList<>();
    Callable<Boolean> one = () -> wire.post("/new", CALL).status() == 303;
    for (int i = 0; i < writers * each; i++) written.add(hands.submit(one));
    for (Future<Boolean> fine : written) assertThat(fine.get()).isTrue();
    hands.shutdown();
    assertThat(store.all()).extracting(Entry::sequence)
        .containsExactlyElementsOf(LongStream.rangeClosed(1, writers * each).boxed().toList());
  }

  @Test
  void aPortThatIsTakenIsSaid() {
    assertThatThrownBy(() -> open("127.0.0.1", server.port())).isInstanceOf(PortTaken.class)
        .hasMessageContaining("Port " + server.port()).hasMessageContaining("--port");
    assertThat(server.address()).isEqualTo("http://localhost:" + server.port());
  }

  private OfficeServer open(String host, int port) {
    PrintStream to = new PrintStream(notes, true, StandardCharsets.UTF_8);
    return OfficeServer.open(host, port, store, new OfficeShelf(store), ids, this::now, to);
  }

  private Moment now() {
    if (clockIsBroken) throw new IllegalStateException("the clock has stopped");
    return NOW;
  }

  private static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }
}
