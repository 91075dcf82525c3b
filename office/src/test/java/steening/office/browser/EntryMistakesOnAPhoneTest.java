package steening.office.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import steening.journal.Entry;
import steening.office.EntryChanges;
import steening.office.demo.DemoFirm;
import steening.office.demo.Mistake;

/** The slips of {@link Mistake} typed on a phone, each into an everyday well of its own. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class EntryMistakesOnAPhoneTest {
  static final List<Mistake> MISTAKES = Mistake.ALL;
  private Crew crew;

  @BeforeAll
  void aWellForEachMistake(@TempDir Path folder) {
    List<Entry> all = new ArrayList<>();
    for (Mistake mistake : MISTAKES) all.addAll(well(mistake));
    crew = Crew.withPhone(folder.resolve("mistakes.db"), all);
  }

  @AfterAll
  void goHome() {
    if (crew != null) crew.close();
  }

  @ParameterizedTest
  @FieldSource("MISTAKES")
  void isAskedAboutOrFoundAndNothingTypedIsLost(Mistake mistake) {
    List<Entry> entries = well(mistake);
    for (Entry entry : entries.stream().filter(mistake.hits(entries)).toList()) {
      Page page = crew.open("/well/" + entry.well() + "/entry/" + entry.id());
      crew.signs(entry.who());
      crew.fill(mistake.field(), mistake.typed());
      crew.send();
      if (mistake.isAsked()) isAsked(mistake, page);
    }
    if (!mistake.isFound()) return;
    String path = "/well/" + entries.get(0).well();
    Locator finding = crew.open(path).locator(".finding[data-code='" + mistake.finding() + "']").first();
    assertThat(finding.innerText()).contains(mistake.figures());
  }

  private void isAsked(Mistake mistake, Page page) {
    assertThat(page.locator("#" + mistake.field()).inputValue()).as("what was typed").isEqualTo(mistake.typed());
    List<String> buttons = page.locator(".meanings button").allInnerTexts();
    for (String meaning : mistake.offers()) assertThat(buttons).anyMatch(said -> said.contains(meaning));
    if (mistake.isFound()) crew.tap(page.locator(".meanings button[name=sure]"));
  }

  private static List<Entry> well(Mistake mistake) {
    String digits = "0" + (char) ('a' + MISTAKES.indexOf(mistake) / 10) + MISTAKES.indexOf(mistake) % 10;
    List<Entry> everyday = DemoFirm.well("everyday-well");
    String old = everyday.get(0).well();
    String well = old.substring(0, old.length() - digits.length()) + digits;
    return everyday.stream().map(entry -> EntryChanges.moved(entry, well, digits)).toList();
  }
}
