package steening.stage.development;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import steening.journal.Body;
import steening.language.Language;
import steening.language.Reader;
import steening.language.UnitSystem;
import steening.quantity.Unit;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;

/** Own scenarios, arithmetic checked by hand. */
class SandDecayTest {
  /**
   * Made from c = 1 + 80 · 2^(−t/30): the fit must give back what it was made of, and 5 mg/L are reached after
   * 129.66 min.
   */
  @Test
  void findsWhatTheReadingsWereMadeOf() {
    Outcome outcome = decay("0; 30; 60; 90; 120", "81; 41; 21; 11; 6");
    assertThat(minutes(outcome, "half-life")).isCloseTo(30, within(1e-4));
    assertThat(outcome.quantity("floor").in(Unit.MILLIGRAM_PER_LITRE)).isCloseTo(1, within(1e-4));
    assertThat(outcome.quantity("floor-error").in(Unit.MILLIGRAM_PER_LITRE)).isLessThan(1e-3);
    assertThat(minutes(outcome, "to-limit")).isCloseTo(9.658, within(0.001));
    assertThat(found(outcome)).isEqualTo("a matter of time");
  }

  /** 109 to 47.5 in an hour is a half-life of 50.1 min; 47.5 to 29.6 in the next, 87.9 min. */
  @Test
  void seesThatItIsNotAMatterOfTime() {
    Outcome outcome = decay("0; 60; 120", "109; 47.5; 29.6");
    assertThat(minutes(outcome, "half-life-early")).isCloseTo(50.07, within(0.01));
    assertThat(minutes(outcome, "half-life-late")).isCloseTo(87.93, within(0.01));
    assertThat(found(outcome)).isEqualTo("not a matter of time");
    assertThat(outcome.words().get("found").shownTo(new Reader(Language.SPANISH, UnitSystem.METRIC)))
        .isEqualTo("no es cuestión de tiempo");
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
    "0; 30; 60; 90; 120     | 80; 40; 20; 10; 5          | the limit is reached",
    "0; 30; 60              | 0; 0; 0                    | the limit is reached",
    "0; 30; 60; 90; 120     | 60; 34; 25; 21; 20.5       | not a matter of time",
    "0; 30; 60; 90          | 12; 12; 12; 12             | not a matter of time",
    "0; 30; 60; 90          | 12; 14; 15; 17             | not a matter of time",
    "0; 30; 60; 90          | 250; 9; 9; 9               | not a matter of time",
    "0; 30; 60              | 80; 40; 20                 | these readings do not tell",
    "0; 30; 60; 90; 120     | 60; 21; 30; 9; 13          | these readings do not tell",
  })
  void decidesByFloorAndError(String times, String sand, String found) {
    assertThat(found(decay(times, sand))).isEqualTo(found);
  }

  /** A flood that irrigates takes 15 mg/L. */
  @Test
  void holdsItToTheLimitOfTheUse() {
    Body body = Body.of("times", "0; 30; 60; 90; 120 min", "sand", "60; 34; 19; 14; 11 mg/L").with("limit", "15 mg/L");
    assertThat(found(SandDecay.RECKONING.of(Inputs.of(body)))).isEqualTo("the limit is reached");
  }

  /** One reading of the first scenario off by 1 mg/L. */
  @Test
  void tellsHowSureItIs() {
    Outcome outcome = decay("0; 30; 60; 90; 120", "81; 42; 21; 11; 6");
    assertThat(minutes(outcome, "half-life")).isCloseTo(30, withinPercentage(5));
    assertThat(outcome.quantity("half-life-error").coherent()).isBetween(0.005, 0.05);
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
    "0; 30; 60      | 9; 8; 7; 6 | 3 times and 4 readings of sand do not pair.",
    "0; 30; 30; 60  | 9; 8; 7; 6 | Pumped time must grow from reading to reading; reading 3 does not.",
  })
  void saysWhatCannotBe(String times, String sand, String sentence) {
    assertThatThrownBy(() -> decay(times, sand)).isInstanceOfSatisfying(NotReckonable.class,
        e -> assertThat(e.sentence().shownTo(Reader.US_ENGLISH)).isEqualTo(sentence));
  }

  private static double minutes(Outcome outcome, String answer) {
    return outcome.quantity(answer).in(Unit.MINUTE);
  }

  private static String found(Outcome outcome) {
    return outcome.words().get("found").shownTo(Reader.US_ENGLISH);
  }

  private static Outcome decay(String times, String sand) {
    return SandDecay.RECKONING.of(Inputs.of(Body.of("times", times + " min", "sand", sand + " mg/L")));
  }
}
