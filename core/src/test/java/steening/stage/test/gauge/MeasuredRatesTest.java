package steening.stage.test.gauge;

import static org.assertj.core.api.Assertions.assertThat;
import static steening.stage.TestedWell.levels;
import static steening.stage.TestedWell.packed;
import static steening.stage.TestedWell.pumping;

import org.junit.jupiter.api.Test;
import steening.finding.Finding;
import steening.job.JobInSteps;
import steening.language.Language;
import steening.language.Reader;
import steening.language.UnitSystem;

/** The everyday test at 12 gpm with its rate measured. Own scenario, arithmetic checked by hand: 5 gal in 25 s. */
class MeasuredRatesTest {
  private static final Reader SPANISH = new Reader(Language.SPANISH, UnitSystem.METRIC);

  @Test
  void saysNothingWhereTheRateIsAsSaidAndStays() {
    JobInSteps job = levels(vessel(vessel(pumping("12 gpm"), "25.0; 25.2; 24.9 s"), "25.4; 25.3; 25.5 s"));
    assertThat(job.findings("test")).isEmpty();
  }

  /** 5 gal in 30 s are 10 gpm, a sixth less than said. */
  @Test
  void saysWhereTheRateIsAnotherThanSaid() {
    Finding finding = only(vessel(pumping("12 gpm"), "30; 30; 30 s"), "test.rate-differs");
    assertThat(finding.text().shownTo(Reader.US_ENGLISH)).contains("12.0 gpm", "10.0 gpm", "vessel and watch");
    assertThat(finding.text().shownTo(SPANISH)).contains("0.76 L/s", "0.63 L/s", "recipiente y reloj");
  }

  /** From 12 gpm to 10: the line no longer holds. */
  @Test
  void saysWhereTheRateChanged() {
    JobInSteps job = vessel(vessel(pumping("12 gpm"), "25; 25; 25 s"), "30; 30; 30 s");
    assertThat(only(job, "test.rate-changed").entries()).hasSize(2);
  }

  /** A jet is good to a tenth either way: 11 and 12 gpm are one rate to it. */
  @Test
  void doesNotSeeMoreThanTheWayOfMeasuringShows() {
    JobInSteps job = pumping("12 gpm");
    job = job.then("rate-measured", "how", "jet", "discharge-pipe", "1 in", "jet-reach", "15 in", "jet-drop", "13 in");
    assertThat(job.findings("test")).isEmpty();
  }

  @Test
  void saysWhichReadingIsMissingAndWhereAWayDoesNotHold() {
    JobInSteps job = pumping("12 gpm").then("rate-measured", "how", "orifice", "orifice", "2.5 in");
    assertThat(only(job, "test.rate-readings-missing").text().shownTo(Reader.US_ENGLISH)).contains("circular orifice");
    JobInSteps low = pumping("12 gpm").then("rate-measured", "how", "v-notch", "notch", "90", "weir-head", "1 in");
    assertThat(only(low, "test.rate-not-held").text().shownTo(Reader.US_ENGLISH)).contains("2.4 in");
  }

  /** Measured, while nobody wrote down the start: what follows goes with the measured rate. */
  @Test
  void standsInForARateThatWasNotSaid() {
    JobInSteps job = packed().then("static-level", "level", "31.0 ft", "from", "top-of-casing");
    job = levels(vessel(job, "25; 25; 25 s"));
    assertThat(job.findings("test")).extracting(Finding::code).doesNotContain("test.rate-missing");
  }

  private static JobInSteps vessel(JobInSteps job, String times) {
    return job.then("rate-measured", "how", "vessel", "vessel", "5 gal", "fill-times", times);
  }

  private static Finding only(JobInSteps job, String code) {
    assertThat(job.findings("test")).extracting(Finding::code).containsExactly(code);
    return job.findings("test").get(0);
  }
}
