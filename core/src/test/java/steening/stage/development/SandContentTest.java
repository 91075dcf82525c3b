package steening.stage.development;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import com.eclipsesource.json.Json;
import com.eclipsesource.json.JsonObject;
import com.eclipsesource.json.JsonValue;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import steening.field.Reading;
import steening.journal.Body;
import steening.language.Language;
import steening.language.Reader;
import steening.language.UnitSystem;
import steening.quantity.Unit;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;

class SandContentTest {
  /** Worked examples W-DEVE-12 and -13: unit arithmetic, bulk density 1.6 g/mL from memory; exact but for rounding. */
  @Test
  void agreesWithTheWorkedExamples() throws IOException {
    int met = 0;
    try (InputStream in = getClass().getResourceAsStream("/cases/construction/sand_content.json")) {
      for (JsonValue one : Json.parse(new InputStreamReader(in, StandardCharsets.UTF_8)).asArray()) {
        JsonObject inputs = one.asObject().get("inputs").asObject();
        double expected = one.asObject().get("expected").asObject().get("mg_L").asObject().getDouble("value", 0);
        assertThat(content(inputs.get("sand_mL") + " mL", inputs.get("water_L") + " L"))
            .isCloseTo(expected, withinPercentage(0.01));
        met++;
      }
    }
    assertThat(met).isEqualTo(2);
  }

  /** The trade's table for a pail of 5 gal (derived in the project's own notes): 1 mL is 85 mg/L, 0.06 mL is 5 mg/L. */
  @Test
  void readsAPailWhereNoVolumeIsGiven() {
    assertThat(reckon(Body.of("sand", "1 mL")).quantity("sand-content").in(Unit.MILLIGRAM_PER_LITRE))
        .isCloseTo(84.5, within(0.05));
    assertThat(reckon(Body.of("sand", "0.06 mL")).quantity("sand-content").in(Unit.MILLIGRAM_PER_LITRE))
        .isCloseTo(5, within(0.1));
  }

  @Test
  void showsTheDensityInTheReadersUnits() {
    Reader metric = new Reader(Language.SPANISH, UnitSystem.METRIC);
    Outcome outcome = reckon(Body.of("sand", "0.5 mL", "water", "100 L"));
    assertThat(outcome.working(metric).lines()).anyMatch(l -> l.formula().equals("1600 × v / V"));
    assertThat(outcome.figure("sand-content").shownTo(metric)).isEqualTo("8.0 mg/L");
    assertThat(SandContent.RECKONING.title().shownTo(metric)).isEqualTo("Contenido de arena");
  }

  @Test
  void asksForWaterThatSandCanSettleFrom() {
    assertThat(SandContent.WATER.read("0 gal", Reader.US_ENGLISH, false)).isInstanceOf(Reading.Refused.class);
    assertThat(SandContent.SAND.read("much", Reader.US_ENGLISH, false))
        .isInstanceOfSatisfying(Reading.Refused.class,
            r -> assertThat(r.sentence().shownTo(Reader.US_ENGLISH)).contains("0.05 mL"));
  }

  private static double content(String sand, String water) {
    return reckon(Body.of("sand", sand, "water", water)).quantity("sand-content").in(Unit.MILLIGRAM_PER_LITRE);
  }

  private static Outcome reckon(Body typed) {
    return SandContent.RECKONING.of(Inputs.of(typed));
  }
}
