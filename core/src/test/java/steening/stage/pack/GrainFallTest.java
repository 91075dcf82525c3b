package steening.stage.pack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import steening.job.JobInSteps;
import steening.language.Language;
import steening.language.Reader;
import steening.language.UnitSystem;
import steening.quantity.Unit;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;

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

  /** Own scenario, by hand: 16-30 sand, 0.6 mm, 0.256 ft/s; bag 3 to 137.6 ft: 8.97 min / 0.75. */
  @Test
  void saysHowLongToWaitBeforeTheTape() {
    JobInSteps poured = EverydayPackTest.DRILLED.then("pack-bags", "bags", "3", "grade", "16-30");
    assertThat(waits(poured, Reader.US_ENGLISH))
        .hasSize(1).allMatch(w -> w.startsWith("wait after the last bag, before the tape, by grade 16-30: 12.0 min"));
    assertThat(waits(poured, new Reader(Language.SPANISH, UnitSystem.METRIC)).get(0)).startsWith("espera tras");
    assertThat(waits(poured.then("pack-tape", "reading", "133 ft", "from", "ground"), Reader.US_ENGLISH)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"fine", "silica sand", "99999999999999999999-1"})
  void saysNothingOfAGradeItDoesNotKnow(String grade) {
    JobInSteps poured = EverydayPackTest.DRILLED.then("pack-bags", "bags", "3", "grade", grade);
    assertThat(waits(poured, Reader.US_ENGLISH)).isEmpty();
  }

  private static List<String> waits(JobInSteps job, Reader reader) {
    return job.expectations("pack").stream()
        .map(e -> e.what().shownTo(reader) + ": " + e.figure().shownTo(reader))
        .filter(t -> t.startsWith("wait") || t.startsWith("espera")).toList();
  }
}
