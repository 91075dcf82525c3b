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
import steening.reckoning.Working;
import steening.stage.WorkedExamples;
import steening.stage.drilling.fluid.PitVolume;
import steening.stage.drilling.fluid.UpHoleVelocity;
import steening.stage.drilling.hole.HoleVolume;
import steening.stage.drilling.hole.RodTally;
import steening.stage.drilling.log.CuttingsLag;

class DrillingReckoningsTest {
  private static final Reader METRIC_SPANISH = new Reader(Language.SPANISH, UnitSystem.METRIC);

  /** Formulas handbook: 530 gpm in 12.25 in round 4.5 in is printed as 100 ft/min (seen); the sister cases computed. */
  @ParameterizedTest
  @ValueSource(strings = {"W-DRIL-01", "W-DRIL-03", "W-DRIL-04", "W-DRIL-06"})
  void upHoleVelocityAgreesWithTheHandbook(String id) {
    JsonObject row = WorkedExamples.named(id);
    Outcome outcome = reckon(UpHoleVelocity.RECKONING,
        "rate", input(row, "Q_gpm") + " gpm", "hole", input(row, "hole_in") + " in",
        "rod", input(row, "rod_od_in") + " in", "wanted", "120 ft/min");
    assertThat(outcome.quantity("velocity").in(Unit.FOOT_PER_MINUTE))
        .isCloseTo(expected(row, "av_ft_min"), withinPercentage(0.02));
    assertThat(outcome.quantity("rate-needed").in(Unit.GALLON_PER_MINUTE))
        .isCloseTo(expected(row, "Q_for_120_gpm"), withinPercentage(0.02));
  }

  /** The handbook's factor is 24.51 (seen); it is typed nowhere. */
  @Test
  void theHandbookFactorComesOutOfTheUnits() {
    Working working = reckon(UpHoleVelocity.RECKONING, "rate", "110 gpm", "hole", "7 7/8 in", "rod", "2.875 in")
        .working(Reader.US_ENGLISH);
    Working.Line line = working.lines().stream().filter(l -> l.symbol().equals("v")).findFirst().orElseThrow();
    assertThat(line.formula()).startsWith("24.5098").endsWith(" × Q / (D² − d²)");
    // own scenario, by hand: 24.51 × 110 / (62.02 − 8.27)
    assertThat(Double.parseDouble(line.value())).isCloseTo(50.16, within(0.01));
    assertThat(line.unit()).isEqualTo("ft/min");
  }

  /** Definitions, computed by a second route: lag, way down, once around, depth error at 30 ft/h. */
  @ParameterizedTest
  @ValueSource(strings = {"W-DRIL-07", "W-DRIL-09", "W-DRIL-10"})
  void lagAgreesWithTheWorkedExamples(String id) {
    JsonObject row = WorkedExamples.named(id);
    Outcome outcome = reckon(CuttingsLag.RECKONING,
        "depth", input(row, "depth_ft") + " ft", "rate", input(row, "Q_gpm") + " gpm", "hole", input(row, "hole_in")
            + " in",
        "rod", input(row, "rod_od_in") + " in", "rod-inside", input(row, "rod_id_in") + " in",
        "slip", input(row, "slip_ft_min") + " ft/min", "penetration", "30 ft/h");
    assertThat(outcome.quantity("lag").in(Unit.MINUTE)).isCloseTo(expected(row, "lag_min"), withinPercentage(0.1));
    assertThat(outcome.quantity("down-time").in(Unit.MINUTE))
        .isCloseTo(expected(row, "down_time_min"), withinPercentage(0.1));
    assertThat(outcome.quantity("cycle").in(Unit.MINUTE)).isCloseTo(expected(row, "cycle_min"), withinPercentage(0.1));
    assertThat(outcome.quantity("depth-error").in(Unit.FOOT))
        .isCloseTo(expected(row, "depth_error_at_30ft_per_h_ft"), withinPercentage(0.1));
  }

  /** Own scenario, arithmetic checked by hand: 130 ft at 50 ft/min. */
  @Test
  void lagOfTheEverydayWell() {
    Outcome outcome =
        reckon(CuttingsLag.RECKONING, "depth", "130 ft", "rate", "110 gpm", "hole", "7 7/8 in", "rod", "2.875 in");
    assertThat(outcome.quantity("lag").in(Unit.MINUTE)).isCloseTo(2.6, within(0.05));
    assertThat(outcome.answers()).containsOnlyKeys("lag");
  }

  @Test
  void cuttingsThatSettleFasterThanTheMudRisesDoNotComeUp() {
    assertThatThrownBy(() -> reckon(CuttingsLag.RECKONING,
            "depth", "130 ft", "rate", "110 gpm", "hole", "7 7/8 in", "rod", "2.875 in", "slip", "60 ft/min"))
        .isInstanceOf(NotReckonable.class).hasMessageContaining("do not come up");
  }

  @Test
  void rodsWiderThanTheHoleAreRefused() {
    assertThatThrownBy(() -> reckon(UpHoleVelocity.RECKONING, "rate", "110 gpm", "hole", "4 in", "rod", "4.5 in"))
        .isInstanceOf(NotReckonable.class).hasMessageContaining("wider than the rods");
  }

  /** Trade article quoting a handbook: 7 7/8 in and 400 ft, "at least 2,000 gallons" of pit (seen). */
  @ParameterizedTest
  @ValueSource(strings = {"W-DRIL-19", "W-DRIL-21"})
  void pitAgreesWithTheWorkedExamples(String id) {
    JsonObject row = WorkedExamples.named(id);
    Outcome outcome = reckon(PitVolume.RECKONING,
        "hole", input(row, "hole_in") + " in", "depth", input(row, "depth_ft") + " ft",
        "pit-factor", Double.toString(input(row, "pit_factor")));
    assertThat(outcome.quantity("hole").in(Unit.GALLON)).isCloseTo(expected(row, "hole_gal"), withinPercentage(0.02));
    assertThat(outcome.quantity("pit").in(Unit.GALLON)).isCloseTo(expected(row, "pit_gal"), withinPercentage(0.02));
    assertThat(outcome.quantity("bentonite").in(Unit.POUND))
        .isCloseTo(expected(row, "bentonite_lb_at_20_per_100gal"), withinPercentage(0.02));
  }

  /** Constants of the trade, derived: 7 7/8 in holds 0.3382 ft³/ft, 2.530 gal/ft. */
  @Test
  void holeVolumePerFoot() {
    Outcome outcome = reckon(HoleVolume.RECKONING, "hole", "7 7/8 in", "depth", "100 ft");
    assertThat(outcome.quantity("volume").in(Unit.CUBIC_FOOT)).isCloseTo(33.82, within(0.01));
    assertThat(outcome.quantity("liquid").in(Unit.GALLON)).isCloseTo(253.0, within(0.1));
  }

  /** By hand: 57 ft and 79 ft of 0.33824 ft³/ft, 6 ft of 0.68417 ft³/ft in between. */
  @Test
  void aWashoutIsAReachOfItsOwn() {
    Outcome outcome =
        reckon(HoleVolume.RECKONING, "hole", "7 7/8 in to 57 ft; 11.2 in to 63 ft; 7 7/8 in", "depth", "142 ft");
    assertThat(outcome.quantity("volume").in(Unit.CUBIC_FOOT)).isCloseTo(136 * 0.338242 + 6 * 0.684169, within(0.001));
  }

  /** Arithmetic, computed by a second route. */
  @ParameterizedTest
  @ValueSource(strings = {"W-DRIL-22", "W-DRIL-24"})
  void rodTallyAgreesWithTheWorkedExamples(String id) {
    JsonObject row = WorkedExamples.named(id);
    Outcome outcome = reckon(RodTally.RECKONING,
        "rods", Integer.toString((int) input(row, "rods")), "length", input(row, "rod_ft")
            + " ft", "subs", input(row, "subs_ft") + " ft",
        "bit-length", input(row, "bit_ft") + " ft", "above-ground", input(row, "top_of_string_above_ground_ft")
            + " ft");
    assertThat(outcome.quantity("depth").in(Unit.FOOT)).isCloseTo(expected(row, "depth_ft"), within(1e-9));
  }

  @Test
  void workingsAreShownInMetresAndSpanish() {
    Outcome outcome = reckon(UpHoleVelocity.RECKONING, "rate", "7 L/s", "hole", "200 mm", "rod", "73 mm");
    // by hand: 0.007 m³/s over π/4 (0.2² − 0.073²) m² is 0.2571 m/s
    assertThat(outcome.figure("velocity").shownTo(METRIC_SPANISH)).isEqualTo("15.4 m/min");
    assertThat(outcome.term("velocity").label().shownTo(METRIC_SPANISH)).isEqualTo("velocidad anular");
  }

  private static Outcome reckon(Reckoning reckoning, String... namesAndTexts) {
    return reckoning.of(Inputs.of(taken(reckoning, namesAndTexts)));
  }

  /** As a form would take it, so that the bounds are tried too. */
  private static Body taken(Reckoning reckoning, String... namesAndTexts) {
    Body typed = Body.of(namesAndTexts);
    Kind form = new Kind(reckoning.name(), 1, reckoning.title(), reckoning.inputs());
    assertThat(form.faults(typed)).isEmpty();
    return typed;
  }
}
