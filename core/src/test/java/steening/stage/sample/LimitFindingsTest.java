package steening.stage.sample;

import static org.assertj.core.api.Assertions.assertThat;

import com.eclipsesource.json.Json;
import com.eclipsesource.json.JsonObject;
import com.eclipsesource.json.JsonValue;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.job.Notebook;
import steening.language.BothLanguages;
import steening.language.Language;
import steening.language.UnitSystem;
import steening.quantity.Notation;
import steening.stage.Sheet;

/** Amounts in water beside the limits, and what is done about a well that fails. */
class LimitFindingsTest {
  private static final steening.language.Reader ENGLISH = steening.language.Reader.US_ENGLISH;
  private static final steening.language.Reader SPANISH =
      new steening.language.Reader(Language.SPANISH, UnitSystem.METRIC);

  /** Names in the file of federal limits (40 CFR 141.62, 141.66, 141.80, 143.3), and the names of the form. */
  private static final Map<String, Constituent> NAMES = Map.ofEntries(
      Map.entry("nitrite_as_N", Constituent.NITRITE), Map.entry("arsenic", Constituent.ARSENIC),
      Map.entry("lead", Constituent.LEAD), Map.entry("copper", Constituent.COPPER),
      Map.entry("fluoride", Constituent.FLUORIDE), Map.entry("uranium", Constituent.URANIUM),
      Map.entry("iron", Constituent.IRON), Map.entry("manganese", Constituent.MANGANESE),
      Map.entry("chloride", Constituent.CHLORIDE), Map.entry("sulfate", Constituent.SULFATE),
      Map.entry("TDS", Constituent.SOLIDS), Map.entry("pH", Constituent.PH));

  /** Every limit is one of the file's, and none of the file's is left out. */
  @Test
  void holdsTheFederalLimits() throws IOException {
    Set<String> published = new TreeSet<>();
    for (JsonValue value : federal().get("rules").asArray()) {
      JsonObject rule = value.asObject();
      Constituent constituent = NAMES.get(rule.getString("about", "").substring("sample.".length()));
      if (constituent == null) continue;
      String unit = rule.getString("unit", "").replace("pH", "");
      double bound = Notation.read(rule.get("value") + " " + unit, constituent.field.scale().us()).orElseThrow()
          .quantity().coherent();
      published.add(constituent + rule.getString("op", "") + bound + " " + rule.getString("cite", ""));
    }
    Set<String> ours = new TreeSet<>();
    for (Constituent constituent : Constituent.values()) {
      for (Limit limit : constituent.limits) {
        ours.add(constituent + (limit.isLeast() ? ">=" : "<=") + limit.bound().coherent() + " " + limit.citation());
      }
    }
    assertThat(ours).hasSize(15).isEqualTo(published);
  }

  @Test
  void stopsAtAPrimaryLimit() {
    Notebook notebook = tested("arsenic", "25 ug/L");
    Finding finding = notebook.finding("sample.arsenic");
    assertThat(finding.weight()).isEqualTo(Weight.STOP);
    assertThat(finding.text().shownTo(ENGLISH))
        .isEqualTo("arsenic: 0.025 mg/L, above the primary limit of 0.01 mg/L (40 CFR 141.62).");
    // by hand: 1 - 10/25
    assertThat(finding.next().get().shownTo(ENGLISH)).endsWith("A treatment has to take out at least 60.0 %.");
    assertThat(notebook.codes("sample")).containsExactly("sample.arsenic");
    assertThat(tested("arsenic", "0.01 mg/L").codes("sample")).isEmpty();
    assertThat(tested("lead", "0.016 mg/L").finding("sample.lead").weight()).isEqualTo(Weight.STOP);
  }

  @Test
  void notesWhatTastesAndStains() {
    Finding iron = tested("iron", "0.9 mg/L").finding("sample.iron");
    assertThat(iron.weight()).isEqualTo(Weight.NOTE);
    assertThat(iron.text().shownTo(SPANISH))
        .isEqualTo("hierro: 0.9 mg/L, sobre el límite secundario de 0.3 mg/L (40 CFR 143.3).");
    assertThat(iron.cause().get().shownTo(ENGLISH)).contains("stains");
    assertThat(tested("ph", "6.1").finding("sample.ph").text().shownTo(ENGLISH))
        .isEqualTo("pH of the water: 6.1, below the secondary limit of 6.5 (40 CFR 143.3).");
    assertThat(tested("ph", "7").codes("sample")).isEmpty();
  }

  /** Fluoride and copper have two limits: the graver one speaks. */
  @Test
  void theGraverLimitSpeaks() {
    assertThat(tested("fluoride", "3 mg/L").finding("sample.fluoride").weight()).isEqualTo(Weight.NOTE);
    assertThat(tested("fluoride", "5 mg/L").finding("sample.fluoride").weight()).isEqualTo(Weight.STOP);
  }

  @Test
  void aBetterSampleAnswersAWorseOne() {
    Notebook notebook = tested("iron", "0.9 mg/L").at("2026-05-25T09:00:00-05:00").write("sample", "bottle", "B-2")
        .write("sample-result", "coliform", "absent", "iron", "0.1 mg/L");
    assertThat(notebook.codes("sample")).isEmpty();
    assertThat(notebook.at("2026-05-27T09:00:00-05:00").write("sample", "bottle", "B-3")
        .write("sample-result", "coliform", "absent").codes("sample")).isEmpty();
  }

  @Test
  void laysTheWaterBesideTheLimits() {
    Sheet sheet = new SampleStage().sheet(tested(
        "iron", "0.9 mg/L", "ph", "7.5", "dissolved-solids", "320 mg/L", "calcium", "60 mg/L", "magnesium", "12 mg/L",
        "alkalinity", "34 mg/L", "water-temperature", "25 °C").well());
    Sheet.Table table = sheet.tables().get(1);
    assertThat(table.rows()).hasSize(4).extracting(r -> r.get(4).shownTo(ENGLISH))
        .containsExactly("66.7 %", "–", "–", "–");
    BothLanguages.assertSpokenIn(table.title());
    assertThat(sheet.lines()).extracting(l -> l.value().shownTo(ENGLISH))
        // by hand: 2.497 × 60 + 4.118 × 12 = 199.2; the index with 149.82 mg/L of calcium hardness
        .containsExactly("199.2 mg/L", "very hard", "-0.7289", "takes up lime, may corrode");
    assertThat(new SampleStage().sheet(tested().well()).tables()).hasSize(1);
  }

  @Test
  void speaksBothLanguages() {
    for (Constituent constituent : Constituent.values()) {
      BothLanguages.assertSpokenIn(constituent.field.label());
      BothLanguages.assertSpokenIn(constituent.cause);
      for (Limit limit : constituent.limits) BothLanguages.assertSpokenIn(limit.asOf());
    }
  }

  /** D14: dosed again once; after two failures an opening is looked for; two good ones a day apart. */
  @Test
  void followsTheEntriesAfterAFailure() {
    Notebook notebook = start().write("sample-result", "coliform", "present");
    assertThat(next(notebook)).contains("disinfect once more");
    dosed(notebook.at("2026-05-23T08:00:00-05:00"));
    assertThat(next(notebook)).contains("fill the second bottle");
    notebook.at("2026-05-24T09:00:00-05:00").write("residual", "chlorine", "0 mg/L").write("sample", "bottle", "B-2")
        .write("sample-result", "coliform", "present");
    assertThat(notebook.codes("sample")).containsExactly("sample.coliform");
    assertThat(next(notebook)).startsWith("Look for the opening");
    dosed(notebook.at("2026-05-25T09:00:00-05:00"));
    assertThat(notebook.finding("sample.dosed-again").text().shownTo(ENGLISH)).contains("2 failed bottles");
    notebook.at("2026-05-27T09:00:00-05:00").write("residual", "chlorine", "0 mg/L").write("sample", "bottle", "B-3")
        .write("sample-result", "coliform", "absent");
    assertThat(notebook.codes("sample")).containsExactly("sample.coliform-again");
    assertThat(notebook.finding("sample.coliform-again").next().get().shownTo(ENGLISH)).startsWith("Not to drink");
    notebook.at("2026-05-28T10:00:00-05:00").write("sample", "bottle", "B-4")
        .write("sample-result", "coliform", "absent");
    assertThat(notebook.codes("sample")).isEmpty();
  }

  private static String next(Notebook notebook) {
    return notebook.finding("sample.coliform").next().orElseThrow().shownTo(ENGLISH);
  }

  private static JsonObject federal() throws IOException {
    try (Reader reader = new InputStreamReader(
        LimitFindingsTest.class.getResourceAsStream("/limits/us-federal.json"), StandardCharsets.UTF_8)) {
      return Json.parse(reader).asObject();
    }
  }

  private static Notebook dosed(Notebook notebook) {
    return notebook.write(
        "disinfection", "product", "bleach", "strength", "5.25 %", "amount", "22 fl oz", "target", "100 mg/L",
        "contact", "12 h");
  }

  private static Notebook start() {
    return dosed(new Notebook().at("2026-05-20T08:00:00-05:00")).write("residual", "chlorine", "0 mg/L")
        .at("2026-05-20T14:00:00-05:00").write("sample", "bottle", "B-1");
  }

  private static Notebook tested(String... found) {
    String[] all = new String[found.length + 2];
    all[0] = "coliform";
    all[1] = "absent";
    System.arraycopy(found, 0, all, 2, found.length);
    return start().write("sample-result", all);
  }
}
