package steening.stage.sample;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import steening.field.Hands;
import steening.field.Reading;
import steening.journal.Body;
import steening.language.Reader;
import steening.quantity.Figure;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;

class WaterReckoningsTest {
  /**
   * Sample problems of a pool operators' course (seen). It adds three factors, each printed to a tenth, and takes the
   * dissolved solids as those of a pool; 500 mg/L is put in here. So 0.15 is what its print leaves open.
   */
  @ParameterizedTest
  @CsvSource({"7.0, 76, 200, 50, -0.9", "7.6, 84, 300, 75, 0.2", "8.0, 94, 400, 150, 1.1"})
  void agreesWithThePrintedIndices(String ph, String warmth, String calcium, String alkalinity, double printed) {
    assertThat(index(ph, warmth + " °F", "500 mg/L", calcium, alkalinity)).isCloseTo(printed, within(0.15));
  }

  /** A worked value from memory: pHs 8.2, index -0.7 at 25 °C; 7.2 and +0.3 at 82 °C. */
  @Test
  void agreesWithARememberedExampleColdAndHot() {
    assertThat(index("7.5", "25 °C", "320 mg/L", "150", "34")).isCloseTo(-0.7, within(0.05));
    assertThat(index("7.5", "82 °C", "320 mg/L", "150", "34")).isCloseTo(0.3, within(0.05));
  }

  /** By hand: 2.497 × 48 + 4.118 × 12 = 169.27 mg/L; / 17.118 = 9.89 grains. */
  @Test
  void addsCalciumAndMagnesium() {
    Outcome outcome = hardness(Body.of("calcium", "48 mg/L", "magnesium", "12 mg/L"));
    assertThat(outcome.quantity("hardness").in(Unit.MILLIGRAM_PER_LITRE)).isCloseTo(169.27, within(0.01));
    assertThat(outcome.quantity("grains").in(Unit.ONE)).isCloseTo(9.89, within(0.005));
    assertThat(outcome.shown("class").orElseThrow().shownTo(Hands.SPANISH)).isEqualTo("dura");
  }

  /** Weights of the atoms (memory): calcium carbonate 100.087, calcium 40.078, magnesium 24.305. */
  @Test
  void weighsByTheAtoms() {
    assertThat(hardness(Body.of("calcium", "40.078 mg/L", "magnesium", "0.1 mg/L"))
        .quantity("hardness").in(Unit.MILLIGRAM_PER_LITRE)).isCloseTo(100.087 + 0.1 * 100.087 / 24.305, within(0.02));
  }

  /** Classes of the US Geological Survey (seen): soft 0 to 60, to 120, to 180. */
  @ParameterizedTest
  @CsvSource({"60, soft", "61, moderately hard", "120, moderately hard", "121, hard", "180, hard", "181, very hard"})
  void namesTheClasses(String milligrams, String name) {
    Outcome outcome = hardness(Body.of("hardness", milligrams + " mg/L"));
    assertThat(outcome.shown("class").orElseThrow().shownTo(Reader.US_ENGLISH)).isEqualTo(name);
  }

  @Test
  void readsHardnessInGrains() {
    Outcome outcome = hardness(Body.of("hardness", "10 gpg"));
    assertThat(outcome.quantity("hardness").in(Unit.MILLIGRAM_PER_LITRE)).isCloseTo(171.18, within(0.01));
    assertThatThrownBy(() -> hardness(Body.of("calcium", "48 mg/L"))).isInstanceOf(NotReckonable.class);
  }

  /** By hand: 0.9 down to 0.3 is two thirds; 25 µg/L down to 10 is 60 %. */
  @Test
  void saysWhatATreatmentMustTakeOut() {
    assertThat(share("0.9 mg/L", "0.3 mg/L")).isCloseTo(66.667, within(0.001));
    assertThat(share("25 ug/L", "10 ppb")).isCloseTo(60, within(0.001));
    assertThatThrownBy(() -> share("0.3 mg/L", "0.3 mg/L")).isInstanceOf(NotReckonable.class)
        .hasMessageContaining("nothing to take out");
  }

  @Test
  void showsTracesByTheirFigures() {
    Reading reading = ShareToRemove.FOUND.read("15 ug/L", Reader.US_ENGLISH, false);
    assertThat(reading).isInstanceOf(Reading.Taken.class);
    Figure found = new Figure(ShareToRemove.FOUND.in(Body.of("found", "15 ug/L")).orElseThrow(), Scale.TRACE);
    assertThat(found.shownTo(Reader.US_ENGLISH)).isEqualTo("0.015 mg/L");
  }

  private static double share(String found, String limit) {
    return ShareToRemove.RECKONING.of(Inputs.of(Body.of("found", found, "limit", limit))).quantity("share")
        .in(Unit.PERCENT);
  }

  private static Outcome hardness(Body typed) {
    return Hardness.RECKONING.of(Inputs.of(typed));
  }

  private static double index(String ph, String warmth, String solids, String calcium, String alkalinity) {
    return LangelierIndex.RECKONING.of(Inputs.of(Body.of(
        "ph", ph, "water-temperature", warmth, "dissolved-solids", solids, "calcium-hardness", calcium + " mg/L",
        "alkalinity", alkalinity + " mg/L"))).quantity("index").in(Unit.ONE);
  }
}
