package steening.office.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.eclipsesource.json.Json;
import com.eclipsesource.json.JsonObject;
import com.eclipsesource.json.JsonValue;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import steening.job.Job;
import steening.job.Stages;
import steening.journal.Body;
import steening.journal.Codec;
import steening.journal.Entry;
import steening.journal.Journal;
import steening.journal.Moment;
import steening.language.Language;
import steening.language.Reader;
import steening.office.demo.DemoFirm;
import steening.well.Well;

/** Clay where sand was forecast, as the program tells it: own scenario, every figure of it checked by hand. */
class ClayForSandTest {
  private static final List<Entry> ALL = DemoFirm.well("clay-for-sand");

  @TempDir Path folder;

  /** 1. Five neighbours' tops as elevations, the nearer ones weighing more. */
  @Test
  void theSandIsForecastFromTheNeighbours() throws IOException {
    assertThat(text(untilLogged("98 ft")))
        .contains("top of the wanted sand: 102.73 ft, 9 times in 10 between 94.01 ft and 111.44 ft;"
            + " chance that there is one 85.7 %")
        .contains("the same, all wells weighed alike: 103.80 ft, 9 times in 10 between 94.70 ft and 112.90 ft");
    JsonObject expected = told(untilLogged("98 ft")).get("well").asObject().get("stages").asObject().get("drilling")
        .asObject().get("expected").asArray().values().stream().map(JsonValue::asObject)
        .filter(e -> e.get("what").asString().startsWith("top of the wanted sand")).findFirst().orElseThrow();
    assertThat(number(expected.get("value"))).isCloseTo(102.7, within(0.05));
    assertThat(number(expected.get("giveOrTake"))).isCloseTo(2.13 * 4.09, within(0.03));
  }

  /** 2. The chance that it is still below, at every log; nothing is said while the forecast may still come true. */
  @Test
  void theChanceFallsAndNothingIsSaidTooEarly() throws IOException {
    assertThat(chanceBelow("108 ft")).isCloseTo(44, within(0.5));
    assertThat(chanceBelow("112 ft")).isCloseTo(20, within(0.5));
    assertThat(chanceBelow("118 ft")).isCloseTo(5.7, within(0.05));
    for (String early : List.of("43 ft", "98 ft", "108 ft")) {
      assertThat(codes(untilLogged(early))).as(early).containsExactly("drilling.up-hole-velocity");
    }
    assertThat(codes(untilLogged("112 ft"))).contains("drilling.forecast-passed");
    String before = Said.by("read", file(ALL), "--as-of", "2026-06-08T10:20-04:00").out();
    assertThat(before).doesNotContain("drilling.forecast-passed").contains("chance that it is still below 108.00 ft");
    assertThat(text(untilLogged("112 ft")))
        .contains("Look: Forecast interval passed: logged to 112.00 ft")
        .contains("Another rod may be worth it; call the customer at 115.00 ft, not at the 140.00 ft agreed.");
  }

  /** 3 and 4. The next sand lies below what was agreed: call at 118, not at 140. */
  @Test
  void theCustomerIsCalledWhereTheForecastFails() throws IOException {
    Said said = Said.by("read", file(ALL));
    assertThat(said.status()).as("it stops the work").isEqualTo(1);
    assertThat(said.out())
        .contains("Stop: Forecast interval passed: logged to 118.00 ft without the wanted sand, expected at 102.73 ft,"
            + " 19 times in 20 above 111.44 ft. The chance that it is still below is 5.7 %.")
        .contains("Call the customer now, at 118.00 ft, not at the 140.00 ft agreed, which ends above the next sand."
            + " The next sand is expected at 147.50 ft, with a chance of 75.0 %; to 165.00 ft there are 47.00 ft to"
            + " drill, $1316. Finishing here counts on that 5.7 %.")
        .contains("drilling on to 165.00 ft: 47.00 ft, $1316; by expected value: drill on ($2284)")
        .contains("call the customer, if the sand has not come, at: 115.00 ft")
        .doesNotContainIgnoringCase("dry hole");
    // the screen of the first design, 115 to 125 ft, stands against the clay that was found
    assertThat(codes(ALL)).containsExactly(
        "drilling.forecast-passed", "casing.screen-in-clay", "drilling.up-hole-velocity");
    JsonObject passed = told(ALL).get("findings").asArray().get(0).asObject();
    assertThat(passed.get("weight").asString()).isEqualTo("stop");
    assertThat(number(passed.get("measured"))).isEqualTo(118);
    assertThat(number(passed.get("expected"))).isCloseTo(111.4, within(0.05));
    Said spanish = Said.by(Language.SPANISH, "read", file(ALL), "--metric");
    assertThat(spanish.out())
        .contains("Llame al cliente ahora, a 35.97 m, no a los 42.67 m acordados");
  }

  /**
   * 5. The deeper design, against the truck as it was counted: joints reach, grout does not. The plan's 24.1
   * gal to the bag make the 26.4 gal of the scenario; 24 gal make 26.3 by absolute volumes, and would ask for one more.
   */
  @Test
  void theTruckIsHeldAgainstTheDeeperDesign() throws IOException {
    List<Entry> deeper = deeper();
    assertThat(text(deeper)).contains("length of the casing string: 163.50 ft");
    assertThat(loads(deeper)).contains("grout, bags of 50.0 lb: 11").contains("20.00 ft each, one to spare: 9");
    // 11 to load by the flat 25 %, so two are short; by what holes usually take, nine times in ten, three
    assertThat(text(deeper))
        .contains("nine times in ten no more than 12 bags. On the truck by the last count: 9 bags; short 3.")
        .contains("[seal.truck]");
    assertThat(codes(deeper)).doesNotContain("casing.truck", "plan.depth-not-agreed", "drilling.call-customer");
    // as loaded for the first design nothing was short
    assertThat(codes(ALL)).doesNotContain("seal.truck", "casing.truck");
    String pack = Said.by("reckon", "pack-volume", "hole=7 7/8 in", "casing=4.5 in", "string-bottom=162 ft",
        "from=140 ft", "to=165 ft").out();
    assertThat(pack).contains("6.03 ft³").contains("12.05");
    String grout =
        Said.by("reckon", "grout-volume", "hole=7 7/8 in", "casing=4.5 in", "from=0 ft", "to=136 ft", "solids=50 lb",
            "water=24.1 gal").out();
    assertThat(grout).contains("231.7 gal");
  }

  /** 6. The new sand's grains: pack 0.8 to 1.2 mm for D30 0.20 mm. */
  @Test
  void theNewSandChoosesItsPack() throws IOException {
    List<Entry> sieved = new ArrayList<>(deeper());
    sieved.add(next(sieved, "log", "from", "118 ft", "to", "147 ft", "material", "clay", "water", "no"));
    sieved.add(next(sieved, "log", "from", "147 ft", "to", "163 ft", "material", "medium-sand", "water", "yes"));
    sieved.add(next(sieved, "sieve", "from", "150 ft", "to", "160 ft", "openings", "0.10; 0.20; 0.40; 0.80 mm",
        "finer", "5; 30; 75; 98 %"));
    assertThat(codes(sieved)).doesNotContain("drilling.forecast-passed", "drilling.sand-thin");
    assertThat(text(sieved))
        .contains("150.00 ft | 160.00 ft | 0.8 mm | 1.2 mm")
        .contains("yield to hope for, sand 147.00 ft to 163.00 ft: ")
        .contains("150.00 ft | 160.00 ft | K by Hazen | D10 0.1 to 3 mm, Cu under 5 | ");
  }

  private static String loads(List<Entry> entries) {
    Well well = Job.of(entries.get(0).well(), Journal.of(entries)).well();
    return Stages.all().stream().flatMap(stage -> stage.loads(well).stream())
        .map(load -> load.what().shownTo(Reader.US_ENGLISH) + ": " + load.howMany().shownTo(Reader.US_ENGLISH))
        .collect(Collectors.joining("\n"));
  }

  private static List<Entry> deeper() {
    Entry plan = ALL.stream().filter(e -> e.kind().equals("plan")).findFirst().orElseThrow();
    Body body = plan.body().with("hole-depth", "165 ft").with("screen-top", "150 ft").with("screen-bottom", "160 ft")
        .with("pack-top", "140 ft").with("chips-top", "136 ft").with("authorised-depth", "165 ft");
    List<Entry> entries = new ArrayList<>(ALL);
    entries.add(next(entries, "plan", body));
    return entries;
  }

  private static Entry next(List<Entry> before, String kind, String... namesAndTexts) {
    return next(before, kind, Body.of(namesAndTexts));
  }

  private static Entry next(List<Entry> before, String kind, Body body) {
    Entry last = before.get(before.size() - 1);
    Moment later = last.happenedAt().plusMinutes(10);
    String id = last.id().substring(0, 34) + (before.size() - ALL.size() + 10);
    return new Entry(
        id, last.well(), "test", before.size() + 1, "crew", later, later, kind, 1, body, List.of());
  }

  /** The journal up to the log that ends so deep. */
  private static List<Entry> untilLogged(String to) {
    List<Entry> until = new ArrayList<>();
    for (Entry entry : ALL) {
      until.add(entry);
      if (entry.kind().equals("log") && entry.body().text("to").orElse("").equals(to)) return until;
    }
    throw new AssertionError("no log to " + to);
  }

  private double chanceBelow(String to) throws IOException {
    return told(untilLogged(to)).get("well").asObject().get("stages").asObject().get("drilling").asObject()
        .get("figures").asArray().values().stream().map(JsonValue::asObject)
        .filter(f -> f.get("label").asString().startsWith("chance that it is still below"))
        .mapToDouble(f -> number(f.get("value"))).findFirst().orElseThrow();
  }

  private static double number(JsonValue value) {
    return value.asObject().get("value").asDouble();
  }

  private List<String> codes(List<Entry> entries) throws IOException {
    return told(entries).get("findings").asArray().values().stream()
        .map(f -> f.asObject().get("code").asString()).toList();
  }

  private JsonObject told(List<Entry> entries) throws IOException {
    return Json.parse(Said.by("read", file(entries), "--json").out()).asObject();
  }

  private String text(List<Entry> entries) throws IOException {
    return Said.by("read", file(entries)).out();
  }

  private String file(List<Entry> entries) throws IOException {
    Path file = folder.resolve("clay-" + entries.size() + ".jsonl");
    Files.writeString(file, entries.stream().map(Codec::write).collect(Collectors.joining("\n", "", "\n")));
    return file.toString();
  }
}
