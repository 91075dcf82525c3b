package steening.stage.seal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import steening.finding.Expectation;
import steening.finding.Finding;
import steening.job.JobInSteps;
import steening.language.Reader;
import steening.quantity.Unit;
import steening.stage.Load;
import steening.stage.Progress;
import steening.well.Fill;

/** Own scenario, arithmetic checked by hand: the everyday well, chips from 115 to 110 ft and grout to the surface. */
class EverydaySealTest {
  static final JobInSteps PLANNED = JobInSteps.nothing()
      .then("plan", "hole-diameter", "7.875 in", "hole-depth", "142 ft", "casing-outside", "4.5 in",
          "casing-wall", "0.214 in", "stick-up", "1.5 ft", "screen-top", "125 ft", "screen-bottom", "135 ft",
          "sump", "2 ft", "slot", "20 slot",
          "pack-top", "115 ft", "chips-top", "110 ft", "grout-top", "0 ft", "rate", "12 gpm");
  static final JobInSteps PACKED = PLANNED
      .then("hole", "from", "0 ft", "to", "142 ft", "diameter", "7.875 in")
      .then("pack-bags", "bags", "14").then("pack-tape", "reading", "115.0 ft", "from", "ground");
  static final JobInSteps CHIPPED = PACKED.then("chips", "bags", "2")
      .then("chips-tape", "reading", "109.6 ft", "from", "ground");
  static final JobInSteps GROUTED = CHIPPED
      .then("grout-mix", "material", "bentonite", "solids", "50 lb", "water", "24 gal")
      .then("grout-batch", "bags", "4", "water", "96 gal", "weight", "9.5 lb/gal", "returns", "no")
      .then("grout-batch", "bags", "4", "water", "96 gal", "returns", "yes");

  @Test
  void loadsChipsGroutAndWater() {
    List<Load> loads = PLANNED.stage("seal").loads(PLANNED.job().well());
    assertThat(loads)
        .extracting(l -> l.what().shownTo(Reader.US_ENGLISH) + ": " + l.howMany().shownTo(Reader.US_ENGLISH))
        .containsExactly(
            "chips, bags of 0.69 ft³: 3 bags", "grout, bags of 50.0 lb: 9 bags", "water for the grout: 216.0 gal",
            "bags of grout by what holes here take, nine times in ten enough: 10 bags, 240.0 gal of water");
  }

  @Test
  void isSilentFromBeginningToEnd() {
    for (int i = 0; i <= GROUTED.entries().size(); i++) {
      JobInSteps sofar = new JobInSteps(GROUTED.entries().subList(0, i));
      assertThat(sofar.findings("seal")).as("after %s entries", i).isEmpty();
    }
    JobInSteps sounded = GROUTED.then("grout-tape", "reading", "0 ft", "from", "ground", "after", "at-once");
    assertThat(sounded.findings("seal")).isEmpty();
    assertThat(sounded.then("grout-tape", "reading", "0.4 ft", "from", "ground", "after", "next-day").findings("seal"))
        .isEmpty();
  }

  @Test
  void goesFromChipsToTapeToMixToBatch() {
    assertThat(next(PACKED)).isEqualTo("chips");
    assertThat(next(PACKED.then("chips", "bags", "2"))).isEqualTo("chips-tape");
    assertThat(next(CHIPPED)).isEqualTo("grout-mix");
    assertThat(next(CHIPPED.then("grout-mix", "material", "bentonite", "solids", "50 lb", "water", "24 gal")))
        .isEqualTo("grout-batch");
    assertThat(progress(PACKED)).isEqualTo(Progress.NOT_BEGUN);
    assertThat(progress(CHIPPED)).isEqualTo(Progress.UNDER_WAY);
    assertThat(progress(GROUTED)).isEqualTo(Progress.DONE);
    assertThat(next(GROUTED)).isEqualTo("grout-tape");
  }

  @Test
  void expectsBagsAndWaterBeforeMixing() {
    // from 109.6 ft, by hand: 109.6 × 0.2278 = 24.97 ft³, 186.8 gal / 26.31 = 7.1
    assertThat(told(CHIPPED)).containsExactly("bags of grout, as drilled: 8", "water for them: 192.0 gal",
        "bags of grout still needed: 7.8 in the mean, nine times in ten no more than: 9");
    // chips, by hand: 115 − 1.38 / 0.2278
    assertThat(told(PACKED.then("chips", "bags", "2"))).startsWith("tape on the chips after 2 bags: 108.94 ft");
  }

  @Test
  void expectsTheTopAfterEachBatchAndWhatIsStillNeeded() {
    JobInSteps four = new JobInSteps(GROUTED.entries().subList(0, GROUTED.entries().size() - 1));
    // by hand: 4 × 3.5165 / 0.2278 = 61.75 ft above 109.6; 47.85 × 0.2278 / 3.5165 = 3.1 bags
    assertThat(told(four)).containsExactly("tape on the grout after 4 bags: 47.85 ft",
        "bags of grout still needed: 3.8 in the mean, nine times in ten no more than: 5");
    assertThat(told(GROUTED)).isEmpty();
  }

  @Test
  void keepsTheGroutInTheWell() {
    Fill grout = GROUTED.job().well().get(Fill.GROUT);
    assertThat(grout.bags()).isEqualTo(8);
    assertThat(grout.volume().in(Unit.GALLON)).isCloseTo(8 * 26.306, within(0.01));
  }

  @Test
  void showsTheLiftOfBentoniteOnTheSheetOnly() {
    assertThat(SealSheetTest.line(CHIPPED, "lift on the closed casing while liquid")).endsWith(" lb");
    assertThat(CHIPPED.findings("seal")).isEmpty();
  }

  private static List<String> told(JobInSteps job) {
    return job.expectations("seal").stream().map(EverydaySealTest::told).toList();
  }

  private static String told(Expectation expectation) {
    return expectation.what().shownTo(Reader.US_ENGLISH) + ": " + expectation.figure().shownTo(Reader.US_ENGLISH);
  }

  private static String next(JobInSteps job) {
    return job.stage("seal").nextKind(job.job().well());
  }

  private static Progress progress(JobInSteps job) {
    return job.stage("seal").progress(job.job().well());
  }

  static List<String> codes(JobInSteps job) {
    return job.findings("seal").stream().map(Finding::code).toList();
  }
}
