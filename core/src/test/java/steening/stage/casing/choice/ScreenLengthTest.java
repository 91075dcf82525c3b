package steening.stage.casing.choice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import steening.field.Hands;
import steening.journal.Body;
import steening.quantity.Unit;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;

/** Besides the published cases, which PublishedCasesTest holds (W-SCRE-01, 03, 04, 06). */
class ScreenLengthTest {
  private static double feet(Outcome outcome, String answer) {
    return outcome.quantity(answer).in(Unit.FOOT);
  }

  /** W-SCRE-01: 25 gpm at 11 in2/ft take 7.29 ft at 0.1 ft/s; 2 ft/min is a third of it, 10 ft/min 5/3, 1.5 ft/s 15. */
  @Test
  void eachPublishedLimitGivesItsOwnLength() {
    Outcome outcome = ScreenLength.RECKONING.of(
        Inputs.of(Body.of("rate", "25 gpm", "open-area", "11 in2/ft", "thickness", "30 ft")));
    assertThat(feet(outcome, "length-needed")).isCloseTo(7.2917, within(0.036));
    assertThat(feet(outcome, "length-half-blocked")).isCloseTo(14.583, within(0.073));
    assertThat(feet(outcome, "length-tight-sand") / feet(outcome, "length-needed")).isCloseTo(3, within(1e-9));
    assertThat(feet(outcome, "length-open-gravel") / feet(outcome, "length-needed")).isCloseTo(0.6, within(1e-9));
    assertThat(feet(outcome, "length-late-view") / feet(outcome, "length-needed")).isCloseTo(1 / 15.0, within(1e-9));
    assertThat(feet(outcome, "confined")).isCloseTo(24, within(1e-9));
    assertThat(feet(outcome, "unconfined")).isCloseTo(10, within(1e-9));
  }

  @Test
  void oddInputsAreRefused() {
    assertThat(Hands.refused(ScreenLength.OPEN_AREA, "0 in2/ft")).contains("outside");
    assertThat(Hands.refused(ScreenLength.LIMIT, "-0.1 ft/s")).isNotBlank();
    assertThat(Hands.refused(ScreenLength.THICKNESS, "20 gal")).isNotBlank();
  }
}
