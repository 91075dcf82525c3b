package steening.stage.casing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static steening.stage.WorkedExamples.expected;
import static steening.stage.WorkedExamples.input;

import com.eclipsesource.json.JsonObject;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import steening.field.Kind;
import steening.journal.Body;
import steening.language.Language;
import steening.language.Reader;
import steening.language.UnitSystem;
import steening.number.Decimal;
import steening.quantity.Unit;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.stage.WorkedExamples;

class CasingReckoningsTest {
  private static final Reader METRIC_SPANISH = new Reader(Language.SPANISH, UnitSystem.METRIC);

  /** County health department sheet, table of gallons per foot of bore, printed to 0.01 gal (seen). */
  @Test
  void casingVolumeAgreesWithTheCountyTable() {
    for (List<String> row : WorkedExamples.rows("C08b_gallons_per_foot_of_bore.csv")) {
      double inches = Double.parseDouble(row.get(0));
      if (inches > 36) continue; // no casing; the table goes on to dug wells
      Outcome outcome = reckon(CasingVolume.RECKONING, "inside", inches + " in", "length", "100 ft");
      double perFoot = outcome.quantity("per-length").in(Unit.GALLON_PER_FOOT);
      assertThat(perFoot).as(row.get(0)).isCloseTo(Double.parseDouble(row.get(2)), within(0.0005));
      assertThat(perFoot).as(row.get(0))
          .isCloseTo(Double.parseDouble(row.get(1)), within(Math.max(0.01, 0.002 * perFoot)));
    }
  }

  /** Derived: SDR 21 of 4.5 in is 4.071 in inside and holds 0.676 gal/ft; 107.5 ft of it 72.7 gal, by hand. */
  @Test
  void casingVolumeOfTheEverydayWell() {
    Outcome outcome = reckon(CasingVolume.RECKONING, "inside", "4.071 in", "length", "107.5 ft");
    assertThat(outcome.quantity("per-length").in(Unit.GALLON_PER_FOOT)).isCloseTo(0.676, within(0.0005));
    assertThat(outcome.quantity("liquid").in(Unit.GALLON)).isCloseTo(72.7, within(0.05));
    assertThat(outcome.figure("per-length").shownTo(METRIC_SPANISH)).isEqualTo("8.40 L/m");
  }

  /** Arithmetic, computed by a second route. */
  @ParameterizedTest
  @ValueSource(strings = {"W-CASI-18", "W-CASI-19"})
  void stringAgreesWithTheWorkedExamples(String id) {
    JsonObject row = WorkedExamples.named(id);
    String joint = Decimal.upTo(input(row, "overall_stick_ft"), 3) + " ft";
    Outcome outcome = reckon(StringLength.RECKONING,
        "joints", String.join("; ", Collections.nCopies((int) input(row, "full_sticks"), joint)),
        "bell", input(row, "bell_depth_ft") + " ft", "screen", input(row, "screen_ft") + " ft",
        "sump", input(row, "sump_ft") + " ft", "stick-up", input(row, "stickup_ft") + " ft");
    assertThat(outcome.quantity("string").in(Unit.FOOT)).isCloseTo(expected(row, "string_ft"), within(1e-9));
    assertThat(outcome.quantity("bottom").in(Unit.FOOT))
        .isCloseTo(expected(row, "bottom_below_ground_ft"), within(1e-9));
  }

  /** Own scenario, arithmetic checked by hand: 120.00 + 6.50 + 10.00 + 2.00 = 138.50, bottom 137, screen 125 to 135. */
  @Test
  void stringOfTheEverydayWell() {
    Outcome outcome = reckon(StringLength.RECKONING,
        "joints", "19.98 20.02 20.01 19.97 20.03 19.99 ft", "cut-piece", "6.50 ft", "screen", "10 ft", "sump", "2 ft",
        "stick-up", "1.5 ft");
    assertThat(outcome.figure("string").shownTo(Reader.US_ENGLISH)).isEqualTo("138.50 ft");
    assertThat(outcome.figure("bottom").shownTo(Reader.US_ENGLISH)).isEqualTo("137.00 ft");
    assertThat(outcome.figure("screen-top").shownTo(Reader.US_ENGLISH)).isEqualTo("125.00 ft");
    assertThat(outcome.figure("screen-bottom").shownTo(Reader.US_ENGLISH)).isEqualTo("135.00 ft");
  }

  /** Ratings as in {@link steening.pipe.CollapseTest}; differential and margin computed by a second route. */
  @ParameterizedTest
  @ValueSource(strings = {"W-CASI-12", "W-CASI-13", "W-CASI-15", "W-CASI-16"})
  void collapseMarginAgreesWithTheWorkedExamples(String id) {
    JsonObject row = WorkedExamples.named(id);
    Outcome outcome = reckon(CollapseMargin.RECKONING,
        "outside", "4.5 in", "wall", Decimal.fixed(4.5 / input(row, "DR"), 9) + " in",
        "temperature", input(row, "wall_temp_F") + " °F", "around", input(row, "grout_lb_gal") + " lb/gal",
        "within", input(row, "inside_lb_gal") + " lb/gal", "column", input(row, "column_ft") + " ft");
    assertThat(outcome.quantity("rating-a").in(Unit.PSI))
        .isCloseTo(expected(row, "rating_A_psi"), withinPercentage(0.1));
    assertThat(outcome.quantity("rating-b").in(Unit.PSI))
        .isCloseTo(expected(row, "rating_B_psi"), withinPercentage(0.1));
    assertThat(outcome.quantity("differential").in(Unit.PSI))
        .isCloseTo(expected(row, "differential_psi"), withinPercentage(0.1));
    assertThat(outcome.quantity("safety").coherent()).isCloseTo(expected(row, "safety_B"), withinPercentage(0.1));
    assertThat(outcome.quantity("max-column").in(Unit.FOOT))
        .isCloseTo(expected(row, "max_column_ft_at_SF2_B"), withinPercentage(0.1));
  }

  /**
   * Geometry with published pipe weights, computed by a second route; "always anchored when grouting" is printed
   * (seen).
   */
  @ParameterizedTest
  @ValueSource(strings = {"W-CASI-01", "W-CASI-02", "W-CASI-03", "W-CASI-06", "W-CASI-07"})
  void aClosedStringFloatsWhereTheWorkedExamplesSay(String id) {
    JsonObject row = WorkedExamples.named(id);
    Outcome outcome = reckon(StringWeight.RECKONING,
        "outside", input(row, "od_in") + " in", "inside", input(row, "id_in")
            + " in", "pipe-weight", input(row, "weight_lb_ft") + " lb/ft",
        "length", input(row, "length_ft") + " ft", "around", input(row, "outside_lb_gal") + " lb/gal",
        "within", input(row, "inside_lb_gal") + " lb/gal");
    double expected = expected(row, "net_down_lb");
    assertThat(outcome.quantity("closed").in(Unit.POUND)).isCloseTo(expected, within(0.1));
    assertThat(outcome.remarks()).hasSize(expected < 0 ? 1 : 0);
  }

  /** Specific gravity 1.40 ± 0.02: a manufacturer's property table (seen). */
  @ParameterizedTest
  @ValueSource(strings = {"W-CASI-09", "W-CASI-10"})
  void anOpenStringHangsLightly(String id) {
    JsonObject row = WorkedExamples.named(id);
    Outcome outcome = reckon(StringWeight.RECKONING,
        "outside", "4.5 in", "inside", "4 in", "pipe-weight", input(row, "weight_lb_ft") + " lb/ft",
        "length", input(row, "length_ft") + " ft", "around", input(row, "fluid_lb_gal") + " lb/gal");
    assertThat(outcome.quantity("in-air").in(Unit.POUND)).isCloseTo(expected(row, "air_lb"), withinPercentage(0.01));
    assertThat(outcome.quantity("open").in(Unit.POUND))
        .isCloseTo(expected(row, "suspended_lb"), withinPercentage(0.01));
  }

  /** Published 4-inch Schedule 40: 2.01 lb/ft at an average inside of 3.998 in (seen, ± 8 %). */
  @Test
  void theWeightFollowsFromTheDiametersWhereNoneIsPrinted() {
    Outcome outcome = reckon(StringWeight.RECKONING,
        "outside", "4.5 in", "inside", "3.998 in", "length", "100 ft", "around", "8.34 lb/gal");
    assertThat(outcome.quantity("in-air").in(Unit.POUND)).isCloseTo(201, withinPercentage(2));
  }

  /** TI 814-01, Montana and Louisiana: 0.1 ft/s (seen). */
  @ParameterizedTest
  @ValueSource(strings = {"W-SCRE-01", "W-SCRE-03", "W-SCRE-04"})
  void entranceVelocityAgreesWithTheWorkedExamples(String id) {
    JsonObject row = WorkedExamples.named(id);
    Outcome outcome = reckon(EntranceVelocity.RECKONING,
        "open-area", input(row, "open_area_in2_ft") + " in2/ft", "length", input(row, "length_ft")
            + " ft", "rate", input(row, "Q_gpm") + " gpm");
    assertThat(outcome.quantity("velocity").in(Unit.FOOT_PER_SECOND))
        .isCloseTo(expected(row, "velocity_ft_s"), within(0.00006));
    assertThat(outcome.quantity("capacity").in(Unit.GALLON_PER_MINUTE))
        .isCloseTo(expected(row, "capacity_gpm"), withinPercentage(0.02));
    assertThat(outcome.quantity("capacity-half-blocked").in(Unit.GALLON_PER_MINUTE))
        .isCloseTo(expected(row, "capacity_half_blocked_gpm"), withinPercentage(0.02));
    assertThat(outcome.quantity("length-needed").in(Unit.FOOT))
        .isCloseTo(expected(row, "length_needed_ft"), withinPercentage(0.02));
  }

  /** Water and Wastewater Engineering (Davis), page 4-38: 9.16 m is printed (seen). */
  @Test
  void screenLengthAgreesWithTheTextbook() {
    Outcome outcome = reckon(EntranceVelocity.RECKONING,
        "rate", "32 m3/h", "open-area", "0.097 m2/m", "limit", "0.010 m/s", "length", "10 m");
    assertThat(outcome.quantity("length-needed").in(Unit.METRE)).isCloseTo(9.16, within(0.005));
  }

  /** Geometry; the wire width is remembered. */
  @ParameterizedTest
  @ValueSource(strings = {"W-SCRE-07", "W-SCRE-09"})
  void openAreaOfAContinuousSlot(String id) {
    JsonObject row = WorkedExamples.named(id);
    Outcome outcome = reckon(EntranceVelocity.RECKONING,
        "rate", "12 gpm", "length", "10 ft", "outside", input(row, "od_in") + " in",
        "slot", (int) input(row, "slot_thousandths") + " slot", "wire", input(row, "wire_width_in") + " in");
    assertThat(outcome.quantity("open-area").in(Unit.SQUARE_INCH_PER_FOOT))
        .isCloseTo(expected(row, "open_area_in2_ft"), withinPercentage(0.01));
    assertThat(outcome.quantity("open-share").in(Unit.PERCENT))
        .isCloseTo(expected(row, "open_pct"), withinPercentage(0.01));
  }

  /** Own scenario, by hand: 5 % of a 4.5-in wall is 0.589 ft² in 10 ft; 12 gpm enter at 0.045 ft/s. */
  @Test
  void entranceVelocityOfTheEverydayWell() {
    Outcome outcome =
        reckon(EntranceVelocity.RECKONING, "rate", "12 gpm", "length", "10 ft", "open-area", "8.48 in2/ft");
    assertThat(outcome.figure("velocity").shownTo(Reader.US_ENGLISH)).isEqualTo("0.045 ft/s");
  }

  @Test
  void withoutOpenAreaOrSlotItSaysWhatItNeeds() {
    assertThatThrownBy(() -> reckon(EntranceVelocity.RECKONING, "rate", "12 gpm", "length", "10 ft"))
        .isInstanceOf(NotReckonable.class).hasMessageStartingWith("Give the open area, or the outside diameter");
  }

  private static Outcome reckon(Reckoning reckoning, String... namesAndTexts) {
    Body typed = Body.of(namesAndTexts);
    assertThat(new Kind(reckoning.name(), 1, reckoning.title(), reckoning.inputs()).faults(typed)).isEmpty();
    return reckoning.of(Inputs.of(typed));
  }
}
