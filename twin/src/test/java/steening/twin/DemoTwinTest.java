package steening.twin;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import steening.journal.Codec;
import steening.journal.Entry;
import steening.office.demo.DemoFirm;

/**
 * The invented firm's wells through both worlds: every page of every well, and every entry taken up to be
 * corrected.
 */
class DemoTwinTest {
  private static Browser browser;

  @BeforeAll
  static void open() throws IOException {
    browser = Browser.with("/phone/steening");
  }

  @AfterAll
  static void close() {
    browser.close();
  }

  @ParameterizedTest
  @CsvSource({"en, us", "en, metric", "es, us", "es, metric"})
  void theFirmsWellsReadAlike(String language, String units) {
    List<Entry> entries = DemoFirm.entries();
    Journey journey = new Journey(browser, Map.of("language", language, "units", units));
    journey.carry(entries.stream().map(Codec::write).toList());

    for (String place : Places.ofTheFirm()) journey.mustFind(place);
    for (String well : entries.stream().map(Entry::well).distinct().toList()) {
      for (String place : Places.of("/well/" + well)) journey.mustFind(place);
    }
    for (Entry entry : entries) {
      if (entry.kind().equals("moved-over")) journey.mustFind(Places.firstHole("/well/" + entry.well()));
    }
    for (Entry entry : entries) journey.mustFind("/well/" + entry.well() + "/entry/" + entry.id());
    Entry last = entries.get(entries.size() - 1);
    journey.post("/well/" + last.well() + "/entry/" + last.id() + "/withdrawal", Map.of("why", "taken down twice"));
    journey.mustFind("/well/" + last.well() + "/journal");

    assertThat(journey.differences()).as("of %d replies", journey.requests()).isEmpty();
    assertThat(journey.entries()).as("entries").isEqualTo(entries.size() + 1);
  }
}
