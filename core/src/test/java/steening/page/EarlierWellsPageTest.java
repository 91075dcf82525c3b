package steening.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import steening.job.JobInSteps;
import steening.journal.Entry;
import steening.journal.Journal;
import steening.journal.Moment;
import steening.stage.EverydayWell;

/** Own scenario: two finished wells in coarse sand, one of them far away, and one that is still being packed. */
class EarlierWellsPageTest {
  private static final Moment NOW = Moment.parse("2026-05-12T20:00:00-05:00");
  private static final JobInSteps HERE = placed(EverydayWell.logged(), "Here", "38.40", "-83.10");
  /** 14 bags to 115 ft: 7.0 of 6.70 ft³, 1.04; by hand with 2 bags of chips, 8.38 of 7.84 ft³: 1.07. */
  private static final JobInSteps NEAR = finished(placed(EverydayWell.cased(), "Near", "38.41", "-83.10"), "115 ft");
  private static final JobInSteps FAR = finished(placed(EverydayWell.cased(), "Far", "39.40", "-83.10"), "118 ft");
  private static final JobInSteps BEGUN = placed(EverydayWell.cased(), "Begun", "38.40", "-83.10");

  @Test
  void listsWhatFinishedWellsTookTheNearestFirst() {
    String page = get("/well/here/earlier-wells", Map.of("hand", "Ada")).body();
    assertThat(page).contains("<h1>Earlier wells</h1>", "Near", "Far", "coarse sand").doesNotContain("Begun");
    assertThat(page.indexOf("Near")).isLessThan(page.indexOf("Far"));
    // 0.01 degrees of latitude: 1.11 km
    assertThat(get("/well/here/earlier-wells", Map.of("units", "metric")).body()).contains("1.1");
    assertThat(page).contains("value=\"usual-ground\"", "name=\"mean-ratio\"");
  }

  @Test
  void takesTheProposedFiguresDownAsAnEntryOfThisWell() {
    Reply reply = Desk.answer(
        new Request("POST", "/well/here/entries",
            Map.of("kind", "usual-ground", "mean-ratio", "1.13", "spread", "0.11", "wells", "Near; Far", "hand", "Ada"),
            Map.of()),
        SHELF, NOW, new Pen("d1", 1, List.of("e1")));
    assertThat(reply.status()).isEqualTo(303);
    assertThat(reply.entries()).extracting(Entry::kind).containsExactly("usual-ground");
  }

  @Test
  void saysWhenThereAreNone() {
    assertThat(get("/well/here/earlier-wells", Map.of("language", "es"), shelf(Map.of("here", HERE))).body())
        .contains("Pozos anteriores", "Ningún otro pozo");
  }

  private static final Shelf SHELF = shelf(Map.of("here", HERE, "near", NEAR, "far", FAR, "begun", BEGUN));

  private static JobInSteps placed(JobInSteps job, String name, String latitude, String longitude) {
    return job.then("site", "address", name, "latitude", latitude, "longitude", longitude);
  }

  private static JobInSteps finished(JobInSteps job, String packTop) {
    return job.then("pack-bags", "bags", "14").then("pack-tape", "reading", packTop, "from", "ground")
        .then("chips", "bags", "2").then("chips-tape", "reading", "110 ft", "from", "ground")
        .then("grout-mix", "material", "bentonite", "solids", "50 lb", "water", "24 gal")
        .then("grout-batch", "bags", "8", "water", "192 gal", "returns", "yes");
  }

  private static Reply get(String path, Map<String, String> cookies) {
    return get(path, cookies, SHELF);
  }

  private static Reply get(String path, Map<String, String> cookies, Shelf shelf) {
    return Desk.answer(new Request("GET", path, Map.of(), cookies), shelf, NOW, new Pen("d1", 1, List.of()));
  }

  private static Shelf shelf(Map<String, JobInSteps> jobs) {
    return new Shelf() {
      @Override
      public List<String> wells() {
        return jobs.keySet().stream().sorted().toList();
      }

      @Override
      public Journal journal(String well) {
        return Journal.of(jobs.get(well).entries());
      }
    };
  }
}
