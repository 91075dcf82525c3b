package steening.stage.drilling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.job.JobInSteps;
import steening.journal.Body;
import steening.language.Language;
import steening.language.Reader;
import steening.language.UnitSystem;
import steening.quantity.Unit;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.stage.EverydayWell;
import steening.stage.drilling.log.CuttingsSlip;
import steening.stage.drilling.log.Penetration;

/** Cuttings by size and by the clock, rods misdated, mud that cannot be. Own scenarios, arithmetic checked by hand. */
class CuttingsTest {
  private static final Reader US = Reader.US_ENGLISH;
  private static final Reader METRIC_SPANISH = new Reader(Language.SPANISH, UnitSystem.METRIC);

  /**
   * By hand, funnel 38 and 8.8 lb/gal: ν = 13 mm²/s, R = (2.65 × 8.345 − 8.8) / 8.8 = 1.513; 1 mm: 1.4838e-5 / (2.34e-4
   * + 1.055e-4) = 0.0437 m/s = 8.60 ft/min; 10 mm: 1.4838e-3 / (2.34e-4 + 3.336e-3) = 0.4156 m/s = 81.8 ft/min.
   */
  @ParameterizedTest
  @CsvSource({"1 mm, 8.60, 41.6", "10 mm, 81.8, 0"})
  void cuttingsFallInMud(String size, double slip, double rising) {
    Outcome outcome = reckon(CuttingsSlip.RECKONING, "size", size, "funnel", "38", "weight", "8.8 lb/gal",
        "rate", "110 gpm", "hole", "7.875 in", "rod", "2.875 in");
    assertThat(outcome.quantity("viscosity").in(Unit.SQUARE_MILLIMETRE_PER_SECOND)).isCloseTo(13, within(1e-9));
    assertThat(outcome.quantity("slip").in(Unit.FOOT_PER_MINUTE)).isCloseTo(slip, withinPercentage(0.3));
    assertThat(outcome.answers().containsKey("rising")).isEqualTo(rising > 0);
    if (rising > 0) {
      assertThat(outcome.quantity("rising").in(Unit.FOOT_PER_MINUTE)).isCloseTo(rising, withinPercentage(0.5));
    } else {
      assertThat(outcome.remarks()).extracting(r -> r.shownTo(US)).anyMatch(r -> r.contains("do not come up"));
    }
  }

  @Test
  void aFunnelThinnerThanWaterOrAMudAsDenseAsStoneIsSaid() {
    assertThatThrownBy(() -> reckon(CuttingsSlip.RECKONING, "size", "1 mm", "funnel", "25"))
        .isInstanceOf(NotReckonable.class).hasMessageContaining("26 s");
    assertThatThrownBy(() -> reckon(CuttingsSlip.RECKONING, "size", "1 mm", "weight", "22 lb/gal", "specific-gravity",
        "2.6")).isInstanceOf(NotReckonable.class);
  }

  @Test
  void coarseCuttingsThatSlowMudDoesNotLift() {
    JobInSteps job = EverydayWell.rods().then("mud", "weight", "8.8 lb/gal", "funnel", "38 s/qt");
    assertThat(codes(job.then("cuttings", "bit-depth", "130 ft", "size", "1 mm")))
        .doesNotContain("drilling.cuttings-not-lifted");
    Finding finding = job.then("cuttings", "bit-depth", "130 ft", "size", "10 mm")
        .finding("drilling.cuttings-not-lifted").orElseThrow();
    assertThat(finding.weight()).isEqualTo(Weight.LOOK);
    assertThat(finding.text().shownTo(US))
        .isEqualTo("Cuttings of 10 mm fall at up to 82 ft/min in this mud, which rises at 50 ft/min.");
    assertThat(finding.text().shownTo(METRIC_SPANISH)).contains("24.9 m/min").contains("15.3 m/min");
  }

  /** By hand: 20 ft in 10 min are 120 ft/h; 140 ft at 50.2 ft/min lag 2.79 min, in which 5.6 ft are drilled. */
  @Test
  void theRodsTellThePenetration() {
    Outcome rate = reckon(Penetration.RECKONING, "drilled", "20 ft", "minutes", "10 min");
    assertThat(rate.quantity("rate").in(Unit.FOOT_PER_HOUR)).isCloseTo(120, within(1e-9));
    assertThat(EverydayWell.rods().expectations("drilling").stream()
        .filter(e -> e.what().shownTo(US).startsWith("cuttings caught with the bit at 140.00 ft"))
        .map(e -> e.figure().shownTo(US)).toList()).containsExactly("134.42 ft");
    JobInSteps caught = EverydayWell.rods().then("cuttings", "bit-depth", "140 ft", "description", "sand");
    assertThat(caught.stage("drilling").sheet(caught.job().well()).lines())
        .anyMatch(l -> l.value().shownTo(US).equals("134.42 ft"));
  }

  /** Five rods at ten minutes each, one in two: the log shows clay all the way. */
  @Test
  void aFastRodInClayMayBeAMissedSand() {
    JobInSteps slow = EverydayWell.setUp();
    for (int rod = 1; rod <= 6; rod++) {
      slow = slow.then("rod", "number", "" + rod, "length", "20 ft", "depth", 20 * rod + " ft");
      boolean fast = rod == 3;
      if (!fast) slow = slow.then("mud", "weight", "8.8 lb/gal").then("mud", "weight", "8.8 lb/gal");
    }
    JobInSteps clay = slow.then("log", "from", "0 ft", "to", "120 ft", "material", "clay");
    Finding finding = clay.finding("drilling.penetration-break").orElseThrow();
    assertThat(finding.text().shownTo(US)).isEqualTo("From 60.00 ft to 80.00 ft the bit went at 120 ft/h, elsewhere at"
        + " about 40 ft/h; the log shows no change there.");
    assertThat(finding.weight()).isEqualTo(Weight.NOTE);
    JobInSteps changed = slow.then("log", "from", "0 ft", "to", "70 ft", "material", "clay")
        .then("log", "from", "70 ft", "to", "120 ft", "material", "silt");
    assertThat(codes(changed)).doesNotContain("drilling.penetration-break");
    assertThat(codes(slow)).doesNotContain("drilling.penetration-break");
  }

  @Test
  void aRodDatedBeforeTheOneItStandsOn() {
    JobInSteps job = EverydayWell.setUp()
        .then("rod", "number", "1", "length", "20 ft", "depth", "20 ft")
        .then("rod", "number", "3", "length", "20 ft", "depth", "60 ft")
        .then("rod", "number", "2", "length", "20 ft", "depth", "40 ft");
    assertThat(codes(job)).containsExactly("drilling.up-hole-velocity", "drilling.rod-time");
    assertThat(job.finding("drilling.rod-time").orElseThrow().text().shownTo(US))
        .isEqualTo("Rod 3 to 60.00 ft is dated before rod 2 to 40.00 ft, which goes less deep.");
  }

  @Test
  void mudLighterThanWaterOrTooSandyForTheScreen() {
    Finding light = EverydayWell.rods().then("mud", "weight", "8.1 lb/gal").finding("drilling.mud-below-water")
        .orElseThrow();
    assertThat(light.text().shownTo(US))
        .isEqualTo("The mud is entered as 8.10 lb/gal; water alone weighs 8.34 lb/gal.");
    assertThat(codes(EverydayWell.rods().then("mud", "weight", "8.3 lb/gal")))
        .doesNotContain("drilling.mud-below-water");
    JobInSteps sandy = EverydayWell.drilled().then("mud", "weight", "8.8 lb/gal", "funnel", "38 s/qt", "sand", "5 %");
    assertThat(sandy.finding("drilling.mud-sandy").orElseThrow().next().orElseThrow().shownTo(US))
        .startsWith("Above 4.0 % it settles on the screen");
    assertThat(EverydayWell.rods().then("mud", "weight", "8.8 lb/gal", "sand", "5 %").finding("drilling.mud-sandy")
        .orElseThrow().next().orElseThrow().shownTo(US)).startsWith("Shovel out the pit");
  }

  private static List<String> codes(JobInSteps job) {
    return job.findings("drilling").stream().map(Finding::code).toList();
  }

  private static Outcome reckon(Reckoning reckoning, String... texts) {
    return reckoning.of(Inputs.of(Body.of(texts)));
  }
}
