package steening.stage.seal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.job.JobInSteps;
import steening.journal.Body;
import steening.language.Language;
import steening.language.Reader;
import steening.language.UnitSystem;
import steening.quantity.Unit;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;

class CasingLoadTest {
  private static final Reader SPANISH = new Reader(Language.SPANISH, UnitSystem.METRIC);

  /** Own scenario: 70 ft of 15.65-lb cement on SDR 21. */
  private static final JobInSteps SEVENTY = JobInSteps.nothing()
      .then("plan", "hole-diameter", "7.875 in", "hole-depth", "100 ft", "casing-outside", "4.5 in", "casing-wall",
          "0.2143 in", "stick-up", "1.5 ft", "screen-top", "85 ft", "screen-bottom", "95 ft", "sump", "2 ft",
          "slot", "20 slot", "pack-top", "70 ft", "grout-top", "0 ft", "rate", "12 gpm");
  private static final JobInSteps CEMENT =
      SEVENTY.then("grout-mix", "material", "cement", "solids", "94 lb", "water", "5.2 gal");

  /** By hand: 0.05195 × 15.65 × 70 = 56.9, × 7.31 = 26.6; 111.3 psi × 0.861 at 99 °F / 2 = 47.9. */
  @Test
  void asksToFillTheCasingBeforePumping() {
    Finding fill = CEMENT.finding("seal.fill-first").orElseThrow();
    assertThat(fill.text().shownTo(Reader.US_ENGLISH)).isEqualTo(
        "70.00 ft of this grout on the casing: empty inside 56.9 psi, where 47.9 psi is allowed; filled with water"
            + " 26.6 psi.");
    assertThat(fill.next().orElseThrow().shownTo(SPANISH)).startsWith("Llene el ademe");
    assertThat(ready(CEMENT, "water", "no").finding("seal.fill-first")).isEmpty();
    assertThat(CEMENT.then("grout-batch", "bags", "2", "water", "10.4 gal").finding("seal.fill-first")).isEmpty();
  }

  @Test
  void stopsAnEmptyCasing() {
    Finding collapse = ready(CEMENT, "empty", "chained").finding("seal.collapse").orElseThrow();
    assertThat(collapse.weight()).isEqualTo(Weight.STOP);
    assertThat(collapse.next().orElseThrow().shownTo(Reader.US_ENGLISH))
        .isEqualTo("Fill the casing with water before pumping: that leaves 26.6 psi.");
    assertThat(ready(CEMENT, "water", "chained").finding("seal.collapse")).isEmpty();
  }

  /** By hand: 70 ft at 5.5 lb/ft. */
  @Test
  void saysWhatHoldsItAndIsSilentOnceItIsHeld() {
    Finding floats = ready(CEMENT, "water", "no").finding("seal.uplift").orElseThrow();
    assertThat(floats.working().orElseThrow().quantity("uplift").in(Unit.POUND)).isCloseTo(385, within(5.0));
    assertThat(floats.next().orElseThrow().shownTo(Reader.US_ENGLISH)).contains("lb and more on it").contains("lb/gal");
    assertThat(floats.text().shownTo(SPANISH)).contains("lleno de agua");
    assertThat(ready(CEMENT, "water", "chained").finding("seal.uplift")).isEmpty();
    assertThat(ready(CEMENT, "water", "weighted").finding("seal.uplift")).isEmpty();
    JobInSteps heavy = CEMENT.then("grout-ready", "inside", "mud", "inside-weight", "17 lb/gal", "held", "no");
    assertThat(heavy.finding("seal.uplift")).isEmpty();
  }

  @Test
  void quickCementNeverGoesWithPlastic() {
    JobInSteps quick =
        SEVENTY.then("grout-mix", "material", "rapid-cement", "solids", "94 lb", "water", "5.2 gal");
    assertThat(quick.finding("seal.rapid-cement").orElseThrow().weight()).isEqualTo(Weight.STOP);
    assertThat(CEMENT.finding("seal.rapid-cement")).isEmpty();
  }

  @Test
  void thickCementIsLookedAt() {
    assertThat(CEMENT.finding("seal.heat").orElseThrow().weight()).isEqualTo(Weight.NOTE);
    JobInSteps wide = CEMENT.then("hole", "from", "0 ft", "to", "100 ft", "diameter", "11 in");
    Finding heat = wide.finding("seal.heat").orElseThrow();
    assertThat(heat.weight()).isEqualTo(Weight.LOOK);
    assertThat(heat.text().shownTo(Reader.US_ENGLISH)).contains("up to 3 1/4 in thick");
    // by hand: 20 bags of 8.78 gal in 30 ft, 0.0408 × (D² − 4.5²) × 30 = 175.6, so that D = 12.8 in
    JobInSteps lost = CEMENT.then("grout-batch", "bags", "20", "water", "104 gal", "returns", "no")
        .then("grout-tape", "reading", "40 ft", "from", "ground");
    assertThat(lost.finding("seal.heat").orElseThrow().weight()).isEqualTo(Weight.LOOK);
  }

  @Test
  void leadsFromTheMixToTheCasingToTheBatch() {
    assertThat(CEMENT.stage("seal").nextKind(CEMENT.job().well())).isEqualTo("grout-ready");
    JobInSteps ready = ready(CEMENT, "water", "chained");
    assertThat(ready.stage("seal").nextKind(ready.job().well())).isEqualTo("grout-batch");
    assertThat(SealSheetTest.line(ready, "casing before the grout")).isEqualTo("full of water, held down");
    assertThat(SealSheetTest.line(ready, "lifts")).isEqualTo("1");
  }

  /** By hand: 95.7 / (2 × 0.05195 × 7.31) = 126 ft; 370 ft in three of 123.3 ft; two nights. */
  @Test
  void dividesADeepColumnIntoLifts() {
    Outcome lifts = GroutLifts.RECKONING.of(Inputs.of(Body.of("outside", "4.5 in", "wall", "0.2143 in", "temperature",
        "99 °F", "grout", "15.65 lb/gal", "column", "370 ft")));
    assertThat(lifts.quantity("max-column").in(Unit.FOOT)).isCloseTo(126, within(1.0));
    assertThat(lifts.quantity("lifts").coherent()).isEqualTo(3);
    assertThat(lifts.quantity("each").in(Unit.FOOT)).isCloseTo(123.33, within(0.01));
    assertThat(lifts.quantity("waiting").in(Unit.HOUR)).isCloseTo(48, within(1e-9));
    Outcome light = GroutLifts.RECKONING.of(Inputs.of(Body.of("outside", "4.5 in", "wall", "0.2143 in", "grout",
        "8.3 lb/gal", "column", "370 ft")));
    assertThat(light.answers()).doesNotContainKey("lifts");
  }

  /** Published example (4 in Sch 40, 100 ft, cement outside, water inside): −549 lb. What holds it balances it. */
  @Test
  void theFluidThatHoldsItBalancesIt() {
    Body published = Body.of("outside", "4.5 in", "inside", "3.998 in", "pipe-weight", "2.006 lb/ft", "grout",
        "15.65 lb/gal", "length", "100 ft", "held", "274.25 lb");
    Outcome outcome = UpliftHold.RECKONING.of(Inputs.of(published));
    assertThat(outcome.quantity("uplift").in(Unit.POUND)).isCloseTo(548.5, within(5.0));
    assertThat(outcome.quantity("lift").in(Unit.FOOT)).isCloseTo(50, within(0.5));
    double needed = outcome.quantity("needed-inside").in(Unit.POUND_PER_GALLON);
    Outcome balanced = UpliftHold.RECKONING.of(Inputs.of(published).with(UpliftHold.WITHIN, needed + " lb/gal"));
    assertThat(balanced.quantity("closed").in(Unit.POUND)).isCloseTo(0, within(1e-6));
    assertThat(UpliftHold.RECKONING.of(Inputs.of(published.with("held", "600 lb"))).remarks())
        .extracting(r -> r.shownTo(Reader.US_ENGLISH)).contains("What is on it holds it.");
  }

  @Test
  void nothingIsThrownWhereLittleIsKnown() {
    JobInSteps bare = JobInSteps.nothing().then("grout-ready", "inside", "empty", "held", "no");
    assertThat(bare.findings("seal")).isEqualTo(List.of());
    assertThat(bare.stage("seal").sheet(bare.job().well()).lines()).isEmpty();
  }

  private static JobInSteps ready(JobInSteps job, String inside, String held) {
    return job.then("grout-ready", "inside", inside, "held", held);
  }
}
