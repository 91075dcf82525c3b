package steening.stage.disinfection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import com.eclipsesource.json.Json;
import com.eclipsesource.json.JsonObject;
import com.eclipsesource.json.JsonValue;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import steening.journal.Body;
import steening.language.Language;
import steening.language.Reader;
import steening.language.UnitSystem;
import steening.quantity.Unit;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;

class DoseTest {
  private static final Body EVERYDAY =
      Body.of("casing-inside", "4.072 in", "water-column", "107.5 ft", "pack-volume", "6.703 ft3",
      "strength", "5.25 %", "target", "100 mg/L");

  /** Worked examples W-DISI-01 to -06, liquid: mass balance, computed; exact to their printed digits. */
  @Test
  void agreesWithTheWorkedExamplesForBleach() throws IOException {
    int met = 0;
    for (JsonValue one : Json.parse(open("chlorine_doses.json")).asArray()) {
      JsonObject inputs = one.asObject().get("inputs").asObject();
      if (inputs.get("product_pct") == null) continue;
      Outcome outcome = reckon(DisinfectionDose.RECKONING, Body.of(
          "casing-inside", inputs.get("id_in") + " in", "water-column", inputs.get("water_ft") + " ft",
          "strength", inputs.get("product_pct") + " %", "target", inputs.get("target_mg_L") + " mg/L"));
      JsonObject expected = one.asObject().get("expected").asObject();
      assertThat(outcome.quantity("water").in(Unit.GALLON))
          .isCloseTo(value(expected, "well_gal"), withinPercentage(0.01));
      assertThat(outcome.quantity("dose").in(Unit.GALLON)).isCloseTo(value(expected, "product_gal"), within(0.00005));
      assertThat(outcome.quantity("dose").in(Unit.FLUID_OUNCE))
          .isCloseTo(value(expected, "product_fl_oz"), withinPercentage(0.01));
      met++;
    }
    assertThat(met).isEqualTo(4);
  }

  /** Worked examples W-DISI-07 to -10, dry product. */
  @Test
  void agreesWithTheWorkedExamplesForDryProduct() throws IOException {
    int met = 0;
    for (JsonValue one : Json.parse(open("chlorine_doses.json")).asArray()) {
      JsonObject inputs = one.asObject().get("inputs").asObject();
      if (inputs.get("available_fraction") == null) continue;
      double percent = inputs.getDouble("available_fraction", 0) * 100;
      Outcome outcome = reckon(DryChlorineDose.RECKONING, Body.of(
          "casing-inside", "4 in", "water-column", "0 ft", "other-water", inputs.get("water_gal") + " gal",
          "strength", Math.round(percent) + " %", "target", inputs.get("target_mg_L") + " mg/L"));
      JsonObject expected = one.asObject().get("expected").asObject();
      assertThat(outcome.quantity("dose").in(Unit.POUND)).isCloseTo(value(expected, "lb"), within(0.00005));
      assertThat(outcome.quantity("dose").in(Unit.OUNCE)).isCloseTo(value(expected, "oz"), withinPercentage(0.01));
      met++;
    }
    assertThat(met).isEqualTo(3);
  }

  /**
   * Michigan R 325.1661 Table 5, per 100 gal (seen): published amounts are never less than the exact ones; the file
   * itself marks how much more they are, a third in the liquid row of 100 mg/L.
   */
  @Test
  void standsUnderMichigansTable() throws IOException {
    int met = 0;
    for (String line : lines("C14_chlorine_amounts.csv")) {
      if (!line.startsWith("Mich. R 325.1661 Table 5")) continue;
      String[] cells = line.split(",");
      boolean liquid = cells[3].startsWith("gal");
      Body typed = Body.of("casing-inside", "4 in", "water-column", "0 ft", "other-water", "100 gal",
          "strength", liquid ? "5.25 %" : "65 %", "target", cells[1] + " mg/L");
      double ours = liquid
          ? reckon(DisinfectionDose.RECKONING, typed).quantity("dose").in(Unit.GALLON)
          : reckon(DryChlorineDose.RECKONING, typed).quantity("dose").in(Unit.POUND);
      double exact = Double.parseDouble(cells[4]);
      double published = Double.parseDouble(cells[2]);
      assertThat(ours).as(line).isCloseTo(exact, within(0.0005 + 0.0005 * exact));
      assertThat(published).as(line).isGreaterThan(ours).isLessThan(ours * (cells[1].equals("100") ? 1.35 : 1.1));
      met++;
    }
    assertThat(met).isEqualTo(8);
  }

  /** Own scenario, checked by hand: 72.7 + 17.5 = 90.3 gal; 22 fl oz at 5.25 %, 9.2 at 12.5 %; casing alone 17.7. */
  @Test
  void dosesTheEverydayWell() {
    Outcome outcome = reckon(DisinfectionDose.RECKONING, EVERYDAY);
    assertThat(outcome.quantity("casing-water").in(Unit.GALLON)).isCloseTo(72.7, within(0.05));
    assertThat(outcome.quantity("pack-water").in(Unit.GALLON)).isCloseTo(17.55, within(0.05));
    assertThat(outcome.quantity("water").in(Unit.GALLON)).isCloseTo(90.3, within(0.06));
    assertThat(outcome.quantity("dose").in(Unit.FLUID_OUNCE)).isCloseTo(22.0, within(0.05));
    Outcome strong = reckon(DisinfectionDose.RECKONING, EVERYDAY.with("strength", "12.5 %"));
    assertThat(strong.quantity("dose").in(Unit.FLUID_OUNCE)).isCloseTo(9.2, within(0.05));
    Outcome casing = reckon(DisinfectionDose.RECKONING, EVERYDAY.with("pack-volume", "0 ft3"));
    assertThat(casing.quantity("dose").in(Unit.FLUID_OUNCE)).isCloseTo(17.7, within(0.05));
  }

  @Test
  void reckonsInMetricToo() {
    Reader metric = new Reader(Language.SPANISH, UnitSystem.METRIC);
    Outcome outcome = reckon(DisinfectionDose.RECKONING, EVERYDAY);
    // 0.0128 × 100 × 90.2746 / 5.25 = 22.0098 fl oz of 29.5735 mL
    assertThat(outcome.figure("dose").shownTo(metric)).isEqualTo("650.91 mL");
    assertThat(outcome.working(metric).lines()).anyMatch(l -> l.formula().equals("0.1 × c × V / s"));
    assertThat(outcome.working(Reader.US_ENGLISH).lines()).anyMatch(l -> l.formula().equals("0.0128 × c × V / s"));
    assertThat(DisinfectionDose.RECKONING.title().shownTo(metric)).isEqualTo("Blanqueador para un pozo");
  }

  @Test
  void wantsWaterToTreat() {
    assertThatThrownBy(() ->
        reckon(DisinfectionDose.RECKONING, EVERYDAY.with("water-column", "0 ft").with("pack-volume", "0 ft3")))
        .isInstanceOf(NotReckonable.class).hasMessage("There is no water to treat.");
  }

  @Test
  void neverSpeaksOfChlorineWithoutItsCautions() {
    for (Reckoning reckoning : List.of(DisinfectionDose.RECKONING, DryChlorineDose.RECKONING)) {
      assertThat(reckoning.validity().stream().map(v -> v.shownTo(Reader.US_ENGLISH)))
          .anyMatch(s -> s.contains("acid or ammonia"))
          .anyMatch(s -> s.contains("Goggles and gloves"))
          .anyMatch(s -> s.contains("Unscented"))
          .anyMatch(s -> s.contains("local code"));
    }
  }

  /** Michigan R 325.1661 Table 5 (seen), as the file of disinfection rules has it: 100 mg/L 10 h; 250 4 h and so on. */
  @Test
  void knowsTheHoursOfMichigansTable() throws IOException {
    String rule = lines("C14b_disinfection_rules.csv").stream().filter(l -> l.contains("Table 5")).findFirst()
        .orElseThrow();
    Matcher pair = Pattern.compile("(\\d+)(?: mg/L)? (\\d+) h").matcher(rule);
    int met = 0;
    while (pair.find()) {
      assertThat(ContactRule.hours(Double.parseDouble(pair.group(1)))).as(rule)
          .isEqualTo(Double.parseDouble(pair.group(2)));
      met++;
    }
    assertThat(met).isEqualTo(4);
    assertThat(ContactRule.hours(50)).as("weaker than the table").isEqualTo(10);
  }

  private static Outcome reckon(Reckoning reckoning, Body typed) {
    return reckoning.of(Inputs.of(typed));
  }

  private static double value(JsonObject expected, String name) {
    return expected.get(name).asObject().getDouble("value", 0);
  }

  private static BufferedReader open(String name) {
    return new BufferedReader(new InputStreamReader(
        DoseTest.class.getResourceAsStream("/cases/construction/" + name), StandardCharsets.UTF_8));
  }

  private static List<String> lines(String name) throws IOException {
    try (BufferedReader reader = open(name)) {
      return reader.lines().toList();
    }
  }
}
