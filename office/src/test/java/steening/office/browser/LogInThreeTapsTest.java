package steening.office.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import steening.journal.Entry;
import steening.office.demo.DemoFirm;

/** An interval of the driller's log on a phone, in gloves: after the depth no more than three taps. */
class LogInThreeTapsTest {
  @TempDir private Path folder;

  @Test
  void materialWaterAndDown() {
    try (Crew crew = crewAtTheHole()) {
      Page page = crew.open(crew.well() + "/drilling?kind=log");
      assertThat(page.locator("#from").inputValue()).as("begins where the last one ended").isEqualTo("118.00 ft");
      crew.signs("Tam Reed");
      crew.fill("to", "124");
      Locator clay = tile(page, "material", "clay");
      assertThat(clay.boundingBox().height).as("high enough for a glove").isGreaterThanOrEqualTo(64);
      clay.tap();
      page.locator("label:has(input[name=water][value=no])").tap();
      crew.send();
      assertThat(page.locator(".finding").evaluateAll("all => all.map(one => one.dataset.code)").toString())
          .as("no gap was left").doesNotContain("drilling.log-gap");
      assertThat(page.locator("figure.section svg").innerHTML()).as("drawn at once").contains("118–124");
    }
  }

  @Test
  void aGapIsSaidAtOnceAndADrillersWordAskedAbout() {
    try (Crew crew = crewAtTheHole()) {
      Page page = crew.open(crew.well() + "/drilling?kind=log");
      crew.signs("Tam Reed");
      crew.fill("from", "120");
      crew.fill("to", "124");
      page.fill("#material", "gumbo");
      crew.send();
      assertThat(page.locator(".tiles .sentence").innerText()).contains("gumbo");
      crew.tap(page.locator(".tiles .meanings button").first());
      assertThat(page.locator(".finding[data-code='drilling.log-gap']").innerText()).contains("118.00", "120.00");
      String journal = crew.open(crew.well() + "/journal").locator(".journal > li").first().innerText();
      assertThat(journal).contains("clay");
    }
  }

  private static Locator tile(Page page, String name, String code) {
    return page.locator("label.tile:has(input[name=" + name + "][value=" + code + "])");
  }

  private Crew crewAtTheHole() {
    List<Entry> entries = DemoFirm.well("clay-for-sand");
    Crew crew = Crew.withPhone(folder.resolve("log.db"), entries);
    crew.at(entries.get(0).well());
    return crew;
  }
}
