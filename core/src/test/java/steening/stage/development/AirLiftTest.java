package steening.stage.development;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

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

/** The published air lifts are judged with the other cases; here what they do not show. */
class AirLiftTest {
  private static final Body RUNNING =
      Body.of("air-line", "120 ft", "static", "30 ft").with("level", "48 ft").with("rate", "20 gpm");

  /**
   * 48 ft of lift at 60 %: C 335; log₁₀(106/34) = 0.49385; 0.8·48/(335·0.49385) and 3.06857·48/(585·0.49385),
   * times 20.
   */
  @Test
  void givesTheAirAsARangeOfTheTwoFormulas() {
    Outcome outcome = reckon(RUNNING);
    assertThat(air(outcome, "air-least")).isCloseTo(4.642, within(0.002));
    assertThat(air(outcome, "air-most")).isCloseTo(10.197, within(0.002));
    assertThat(outcome.remarks()).isEmpty();
  }

  /** Field point of the slides of 2008: 8-in well, 2-in pipe, 40 %: 1900 cfm for 450 gpm; that is 4.2 ft³ a gallon. */
  @Test
  void fillsTheAnnulusOfTheFieldPoint() {
    Outcome outcome = reckon(Body.of("air-line", "100 ft", "static", "30 ft").with("inside", "8 in")
        .with("air-pipe", "2.375 in"));
    assertThat(air(outcome, "compressor")).isCloseTo(1900, within(15.0));
  }

  /** Halfway between 318 at 55 % and 335 at 60 %: 326.5. */
  @Test
  void readsTheTableInProportion() {
    Outcome outcome = reckon(RUNNING.with("air-line", "100 ft").with("level", "42.5 ft"));
    assertThat(outcome.working(Reader.US_ENGLISH).lines()).anyMatch(l -> l.value().equals("326.5"));
  }

  @Test
  void leavesOutWhatTheTableDoesNotHold() {
    Outcome outcome = reckon(RUNNING.with("level", "10 ft"));
    assertThat(outcome.answers()).containsKey("air-most").doesNotContainKey("air-least");
    assertThat(outcome.remarks()).hasSize(1);
  }

  @Test
  void speaksMetricAndSpanish() {
    Reader reader = new Reader(Language.SPANISH, UnitSystem.METRIC);
    Outcome outcome = reckon(Body.of("air-line", "36 m", "static", "9 m"));
    assertThat(outcome.figure("start").shownTo(reader)).isEqualTo("265 kPa");
    assertThat(AirLift.RECKONING.title().shownTo(reader)).isEqualTo("Bombeo con aire");
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
    "static   | 130 ft | The air line ends above the water: static water level below ground. Lower it.",
    "level    | 120 ft | The air line ends above the water: pumping water level. Lower it.",
    "level    | -9 ft  | The water stands above the discharge: it flows without air.",
    "inside   | 1 in   | The air line does not fit into the casing: 2 in against 1 in.",
  })
  void saysWhatCannotBe(String field, String text, String sentence) {
    assertThatThrownBy(() -> reckon(RUNNING.with("inside", "4 in").with("air-pipe", "2 in").with(field, text)))
        .isInstanceOfSatisfying(NotReckonable.class,
            e -> assertThat(e.sentence().shownTo(Reader.US_ENGLISH)).isEqualTo(sentence));
  }

  private static double air(Outcome outcome, String answer) {
    return outcome.quantity(answer).in(Unit.CUBIC_FOOT_PER_MINUTE);
  }

  private static Outcome reckon(Body typed) {
    return AirLift.RECKONING.of(Inputs.of(typed));
  }
}
