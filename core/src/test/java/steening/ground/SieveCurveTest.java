package steening.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static steening.field.Hands.SPANISH;
import static steening.field.Hands.US;

import org.junit.jupiter.api.Test;
import steening.field.Hands;
import steening.quantity.Unit;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;

/** Besides the published cases, which PublishedCasesTest holds (W-FILT-01 to 05, G01). */
class SieveCurveTest {
  private static Outcome curve(String openings, String finer) {
    return SieveCurve.RECKONING.of(Inputs.none()
        .with(Sieves.OPENINGS, Hands.taken(Sieves.OPENINGS, openings))
        .with(Sieves.FINER, Hands.taken(Sieves.FINER, finer)));
  }

  /** Geometry: halfway between 20 and 40 % is the geometric mean of the two openings. */
  @Test
  void theLineIsStraightOverTheLogarithm() {
    Outcome outcome = curve("0.1 0.4 1.6 mm", "20 40 80 %");
    assertThat(outcome.quantity("d30").in(Unit.MILLIMETRE)).isCloseTo(0.2, within(1e-6));
    assertThat(outcome.quantity("d60").in(Unit.MILLIMETRE)).isCloseTo(0.8, within(1e-6));
    assertThat(outcome.quantity("pack-least").in(Unit.MILLIMETRE)).isCloseTo(0.8, within(1e-6));
    assertThat(outcome.quantity("pack-most").in(Unit.MILLIMETRE)).isCloseTo(1.2, within(1e-6));
  }

  @Test
  void nothingIsGuessedBeyondTheEndSieves() {
    Outcome outcome = curve("0.1 0.4 1.6 mm", "20.5 40 80 %");
    assertThat(outcome.answers()).doesNotContainKeys("d10", "d17", "d20", "d90", "cu", "cc").containsKeys("d30", "d70");
    assertThat(outcome.remarks()).extracting(r -> r.shownTo(US)).containsExactly(
        "No D10, D17, D20: 20.5 % still passes the finest sieve, 0.1 mm, and nothing is guessed beyond it.",
        "No D90: only 80.0 % passes the widest sieve, 1.6 mm, and nothing is guessed beyond it.");
    assertThat(outcome.remarks().get(1).shownTo(SPANISH))
        .isEqualTo("Sin D90: por el tamiz más abierto, 1.6 mm, solo pasa 80.0 %, y más allá no se supone nada.");
  }

  @Test
  void theOrderOfTheSievesDoesNotMatter() {
    Outcome rising = curve("0.075 0.15 0.25 0.425 0.85 mm", "4 14 45 80 98 %");
    Outcome falling = curve("0.85 0.425 0.25 0.15 0.075 mm", "98 80 45 14 4 %");
    assertThat(falling.quantity("d10")).isEqualTo(rising.quantity("d10"));
    assertThat(falling.quantity("cc")).isEqualTo(rising.quantity("cc"));
  }

  /** A sieve that holds nothing back makes the curve flat; the size is that of the sieve where it begins. */
  @Test
  void aFlatStretchIsNoDivisionByNothing() {
    Outcome outcome = curve("0.1 0.2 0.4 0.8 mm", "5 50 50 95 %");
    assertThat(outcome.quantity("d50").in(Unit.MILLIMETRE)).isCloseTo(0.2, within(1e-9));
    assertThat(curve("0.1 0.2 mm", "45 45 %").answers()).isEmpty();
  }

  @Test
  void retainedTypedForFinerIsNoticed() {
    assertThatThrownBy(() -> curve("0.075 0.15 0.25 mm", "96 86 55 %"))
        .isInstanceOf(NotReckonable.class).hasMessageContaining("not percent retained");
  }

  @Test
  void eachSieveNeedsBothNumbersAndStandsOnce() {
    assertThatThrownBy(() -> curve("0.075 0.15 0.25 mm", "4 14 %")).hasMessageContaining("3 sieve openings, but 2");
    assertThatThrownBy(() -> curve("0.15 0.15 mm", "4 14 %")).hasMessageContaining("0.15 mm stands there twice");
  }

  @Test
  void oddSievesAreAskedAboutOrRefused() {
    assertThat(Hands.asked(Sieves.OPENINGS, "75 150 mm")).isNotEmpty();
    assertThat(Hands.refused(Sieves.OPENINGS, "0 0.15 mm")).contains("outside");
    assertThat(Hands.refused(Sieves.FINER, "4 114 %")).contains("outside");
    assertThat(Hands.refused(Sieves.FINER, "45 %")).contains("2 to");
  }
}
