package steening.stage.pack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import steening.finding.Finding;
import steening.job.JobInSteps;
import steening.journal.Moment;
import steening.language.Language;
import steening.language.Reader;
import steening.language.UnitSystem;
import steening.quantity.Unit;
import steening.well.Grade;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.stage.Clock;

class GrainFallTest {
  /** Ferguson and Church (2004) worked out at ν = 1.3 mm²/s, minutes for 100 ft; 1.307 here, hence 1 %. */
  @ParameterizedTest
  @CsvSource({"0.075, 143.18", "0.15, 41.57", "0.6, 6.5", "2.36, 2.38"})
  void fallsAsThePublishedFormula(String millimetres, double minutes) {
    Outcome outcome = GrainFall.RECKONING.of(Inputs.none()
        .with(GrainFall.GRAIN, millimetres + " mm").with(GrainFall.HEIGHT, "100 ft"));
    assertThat(outcome.quantity("minutes").in(Unit.MINUTE)).isCloseTo(minutes, within(0.01 * minutes));
    assertThat(outcome.quantity("wait").in(Unit.MINUTE))
        .isCloseTo(outcome.quantity("minutes").in(Unit.MINUTE) / 0.75, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({"16-30, 0.6", "#2 (no), ", "20/40, 0.425", "0.6-1.2 mm, 0.6", "1.2 a 0.6 mm, 0.6", "30-16, ",
      "7-13, ", "16, ", "., ", "16-30 0.5, "})
  void readsTheGradeOfTheBag(String text, Double millimetres) {
    assertThat(new Grade(text).finest().map(l -> l.in(Unit.MILLIMETRE)).orElse(null)).isEqualTo(millimetres);
  }

  /** Own scenario, by hand: 16-30 sand, 0.6 mm, 0.256 ft/s; bag 3 to 137.6 ft: 8.97 min / 0.75, and 12 min at most. */
  @Test
  void saysHowLongToWaitBeforeTheTape() {
    JobInSteps poured = EverydayPackTest.DRILLED.then("pack-bags", "bags", "3", "grade", "16-30");
    Moment last = poured.entries().get(poured.entries().size() - 1).happenedAt();
    assertThat(clocks(poured)).hasSize(1).allSatisfy(clock -> {
      assertThat(clock.until().minutesSince(last)).isEqualTo(12);
      assertThat(clock.what().shownTo(Reader.US_ENGLISH))
          .isEqualTo("the last grains of 16-30 are down: tape not before");
      assertThat(clock.what().shownTo(new Reader(Language.SPANISH, UnitSystem.METRIC)))
          .startsWith("los últimos granos");
    });
    assertThat(clocks(poured.then("pack-tape", "reading", "137 ft", "from", "ground"))).isEmpty();
    assertThat(clocks(poured.then("chips", "bags", "1"))).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"fine", "silica sand", "99999999999999999999-1"})
  void saysNothingOfAGradeItDoesNotKnow(String grade) {
    JobInSteps poured = EverydayPackTest.DRILLED.then("pack-bags", "bags", "3", "grade", grade);
    assertThat(clocks(poured)).isEmpty();
  }

  /** Own scenario: 20-40 sand needs 16 min to 132 ft, the tape went down after ten. */
  @Test
  void aTapeThatWasEarlyMayFindAWashoutThatIsNone() {
    assertThat(washout("20-40").cause().orElseThrow().shownTo(Reader.US_ENGLISH))
        .endsWith("the tape went down 10.0 min after the last bag, and the finest grains of 20-40 take 16.4 min.");
    assertThat(washout("10-20").cause().orElseThrow().shownTo(Reader.US_ENGLISH)).doesNotContain("still falling");
  }

  private static Finding washout(String grade) {
    return EverydayPackTest.DRILLED.then("pack-bags", "bags", "3", "grade", grade)
        .then("pack-tape", "reading", "137.6 ft", "from", "ground")
        .then("pack-bags", "bags", "5", "grade", grade)
        .then("pack-tape", "reading", "131 ft", "from", "ground").finding("pack.washout").orElseThrow();
  }

  private static List<Clock> clocks(JobInSteps job) {
    return job.stage("pack").clocks(job.job().well());
  }
}
