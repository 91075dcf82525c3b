package steening.stage.drilling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static steening.stage.WorkedExamples.expected;
import static steening.stage.WorkedExamples.input;

import com.eclipsesource.json.JsonObject;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import steening.field.Kind;
import steening.journal.Body;
import steening.language.Language;
import steening.language.Reader;
import steening.language.UnitSystem;
import steening.quantity.Unit;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.stage.WorkedExamples;
import steening.stage.drilling.fluid.ArtesianBalance;
import steening.stage.drilling.fluid.MudMakeUp;
import steening.stage.drilling.fluid.MudPumpOutput;
import steening.stage.drilling.fluid.WeightingUp;

/** Mud, weighed, mixed and pumped: against worked examples, the formulas handbook and arithmetic by hand. */
class FluidReckoningsTest {
  private static final Reader METRIC_SPANISH = new Reader(Language.SPANISH, UnitSystem.METRIC);

  /** Hydrostatics, computed by a second route; the tolerances are those of the examples. */
  @ParameterizedTest
  @ValueSource(strings = {"W-DRIL-12", "W-DRIL-13"})
  void mudAgainstAHeadAgreesWithTheWorkedExamples(String id) {
    JsonObject row = WorkedExamples.named(id);
    Outcome outcome = reckon(ArtesianBalance.RECKONING,
        "aquifer-top", input(row, "depth_to_aquifer_top_ft") + " ft",
        "head", input(row, "head_above_ground_ft") + " ft", "margin", input(row, "margin_lb_gal") + " lb/gal");
    assertThat(outcome.quantity("balance").in(Unit.POUND_PER_GALLON))
        .isCloseTo(expected(row, "balance_lb_gal"), withinPercentage(0.5));
    assertThat(outcome.quantity("with-margin").in(Unit.POUND_PER_GALLON))
        .isCloseTo(expected(row, "with_margin_lb_gal"), withinPercentage(0.5));
    assertThat(outcome.quantity("shut-in").in(Unit.PSI))
        .isCloseTo(expected(row, "shut_in_psi_at_ground"), withinPercentage(1));
    assertThat(outcome.remarks()).isEmpty();
  }

  /** By hand: 8.34 × 75 / 63; 8.34 × 138 / 116 with the mud two feet down. */
  @ParameterizedTest
  @CsvSource({"63 ft, 12 ft, 0 ft, 9.9286", "118 ft, 20 ft, 2 ft, 9.9217"})
  void theMudLevelCounts(String top, String head, String level, double balance) {
    Outcome outcome = reckon(ArtesianBalance.RECKONING, "aquifer-top", top, "head", head, "mud-level", level);
    assertThat(outcome.quantity("balance").in(Unit.POUND_PER_GALLON)).isCloseTo(balance, within(0.0001));
    assertThat(outcome.quantity("with-margin").in(Unit.POUND_PER_GALLON)).isCloseTo(balance + 0.3, within(0.0001));
  }

  /** By hand: 20 ft of mud against 30 ft of water is half as heavy again as water. */
  @Test
  void aShallowAquiferWithAHighHeadIsNoMatterForMud() {
    Outcome outcome = reckon(ArtesianBalance.RECKONING, "aquifer-top", "20 ft", "head", "10 ft");
    assertThat(outcome.figure("balance").shownTo(Reader.US_ENGLISH)).isEqualTo("12.51 lb/gal");
    assertThat(outcome.remarks()).singleElement()
        .satisfies(r -> assertThat(r.shownTo(METRIC_SPANISH)).contains("1318 kg/m³", "ademe superficial más alto"));
    assertThat(reckon(ArtesianBalance.RECKONING, "aquifer-top", "400 ft", "head", "24 ft").remarks())
        .singleElement().satisfies(r -> assertThat(r.shownTo(Reader.US_ENGLISH)).contains("23.00 ft", "4725.3450"));
    assertThatThrownBy(() ->
        reckon(ArtesianBalance.RECKONING, "aquifer-top", "20 ft", "head", "10 ft", "mud-level", "20 ft"))
        .isInstanceOf(NotReckonable.class).hasMessage("The mud level must be above the top of the aquifer.");
  }

  /** Formulas handbook, chapter 3 (seen): the first case is printed as 140 sacks and 9.52 barrels to 100 barrels. */
  @ParameterizedTest
  @ValueSource(strings = {"W-DRIL-15", "W-DRIL-16", "W-DRIL-18"})
  void weightingUpAgreesWithTheHandbook(String id) {
    JsonObject row = WorkedExamples.named(id);
    Outcome outcome = reckon(WeightingUp.RECKONING,
        "from", input(row, "from_lb_gal") + " lb/gal", "to", input(row, "to_lb_gal") + " lb/gal",
        "volume", input(row, "volume_gal") + " gal");
    assertThat(outcome.quantity("barite").in(Unit.POUND))
        .isCloseTo(expected(row, "barite_lb"), withinPercentage(0.001));
    assertThat(outcome.quantity("volume-gain").in(Unit.GALLON))
        .isCloseTo(expected(row, "volume_gain_gal"), withinPercentage(0.001));
  }

  @Test
  void theHandbookPrintsSacks() {
    Outcome outcome =
        reckon(WeightingUp.RECKONING, "from", "12 lb/gal", "to", "14 lb/gal", "volume", "4200 gal", "sack", "100 lb");
    assertThat(outcome.quantity("sacks").coherent()).isEqualTo(140);
    assertThat(outcome.quantity("volume-gain").in(Unit.GALLON) / 42).isCloseTo(9.52, within(0.005));
    // by hand: 14,000 lb in sacks of 50 kg
    assertThat(reckon(WeightingUp.RECKONING,
        "from", "12 lb/gal", "to", "14 lb/gal", "volume", "4200 gal", "sack", "50 kg").quantity("sacks").coherent())
        .isEqualTo(128);
  }

  @ParameterizedTest
  @CsvSource({"9.2 lb/gal, 9.2 lb/gal", "9.2 lb/gal, 9.0 lb/gal"})
  void heavyEnoughIsNotWeightedUp(String from, String to) {
    assertThatThrownBy(() -> reckon(WeightingUp.RECKONING, "from", from, "to", to, "volume", "600 gal"))
        .isInstanceOf(NotReckonable.class).hasMessage("The mud is already as heavy as wanted.");
  }

  /** First principles, computed by a second route. */
  @ParameterizedTest
  @ValueSource(strings = {"W-DRIL-25", "W-DRIL-27"})
  void pumpOutputAgreesWithTheWorkedExamples(String id) {
    JsonObject row = WorkedExamples.named(id);
    Outcome outcome = reckon(MudPumpOutput.RECKONING,
        "liner", input(row, "liner_in") + " in", "pump-rod", input(row, "rod_in") + " in",
        "stroke", input(row, "stroke_in") + " in", "cycles", Double.toString(input(row, "cycles_per_min")),
        "efficiency", 100 * input(row, "efficiency") + " %");
    assertThat(outcome.quantity("rate").in(Unit.GALLON_PER_MINUTE))
        .isCloseTo(expected(row, "gpm"), withinPercentage(0.001));
  }

  /** The factor for a cycle is printed as 0.0068 gal to cubic inches of 2 D² − d² by L (computed, 0.2 %). */
  @Test
  void cyclesMayBeCountedForHalfAMinute() {
    Outcome outcome = reckon(MudPumpOutput.RECKONING,
        "liner", "5 in", "pump-rod", "1.5 in", "stroke", "6 in", "cycles", "30", "minutes", "0.5 min");
    assertThat(outcome.quantity("per-cycle").in(Unit.GALLON)).isCloseTo(0.0068 * 6 * 47.75, withinPercentage(0.2));
    assertThat(outcome.quantity("rate").in(Unit.GALLON_PER_MINUTE)).isCloseTo(105.2026, within(0.001));
    assertThatThrownBy(() -> reckon(MudPumpOutput.RECKONING,
        "liner", "2 in", "pump-rod", "2 in", "stroke", "6 in", "cycles", "30"))
        .isInstanceOf(NotReckonable.class).hasMessage("The liner must be wider than the pump rod.");
  }

  /** A bentonite product page (seen): the barrel of test mud, 22.5 lb to 42 gal, is 53.6 lb to 100 gal. */
  @Test
  void theBarrelOfTestMud() {
    Outcome outcome = reckon(MudMakeUp.RECKONING, "volume", "100 gal", "bentonite-dose", 22.5 / 42 + " lb/gal");
    assertThat(outcome.quantity("bentonite").in(Unit.POUND)).isCloseTo(53.6, within(0.05));
    assertThat(reckon(MudMakeUp.RECKONING, "volume", "42 gal", "bentonite-dose", 22.5 / 42 + " lb/gal")
        .quantity("bentonite").in(Unit.POUND)).isCloseTo(22.5, within(0.001));
  }

  /** By hand from the ranges to 100 gal (memory): 15 to 25, 25 to 40 and 35 to 50 lb; soda ash 0.75 lb. */
  @ParameterizedTest
  @CsvSource({"normal, 75, 100, 125, 2", "loose, 125, 162.5, 200, 4", "gravel, 175, 212.5, 250, 5"})
  void theGroundSaysHowMuch(String ground, double least, double middle, double most, int sacks) {
    Outcome outcome = reckon(MudMakeUp.RECKONING, "volume", "500 gal", "ground", ground);
    assertThat(outcome.quantity("bentonite-least").in(Unit.POUND)).isCloseTo(least, within(1e-6));
    assertThat(outcome.quantity("bentonite").in(Unit.POUND)).isCloseTo(middle, within(1e-6));
    assertThat(outcome.quantity("bentonite-most").in(Unit.POUND)).isCloseTo(most, within(1e-6));
    assertThat(outcome.quantity("sacks").coherent()).isEqualTo(sacks);
    assertThat(outcome.quantity("soda-ash").in(Unit.POUND)).isCloseTo(3.75, within(1e-6));
  }

  @Test
  void sourcesThatDifferAreBothShown() {
    assertThat(MudMakeUp.RECKONING.source().publication().shownTo(Reader.US_ENGLISH)).contains("35 to 50");
    assertThat(MudMakeUp.RECKONING.validity()).extracting(v -> v.shownTo(Reader.US_ENGLISH))
        .anyMatch(v -> v.contains("Sources differ") && v.contains("up to 45"));
  }

  private static Outcome reckon(Reckoning reckoning, String... namesAndTexts) {
    Body typed = Body.of(namesAndTexts);
    Kind form = new Kind(reckoning.name(), 1, reckoning.title(), reckoning.inputs());
    assertThat(form.faults(typed)).isEmpty();
    return reckoning.of(Inputs.of(typed));
  }
}
