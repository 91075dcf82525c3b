package steening.office.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import steening.office.demo.DemoFirm;
import steening.journal.Entry;

/** The bridged pack of our own scenario, poured on a phone: the crew is stopped at bag 9, before bag 10. */
class BridgedPackTest {
  @TempDir private Path folder;

  @Test
  void theCrewIsStoppedAtBagNine() {
    List<Entry> entries = DemoFirm.well("bridged-pack");
    List<Entry> before = entries.subList(0, entries.size() - 1);
    Entry tape = entries.get(entries.size() - 1);
    try (Crew crew = Crew.withPhone(folder.resolve("bridged.db"), before)) {
      crew.at(tape.well());
      crew.open(crew.well());
      assertThat(crew.page().locator(".finding.stop").count()).as("nothing stops before the tape").isZero();
      String expectation = crew.page().locator(".expectation").first().innerText();
      assertThat(expectation).as("expected before it is read").contains("77.7");

      crew.typesNow(tape);
      Locator stop = crew.page().locator(".finding.stop").first();
      assertThat(stop.innerText()).contains("71.20 ft", "77.73 ft", "6.39 in");
      assertThat(stop.boundingBox().y).as("seen without scrolling").isLessThan(600);
    }
  }

  @Test
  void aSlipIsAskedAboutAndNothingIsLost() {
    try (Crew crew = Crew.withPhone(folder.resolve("slips.db"), DemoFirm.well("waiting-for-the-ticket"))) {
      crew.at(DemoFirm.well("waiting-for-the-ticket").get(0).well());
      crew.open(crew.well() + "/drilling?kind=drilling");
      crew.fill("bit", "7.875 ft");
      crew.fill("rod", "two and a bit");
      crew.fill("pump-rate", "110");
      crew.page().fill("#hand", "Tam Reed");
      crew.send();
      assertThat(crew.page().locator("#bit-trouble").innerText()).contains("7.875 ft", "7.875 in");
      assertThat(crew.page().locator("#rod-trouble").innerText()).contains("two and a bit", "Example");
      assertThat(crew.page().locator("#rod").inputValue()).isEqualTo("two and a bit");
      assertThat(crew.page().locator("#pump-rate").inputValue()).isEqualTo("110");

      crew.fill("rod", "2 7/8");
      crew.tap(crew.page().locator(".meanings button").filter(new Locator.FilterOptions().setHasText("7.875 in")));
      String journal = crew.open(crew.well() + "/journal").locator(".journal > li").first().innerText();
      assertThat(journal).contains("7.875 in", "2 7/8 in", "110 gpm");
    }
  }
}
