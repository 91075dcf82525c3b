package steening.stage.test.step;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static steening.field.Hands.METRIC;
import static steening.field.Hands.SPANISH;
import static steening.field.Hands.US;

import org.junit.jupiter.api.Test;
import steening.journal.Body;
import steening.language.Phrase;
import steening.quantity.Unit;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;

/** The published steps of Clark 1977 are among the cases of the case book; here is what they leave open. */
class StepTestTest {
  /** s = 0.30 Q + 0.006 Q² at 5 to 25 gpm, without an error: own numbers, worked by hand. */
  private static final Body EXACT =
      Body.of("rates", "5; 10; 15; 20; 25 gpm", "drawdowns", "1.65; 3.6; 5.85; 8.4; 11.25 ft");

  /** Clark 1977, drawdowns at 100 min of each step as increments, their least squares computed outside the project. */
  private static final Body CLARK = Body.of(
      "rates", "1306; 1693; 2423; 3261; 4094; 5019 m3/d",
      "drawdowns", "4.226; 5.7834; 8.3742; 11.771; 15.506; 19.814 m");

  @Test
  void findsWhatTheStepsWereMadeOf() {
    Outcome outcome = reckon(EXACT);
    assertThat(outcome.quantity("aquifer-loss-coefficient").in(Unit.FOOT_PER_GALLON_PER_MINUTE))
        .isCloseTo(0.30, within(1e-6));
    assertThat(outcome.quantity("well-loss-coefficient").in(Unit.FOOT_PER_GALLON_PER_MINUTE_SQUARED))
        .isCloseTo(0.006, within(1e-7));
    assertThat(outcome.quantity("efficiency").in(Unit.PERCENT)).isCloseTo(100 * 7.5 / 11.25, within(1e-3));
    assertThat(outcome.quantity("exponent").coherent()).isCloseTo(2, within(1e-3));
  }

  @Test
  void atAnotherRateTheShareIsAnother() {
    Outcome outcome = reckon(EXACT.with("rate", "12 gpm"));
    assertThat(outcome.quantity("drawdown").in(Unit.FOOT)).isCloseTo(3.6 + 0.864, within(1e-4));
    assertThat(outcome.quantity("efficiency").in(Unit.PERCENT)).isCloseTo(100 * 3.6 / 4.464, within(1e-3));
  }

  /** Five authors came to an n of 2.0 to 2.7 with Clark's readings (Singh 2002, seen). */
  @Test
  void theExponentOfClarkLiesAmongThoseOfTheAuthorsWithinItsError() {
    Outcome outcome = reckon(CLARK);
    double error = outcome.quantity("exponent-error").coherent();
    assertThat(outcome.quantity("exponent").coherent()).isBetween(2.0 - 2 * error, 2.7 + 2 * error);
    assertThat(error).isBetween(0.01, 0.5);
  }

  @Test
  void threeStepsLeaveTheExponentOpenAndSaySo() {
    Outcome outcome = reckon(Body.of("rates", "5; 10; 15 gpm", "drawdowns", "1.65; 3.6; 5.85 ft"));
    assertThat(outcome.answers()).doesNotContainKeys("exponent", "exponent-error");
    assertThat(said(outcome)).contains(
        "The exponent is not determined: it takes 4 steps, and there are 3; n = 2 is kept.");
  }

  /** Classes of Walton 1962 by C (memory): 0.5, 1 and 4 min²/m⁵. */
  @Test
  void namesTheClassAndThatItIsFromMemory() {
    assertClass("0.49 min2/m5", "well designed and developed");
    assertClass("0.9 min2/m5", "mild deterioration");
    assertClass("2 min2/m5", "severe deterioration or clogging");
    assertClass("4.1 min2/m5", "hard to restore");
    assertThat(said(reckon(EXACT))).contains("The classes of Walton 1962 are from memory, not re-read.");
  }

  @Test
  void speaksSpanishAndMetric() {
    Outcome outcome = reckon(CLARK);
    assertThat(outcome.figure("aquifer-loss-coefficient").shownTo(METRIC)).isEqualTo("0.003041 d/m²");
    assertThat(outcome.figure("well-loss-coefficient").shownTo(METRIC)).isEqualTo("0.0000001801 d²/m⁵");
    assertThat(outcome.words().get("class").shownTo(SPANISH)).isEqualTo("bien diseñado y desarrollado");
  }

  @Test
  void saysThatARateIsAboveTheSteps() {
    assertThat(said(reckon(EXACT.with("rate", "40 gpm")))).contains("40.0 gpm is above the highest step, 25.0 gpm.");
  }

  @Test
  void refusesStepsThatTellNothing() {
    refused(EXACT.with("drawdowns", "1.65; 3.6 ft"), "5 rates and 2 drawdowns do not pair.");
    refused(EXACT.with("rates", "10; 10; 10; 10; 10 gpm"), "All steps were at 10.0 gpm.");
    refused(EXACT.with("drawdowns", "1.65; 3.2; 4.5; 5.6; 6.5 ft"), "s/Q does not grow with the rate");
    refused(EXACT.with("drawdowns", "0.1; 0.5; 1.2; 2.5; 4.5 ft"), "The line meets no rate at");
  }

  private static void assertClass(String c, String word) {
    Outcome outcome = WellEfficiency.RECKONING.of(Inputs.of(Body.of(
        "aquifer-loss-coefficient", "0.003 d/m2", "well-loss-coefficient", c, "rate", "500 m3/d")));
    assertThat(outcome.words().get("class").shownTo(US)).isEqualTo(word);
    assertThat(outcome.quantity("aquifer-loss").in(Unit.METRE)).isCloseTo(1.5, withinPercentage(0.001));
  }

  private static String said(Outcome outcome) {
    StringBuilder said = new StringBuilder();
    for (Phrase remark : outcome.remarks()) said.append(remark.shownTo(US)).append('\n');
    return said.toString();
  }

  private static void refused(Body typed, String sentence) {
    assertThatThrownBy(() -> reckon(typed)).isInstanceOf(NotReckonable.class).hasMessageStartingWith(sentence);
  }

  private static Outcome reckon(Body typed) {
    return StepTest.RECKONING.of(Inputs.of(typed));
  }
}
