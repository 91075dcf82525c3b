package steening.twin;

import static org.assertj.core.api.Assertions.assertThat;

import com.eclipsesource.json.JsonObject;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import steening.field.Field;
import steening.field.Kind;
import steening.job.Stages;
import steening.language.Language;
import steening.language.Reader;
import steening.language.UnitSystem;
import steening.reckoning.Reckoning;
import steening.stage.Stage;

/**
 * The whole job through both worlds: every form there is, filled in with its own examples, and every page afterwards. A
 * stage that joins the register joins this test.
 */
class PageTwinTest {
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
  void theWholeJobReadsAlike(String language, String units) {
    Reader reader = new Reader(Language.of(language), UnitSystem.of(units));
    Journey journey = new Journey(browser, Map.of("language", language, "units", units));
    String well = journey.post("/new", filled(Stages.all().get(0).kinds().get(0), reader)).get("location").asString();
    assertThat(well).startsWith("/well/");

    for (Stage stage : Stages.all()) {
      for (Kind kind : stage.kinds()) {
        journey.get(well + "/" + stage.name(), Map.of("kind", kind.name()));
        journey.post(well + "/entries", Map.of("kind", kind.name()));
        journey.post(well + "/entries", nonsense(kind));
        JsonObject taken = journey.post(well + "/entries", filled(kind, reader));
        assertThat(taken.get("status").asInt()).as(kind.name() + " filled in with its examples").isEqualTo(303);
      }
    }
    for (Reckoning reckoning : Stages.reckonings()) {
      Map<String, String> examples = filled(reckoning.form(), reader);
      journey.get("/reckon/" + reckoning.name(), examples);
      journey.post("/api/reckon/" + reckoning.name(), examples);
    }
    for (String place : Places.ofTheFirm()) journey.mustFind(place);
    for (String place : Places.of(well)) journey.mustFind(place);
    journey.mustFind(Places.firstHole(well));
    journey.get("/nowhere", Map.of());
    journey.post("/settings", Map.of("units", "metric", "back", well));
    journey.post("/settings", Map.of("language", "es", "back", "//elsewhere"));

    assertThat(journey.differences()).as("of %d replies", journey.requests()).isEmpty();
    assertThat(journey.entries()).as("entries").isGreaterThan(Stages.all().size());
  }

  private static Map<String, String> filled(Kind kind, Reader reader) {
    Map<String, String> values = new LinkedHashMap<>();
    for (Field field : kind.fields()) values.put(field.name(), field.example(reader));
    values.put("kind", kind.name());
    values.put("hand", "A <b>\"&' é");
    values.put("sent", "1");
    // usual or not, it is meant
    values.put("sure", String.join(" ", kind.fields().stream().map(Field::name).toList()));
    return values;
  }

  private static Map<String, String> nonsense(Kind kind) {
    Map<String, String> values = new LinkedHashMap<>();
    List<String> slips = List.of("57' 3 1/2\"", "-1", "1,5", "?!");
    for (Field field : kind.fields()) values.put(field.name(), slips.get(values.size() % 4));
    values.put("kind", kind.name());
    return values;
  }
}
