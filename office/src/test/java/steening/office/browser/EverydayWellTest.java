package steening.office.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.APIResponse;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import steening.job.Job;
import steening.journal.Entry;
import steening.journal.Journal;
import steening.json.JobJson;
import steening.language.Reader;
import steening.office.FreshIds;
import steening.office.Store;
import steening.office.demo.DemoFirm;

/**
 * The everyday well typed through the browser, first call to completion. The numbers are those of our own scenario,
 * whose arithmetic was done by hand apart from this program.
 */
class EverydayWellTest {
  @TempDir private Path folder;

  @Test
  void typedOnAPhoneItComesOutOnThePageAndOnPaper() throws IOException {
    List<Entry> entries = DemoFirm.well("everyday-well");
    try (Crew crew = Crew.withPhone(folder.resolve("everyday.db"), List.of())) {
      for (Entry entry : entries) {
        crew.typesLater(entry);
        assertThat(crew.page().locator(".trouble").allInnerTexts()).as("%s %s", entry.kind(), entry.body()).isEmpty();
      }
      assertThat(crew.open(crew.well() + "/journal").locator(".journal > li").count()).isEqualTo(entries.size());

      crew.open(crew.well());
      crew.page().evaluate("document.querySelectorAll('details').forEach(d => d.open = true)");
      String page = crew.page().locator("main").innerText();
      assertThat(page)
          .as("string of 138.50 ft, screen 125 to 135").contains("138.50 ft", "125.00", "135.00")
          .as("up-hole velocity 50 ft/min").contains("50 ft/min")
          .as("entrance velocity 0.045 ft/s").contains("0.045 ft/s")
          .as("pack of 6.703 ft³, 14 bags").contains("6.70 ft³, 14 bags")
          .as("grout of 187.4 gal, 8 bags, 192 gal of water").contains("187.4 gal, 8 bags, 192.0 gal of water")
          .as("slope 1.32 ft, T 2,400 gpd/ft by the rounded 264, 2,399 by the exact factor")
          .contains("1.32 ft", "2399 gpd/ft")
          .as("specific capacity 0.97 gpm/ft").contains("0.97 gpm/ft")
          .as("100 days: 16.07 ft").contains("16.07 ft")
          .as("total dynamic head 213.9 ft").containsPattern("21[34]\\.\\d+ ft")
          .as("tank 77.5 gal").contains("77.5 gal");
      assertThat(crew.page().locator(".finding").evaluateAll("all => all.map(one => one.dataset.code)"))
          .as("typed long after it happened, and slow mud; nothing else")
          .isEqualTo(List.of("drilling.up-hole-velocity", "handover.report-late"));

      String load = crew.open(crew.well() + "/load-list").locator("main").innerText();
      assertThat(load).contains("17 bags", "9 bags", "216.0 gal");

      APIResponse paper = crew.page().request().get(crew.address() + crew.well() + "/report.pdf");
      assertThat(paper.status()).isEqualTo(200);
      try (PDDocument document = Loader.loadPDF(paper.body())) {
        assertThat(new PDFTextStripper().getText(document))
            .contains("AC-2026-0117", "0047813", "138.50 ft", "2399 gpd/ft", "16.07 ft", "WD-0419", "Orla Finch");
      }
    }
    assertThat(asJson()).contains(
        "\"text\":\"138.50 ft\"", "\"text\":\"2399 gpd/ft\"", "\"text\":\"16.07 ft\"", "\"text\":\"0.045 ft/s\"",
        "\"text\":\"77.5 gal\"", "drilling.up-hole-velocity");
  }

  /** What {@code read --json} says of what is on disk, once the office is closed. */
  private String asJson() {
    try (Store store = Store.open(folder.resolve("everyday.db"), new FreshIds())) {
      List<Entry> stored = store.all();
      return JobJson.of(Job.of(stored.get(0).well(), Journal.of(stored)), Reader.US_ENGLISH).toString();
    }
  }
}
