package steening.stage.seal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import com.eclipsesource.json.JsonObject;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import steening.journal.Body;
import steening.language.Language;
import steening.language.Phrase;
import steening.language.Reader;
import steening.language.UnitSystem;
import steening.quantity.Unit;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;

class GroutVolumeTest {
  static Stream<JsonObject> jobs() {
    return GroutExamples.worked().stream().filter(r -> !r.getString("id", "").equals("W-GROU-10"));
  }

  /** Worked examples W-GROU-01 to -09: published mixes (seen), absolute volumes, geometry. */
  @ParameterizedTest
  @MethodSource("jobs")
  void agreesWithTheWorkedExamples(JsonObject row) {
    JsonObject solids = row.get("inputs").asObject().get("solids_lb_per_bag").asObject();
    String material = solids.names().get(0);
    Outcome outcome = reckon(GroutVolume.RECKONING,
        "hole", GroutExamples.input(row, "hole_in") + " in", "casing", GroutExamples.input(row, "casing_od_in") + " in",
        "from", "0 ft", "to", GroutExamples.input(row, "length_ft") + " ft",
        "overage", 100 * GroutExamples.input(row, "overage_fraction") + " %", "material", material,
        "solids", solids.get(material).asDouble() + " lb", "water", GroutExamples.input(row, "water_gal_per_bag") + " gal");
    assertThat(outcome.quantity("order-volume").in(Unit.CUBIC_FOOT)).isCloseTo(GroutExamples.expected(row, "volume_ft3"), withinPercentage(0.01));
    assertThat(outcome.quantity("order-liquid").in(Unit.GALLON)).isCloseTo(GroutExamples.expected(row, "volume_gal"), withinPercentage(0.01));
    assertThat(outcome.quantity("order-bags").coherent()).isEqualTo(GroutExamples.expected(row, "bags"));
    assertThat(outcome.quantity("order-water").in(Unit.GALLON)).isCloseTo(GroutExamples.expected(row, "water_gal"), within(1e-6));
    assertThat(outcome.quantity("length-per-bag").in(Unit.FOOT)).isCloseTo(GroutExamples.expected(row, "ft_per_bag_gauge"), withinPercentage(0.01));
  }

  /** Own scenario, arithmetic checked by hand: 110 ft of 7 7/8 in around 4.5 in. */
  @Test
  void groutsTheEverydayWell() {
    Outcome outcome = reckon(GroutVolume.RECKONING,
        "hole", "7.875 in", "casing", "4.5 in", "from", "0 ft", "to", "110 ft", "overage", "25 %");
    assertThat(outcome.quantity("volume").in(Unit.CUBIC_FOOT)).isCloseTo(25.06, within(0.005));
    assertThat(outcome.quantity("liquid").in(Unit.GALLON)).isCloseTo(187.4, within(0.05));
    assertThat(outcome.quantity("bags").coherent()).isEqualTo(8);
    assertThat(outcome.quantity("water").in(Unit.GALLON)).isCloseTo(192, within(1e-6));
    assertThat(outcome.quantity("order-bags").coherent()).isEqualTo(9);
    assertThat(outcome.quantity("order-water").in(Unit.GALLON)).isCloseTo(216, within(1e-6));
  }

  /** Own scenario: 1.139 ft³ over 0.69 ft³ is 1.65, two bags. */
  @Test
  void putsTwoBagsOfChipsUnderIt() {
    Outcome outcome = reckon(ChipsVolume.RECKONING, "hole", "7.875 in", "casing", "4.5 in", "from", "110 ft", "to", "115 ft");
    assertThat(outcome.quantity("volume").in(Unit.CUBIC_FOOT)).isCloseTo(1.139, within(0.0005));
    assertThat(outcome.quantity("bags-filled").coherent()).isCloseTo(1.65, within(0.005));
    assertThat(outcome.quantity("bags").coherent()).isEqualTo(2);
  }

  static Stream<Map<String, String>> feetPerBag() {
    return GroutExamples.table("C10_feet_per_bag_4in_casing.csv").stream();
  }

  /** The rule "a bag for 15 ft" held against 8 mixes in 12 holes; mixes seen, feet by geometry, printed to 0.1 ft. */
  @ParameterizedTest
  @MethodSource("feetPerBag")
  void agreesWithTheTableOfFeetPerBag(Map<String, String> row) {
    Outcome outcome = reckon(FeetPerBag.RECKONING,
        "hole", row.get("hole_in") + " in", "casing", "4.5 in", "yield", row.get("yield_ft3_per_bag") + " ft3");
    assertThat(outcome.quantity("length").in(Unit.FOOT)).isCloseTo(Double.parseDouble(row.get("ft_per_bag_gauge_hole")), within(0.06));
    assertThat(outcome.quantity("hole-for-fifteen").in(Unit.INCH))
        .isCloseTo(Double.parseDouble(row.get("hole_in_at_which_15ft_is_exact")), within(0.006));
  }

  /** Common practice, no source: a bag of bentonite grout for about 15 ft. True in these holes at 20 % solids, and only there. */
  @ParameterizedTest
  @CsvSource({"7 7/8 in, 24 gal, true", "8 in, 24 gal, true", "7 7/8 in, 14 gal, false", "6 1/4 in, 24 gal, false", "10 in, 24 gal, false"})
  void knowsWhereTheRuleOfThumbHolds(String hole, String water, boolean holds) {
    double feet = reckon(FeetPerBag.RECKONING, "hole", hole, "casing", "4.5 in", "water", water).quantity("length").in(Unit.FOOT);
    assertThat(Math.abs(feet - 15) < 1.5).isEqualTo(holds);
  }

  /** A law: what is below the expected top is what was pumped. */
  @Test
  void theTopOfTheGroutKeepsTheVolume() {
    String hole = "7 7/8 in to 57 ft; 11 in to 63 ft; 7 7/8 in to 140 ft";
    for (int bags = 1; bags < 9; bags++) {
      double top = reckon(GroutTop.RECKONING, "hole", hole, "casing", "4.5 in", "bottom", "136 ft", "bags", "" + bags)
          .quantity("top").in(Unit.FOOT);
      Outcome between = reckon(GroutVolume.RECKONING, "hole", hole, "casing", "4.5 in", "from", top + " ft", "to", "136 ft");
      assertThat(between.quantity("bags-filled").coherent()).isCloseTo(bags, within(1e-6));
    }
  }

  @Test
  void saysWhenItComesBackAtTheSurface() {
    Outcome outcome = reckon(GroutTop.RECKONING, "hole", "7.875 in", "casing", "4.5 in", "bottom", "110 ft", "bags", "8");
    Phrase remark = outcome.remarks().get(0);
    // by hand: 8 × 3.5165 / 0.2278 = 123.5 ft
    assertThat(remark.shownTo(Reader.US_ENGLISH)).isEqualTo("It comes back at the surface, with enough over for 13.50 ft more.");
    assertThat(remark.shownTo(new Reader(Language.SPANISH, UnitSystem.METRIC))).isEqualTo("Regresa a la superficie y sobra para 4.11 m más.");
  }

  /** Worked example W-GROU-10: mass balance. */
  @Test
  void findsTheWaterTooMuch() {
    JsonObject row = GroutExamples.worked("W-GROU-10");
    Outcome outcome = reckon(GroutDilution.RECKONING,
        "mixed", GroutExamples.input(row, "design_lb_gal") + " lb/gal", "weighed", GroutExamples.input(row, "measured_lb_gal") + " lb/gal",
        "volume", "100 gal");
    assertThat(outcome.quantity("extra-share").coherent())
        .isCloseTo(GroutExamples.expected(row, "extra_water_gal_per_gal_design_grout"), withinPercentage(0.1));
    assertThat(outcome.quantity("extra-water").in(Unit.GALLON)).isCloseTo(21.87, within(0.01));
  }

  /** A law: grout diluted by so much weighs so much, and the balance finds the water again. */
  @Test
  void theBalanceFindsTheWaterThatWasAdded() {
    Outcome thin = reckon(GroutMix.RECKONING, "bentonite", "50 lb", "water", "27 gal");
    Outcome thick = reckon(GroutMix.RECKONING, "bentonite", "50 lb", "water", "24 gal");
    Outcome found = GroutDilution.of(thick.quantity("density"), thin.quantity("density"), Optional.of(thick.quantity("yield")));
    assertThat(found.quantity("extra-water").in(Unit.GALLON)).isCloseTo(3, within(1e-9));
  }

  @Test
  void saysWhatCannotBe() {
    assertThatThrownBy(() -> reckon(GroutDilution.RECKONING, "mixed", "9.5 lb/gal", "weighed", "8.3 lb/gal"))
        .isInstanceOf(NotReckonable.class).hasMessage("Grout cannot weigh less than water.");
    assertThatThrownBy(() -> reckon(GroutVolume.RECKONING, "hole", "4 in", "casing", "4.5 in", "from", "0 ft", "to", "10 ft"))
        .isInstanceOf(NotReckonable.class);
    assertThatThrownBy(() -> reckon(FeetPerBag.RECKONING, "hole", "4.5 in", "casing", "4.5 in")).isInstanceOf(NotReckonable.class);
  }

  private static Outcome reckon(Reckoning reckoning, String... namesAndTexts) {
    return reckoning.of(Inputs.of(Body.of(namesAndTexts)));
  }
}
