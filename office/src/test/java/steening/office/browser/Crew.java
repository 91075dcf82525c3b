package steening.office.browser;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import steening.job.Stages;
import steening.journal.Entry;
import steening.journal.Moment;
import steening.office.Office;

/** A crew with a phone in front of an office of its own: types entries into forms as people do. */
final class Crew implements AutoCloseable {
  private static final Path CHROMIUM = Path.of("/usr/bin/chromium");
  private static final List<String> QUIETLY = List.of(
      "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
      "--disable-component-update", "--disable-sync");

  private final Office office;
  private final Playwright playwright;
  private final BrowserContext context;
  private final Page page;
  private String well = "";

  private Crew(Office office, Playwright playwright, BrowserContext context) {
    this.office = office;
    this.playwright = playwright;
    this.context = context;
    this.page = context.newPage();
    page.setDefaultTimeout(10_000);
  }

  /** With a phone of 390 by 844, which is touched and not clicked. */
  static Crew withPhone(Path database, List<Entry> first) {
    Office office = Office.open(database, "127.0.0.1", 0, first, new PrintStream(OutputStream.nullOutputStream()));
    Playwright playwright = Playwright.create(
        new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
    Browser browser = playwright.chromium()
        .launch(new BrowserType.LaunchOptions().setExecutablePath(CHROMIUM).setArgs(QUIETLY));
    BrowserContext context = browser.newContext(new Browser.NewContextOptions()
        .setViewportSize(390, 844).setHasTouch(true).setIsMobile(true).setDeviceScaleFactor(2));
    return new Crew(office, playwright, context);
  }

  Page page() {
    return page;
  }

  String address() {
    return office.address();
  }

  /** The path of the well the crew is at. */
  String well() {
    return well;
  }

  void at(String id) {
    well = "/well/" + id;
  }

  Page open(String path) {
    page.navigate(office.address() + path);
    return page;
  }

  /** Types one entry into its form as it happens, and sends it; the page that comes back is shown. */
  void typesNow(Entry entry) {
    types(entry, false);
  }

  /** Types one entry with the hour it happened at, by the clock on the wall here. */
  void typesLater(Entry entry) {
    types(entry, true);
  }

  private void types(Entry entry, boolean later) {
    if (well.isEmpty()) open("/new");
    else open(well + "/" + Stages.ofKind(entry.kind()).orElseThrow().name() + "?kind=" + entry.kind());
    entry.body().values().forEach(this::fill);
    if (later) happened(entry.happenedAt());
    signs(entry.who());
    send();
    if (well.isEmpty()) well = page.url().substring(office.address().length()).replaceAll("\\?.*", "");
  }

  /** Says who writes, where this browser does not know yet. */
  void signs(String who) {
    if (page.locator("#hand").inputValue().isEmpty()) page.fill("#hand", who);
  }

  /** Puts a text into a field of whatever sort, after a tap on what it is folded under. */
  void fill(String name, String text) {
    Locator folded = page.locator("#entry details:not([open]):has([name='" + name + "']) > summary");
    if (folded.count() > 0) folded.tap();
    Locator radio = page.locator("#entry input[type=radio][name='" + name + "'][value='" + text + "']");
    Locator list = page.locator("#entry select[name='" + name + "']");
    if (radio.count() > 0) radio.check();
    else if (list.count() > 0) list.selectOption(text);
    else page.locator("#entry input[name='" + name + "']").fill(text);
  }

  void send() {
    tap(page.locator("#entry button.main"));
  }

  /** Taps a button that sends a form, and waits until the page that answers stands in place of this one. */
  void tap(Locator button) {
    page.evaluate("document.documentElement.dataset.before = 'yes'");
    button.tap();
    page.locator("html:not([data-before]) footer").waitFor();
    page.waitForLoadState();
  }

  private void happened(Moment at) {
    page.locator("#happened").evaluate(
        "(box, value) => { box.closest('details').open = true; box.value = value; }", at.toString().substring(0, 16));
  }

  @Override
  public void close() {
    context.close();
    playwright.close();
    office.close();
  }
}
