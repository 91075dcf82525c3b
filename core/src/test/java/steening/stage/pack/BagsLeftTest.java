package steening.stage.pack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.job.JobInSteps;
import steening.language.Language;
import steening.language.Reader;
import steening.language.UnitSystem;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;

/** Own scenario, arithmetic by hand: how many more bags, by what the hole took so far. */
class BagsLeftTest {
  private static final JobInSteps LOOSE = poured(EverydayPackTest.DRILLED, "138.7 ft", "133.7 ft", "128.8 ft");

  /**
   * 1.5 ft³ in 6.585 ft of a 7.875 in hole round 4.5 in pipe: ratio 1.5 / (0.22779 × 6.585) = 1, so R lies between 1
   * and the usual 1.14; 10 ft more hold 2.2779 ft³, that is 4.556 bags of half a cubic foot.
   */
  @Test
  void weighsTheUsualAgainstWhatWasFound() {
    Outcome left = PackLeft.RECKONING.of(Inputs.none()
        .with(PackLeft.HOLE, "7.875 in").with(PackLeft.CASING, "4.5 in").with(PackLeft.BOTTOM, "100 ft")
        .with(PackLeft.BAGS, "3").with(PackLeft.FOUND, "93.415 ft").with(PackLeft.TO, "83.415 ft"));
    assertThat(left.quantity("as-drilled").coherent()).isCloseTo(4.556, within(0.001));
    // p = log(1.14/√(1 + (0.12/1.14)²)) = 0.05451, a = 0.4342945 log(1.01108) = 0.0020784
    // c = 0.32 × 0.07 = 0.0224, so 0.03; one tape, since the bottom was not sounded:
    // v = 0.1886117 (0.0045/6.585 + (0.15/6.585)²) = 0.0002268; w = a / (a + v) = 0.9016
    // q = 0.05451 (1 − w) = 0.005362; 10^q = 1.01242
    assertThat(left.quantity("ratio").coherent()).isCloseTo(1.0124, within(0.0002));
    // g = w v = 0.0002045; f = g + 0.1886117 (0.00045 + 0.000225 + 2 × 0.0225 × 0.9016 / (6.585 × 10)) = 0.0004480
    // mean 4.556 × 1.0124 × 10^(1.151293 f) = 4.618; x = 0.021166, most 4.613 × 10^(1.396815 x) = 4.938
    assertThat(left.quantity("mean").coherent()).isCloseTo(4.618, within(0.002));
    assertThat(left.quantity("most").coherent()).isCloseTo(4.938, within(0.002));
    assertThat(left.quantity("bags").coherent()).isEqualTo(5);
    assertThat(left.quantity("high-80").coherent()).isEqualTo(left.quantity("most").coherent());
    assertThat(left.quantity("low-90").coherent()).isLessThan(left.quantity("low-50").coherent());
  }

  @Test
  void saysBeforeThePourWhatTheGroundUsuallyTakes() {
    assertThat(PackSheetTest.line(EverydayPackTest.DRILLED, "bags still needed, by what this hole took"))
        .isEqualTo("15.3; nine times in ten no more than 18 bags");
    assertThat(EverydayPackTest.DRILLED.findings("pack")).isEmpty();
  }

  @Test
  void saysWhenTheTruckMayRunShort() {
    Finding truck = LOOSE.finding("pack.truck").orElseThrow();
    assertThat(truck.weight()).isEqualTo(Weight.LOOK);
    assertThat(truck.text().shownTo(Reader.US_ENGLISH)).endsWith("By the plan's load 8 bags should be on the truck.");
    assertThat(truck.text().shownTo(new Reader(Language.SPANISH, UnitSystem.METRIC)))
        .contains("nueve de diez veces no más de");
    assertThat(truck.entries()).contains("pack-bags-3", "pack-tape-8");
    assertThat(PackSheetTest.line(LOOSE, "on the truck, by the plan's load")).isEqualTo("8 bags");
  }

  @Test
  void aBridgeTeachesNothingOfTheHole() {
    assertThat(Standing.last(Pouring.of(BridgedPackTest.NINE.job().well()).orElseThrow()).orElseThrow().bags())
        .isEqualTo(6);
    assertThat(Standing.last(Pouring.of(BridgedPackTest.BROKEN.job().well()).orElseThrow()).orElseThrow().bags())
        .isEqualTo(9);
  }

  /** A tape before the first bag that goes a hair below the drilled depth leaves the pack its expectations. */
  @Test
  void aBottomSoundedAHairTooDeepIsTheBottom() {
    JobInSteps deep = EverydayPackTest.DRILLED.then("pack-tape", "reading", "142.1 ft", "from", "ground");
    assertThat(deep.expectations("pack").get(0).figure().shownTo(Reader.US_ENGLISH)).isEqualTo("137.57 ft");
  }

  private static JobInSteps poured(JobInSteps job, String... tapes) {
    JobInSteps more = job;
    for (String tape : tapes) {
      more = more.then("pack-bags", "bags", "3").then("pack-tape", "reading", tape, "from", "ground");
    }
    return more;
  }
}
