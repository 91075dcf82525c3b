package steening.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static steening.field.Hands.SPANISH;
import static steening.field.Hands.US;

import org.junit.jupiter.api.Test;
import steening.field.Hands;
import steening.journal.Body;
import steening.quantity.Unit;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;

/** Besides the published cases, which PublishedCasesTest holds (W-FILT-01, 03, 04: 4 and 6 times D30; W-FILT slots). */
class PackAndSlotTest {
  private static Outcome of(Reckoning reckoning, String... namesAndTexts) {
    Inputs inputs = Inputs.of(Body.of(namesAndTexts));
    return reckoning.of(inputs);
  }

  private static double millimetres(Outcome outcome, String answer) {
    return outcome.quantity(answer).in(Unit.MILLIMETRE);
  }

  /** EPA, Wis. NR 812.16, TI 814-01, ASTM D5092: 4 to 6 times (seen). 0.8 / 2.5^0.4 = 0.5545; 1.2 × 2.5^0.6 = 2.079. */
  @Test
  void aPackForTheFinestSand() {
    Outcome outcome = of(PackGrading.RECKONING, "d30", "0.20 mm", "d50", "0.27 mm", "pack-d30", "0.9 mm");
    assertThat(millimetres(outcome, "pack-least")).isCloseTo(0.8, within(1e-9));
    assertThat(millimetres(outcome, "pack-most")).isCloseTo(1.2, within(1e-9));
    assertThat(millimetres(outcome, "finest")).isCloseTo(0.5545, within(0.0001));
    assertThat(millimetres(outcome, "coarsest")).isCloseTo(2.0794, within(0.0001));
    assertThat(millimetres(outcome, "mixed-most")).isCloseTo(1.8, within(1e-9));
    assertThat(millimetres(outcome, "d50-most")).isCloseTo(1.62, within(1e-9));
    assertThat(outcome.quantity("multiple").coherent()).isCloseTo(4.5, within(1e-9));
  }

  /** D60 / D10 of the pack at the limits must be the Cu that was asked for; lengths are kept to the nanometre. */
  @Test
  void theLimitsHaveTheUniformityAskedFor() {
    Outcome outcome = of(PackGrading.RECKONING, "d30", "0.20 mm", "pack-times-least", "5", "pack-times-most", "5");
    assertThat(millimetres(outcome, "coarsest") / millimetres(outcome, "finest")).isCloseTo(2.5, within(1e-5));
    Outcome even = of(PackGrading.RECKONING, "d30", "0.20 mm", "uniformity", "1");
    assertThat(millimetres(even, "finest")).isCloseTo(0.8, within(1e-9));
  }

  @Test
  void multiplesThatCrossAreRefused() {
    assertThatThrownBy(() -> of(
        PackGrading.RECKONING, "d30", "0.20 mm", "pack-times-least", "7", "pack-times-most", "5"))
        .hasMessageContaining("above the greatest");
    assertThat(millimetres(of(PackGrading.RECKONING, "d30", "0.20 mm", "pack-times-least", "8"), "pack-most"))
        .isCloseTo(1.6, within(1e-9));
    assertThatThrownBy(() -> of(PackGrading.RECKONING, "d30", "0.20 mm", "d50", "0.1 mm"))
        .hasMessageContaining("D50 is the larger");
    assertThat(Hands.asked(PackGrading.D30, "0.20 in")).isNotEmpty();
    assertThat(Hands.refused(PackGrading.D30, "-0.2 mm")).isNotBlank();
  }

  /** 10 % finer than 0.508 mm, which is slot 20 by definition; slot 40 stands on the sieve that 55 % pass. */
  @Test
  void aSlotForAPack() {
    Outcome outcome = of(SlotChoice.RECKONING, "openings", "0.508 1.016 2.032 mm", "finer", "10 55 100 %",
        "slot", "0.040 in");
    assertThat(outcome.quantity("chosen-slot").in(Unit.SLOT)).isCloseTo(20, within(1e-6));
    assertThat(outcome.quantity("slot-ninety")).isEqualTo(outcome.quantity("chosen-slot"));
    assertThat(outcome.quantity("passes").in(Unit.PERCENT)).isCloseTo(55, within(1e-6));
    assertThat(outcome.shown("rule").orElseThrow().shownTo(US)).isEqualTo("keeps 90.0 % of the pack");
    assertThat(outcome.shown("rule").orElseThrow().shownTo(SPANISH)).isEqualTo("retiene 90.0 % del filtro");
  }

  /** Halfway over the logarithm between 0.5 and 2 mm lies 1 mm: halfway between 20 and 80 %. */
  @Test
  void whatASlotPassesIsTheCurveTurnedRound() {
    Outcome outcome = of(SlotChoice.RECKONING, "openings", "0.5 2 mm", "finer", "20 80 %", "slot", "1 mm");
    assertThat(outcome.quantity("passes").in(Unit.PERCENT)).isCloseTo(50, within(1e-9));
    Outcome turned = of(SlotChoice.RECKONING, "openings", "0.5 2 mm", "finer", "20 80 %", "retained-share", "50 %");
    assertThat(millimetres(turned, "chosen-slot")).isCloseTo(1, within(1e-9));
  }

  @Test
  void nothingIsGuessedBeyondTheSieves() {
    Outcome fine = of(SlotChoice.RECKONING, "openings", "0.5 2 mm", "finer", "20 80 %", "slot", "0.2 mm");
    assertThat(fine.answers()).doesNotContainKeys("chosen-slot", "passes");
    assertThat(fine.remarks()).hasSize(2);
    Outcome wide = of(SlotChoice.RECKONING, "openings", "0.5 2 mm", "finer", "5 80 %", "slot", "3 mm");
    assertThat(wide.quantity("passes").in(Unit.PERCENT)).isCloseTo(80, within(1e-9));
    assertThat(wide.remarks().get(0).shownTo(US)).contains("at least");
  }

  /** W-FILT-03: slot 8.44 thousandths keeps half of it; EPA asks for a pack under 10. */
  @Test
  void aFormationTooFineAsksForAPack() {
    Outcome outcome = of(SlotChoice.RECKONING, "around", "formation",
        "openings", "0.075 0.15 0.25 0.425 0.85 mm", "finer", "3 22 62 91 99 %");
    assertThat(outcome.quantity("chosen-slot").in(Unit.SLOT)).isCloseTo(8.4441, within(0.0845));
    assertThat(outcome.remarks().get(0).shownTo(US)).contains("a pack is the usual answer (EPA)");
    assertThat(outcome.quantity("slot-thirty").coherent()).isGreaterThan(outcome.quantity("slot-forty").coherent());
  }
}
