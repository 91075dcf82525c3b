package steening.stage.pack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import com.eclipsesource.json.JsonObject;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import steening.journal.Body;
import steening.quantity.Unit;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;

class PackVolumeTest {
  /** Worked examples W-FILT-06 to -12: 100 lb to the cubic foot from a supplier's bulletin (seen), geometry. */
  @ParameterizedTest
  @ValueSource(strings = {"W-FILT-06", "W-FILT-07", "W-FILT-09", "W-FILT-10", "W-FILT-12"})
  void agreesWithTheWorkedExamples(String id) {
    JsonObject row = PackExamples.named(id);
    double length = PackExamples.input(row, "screen_ft") + PackExamples.input(row, "above_ft");
    Outcome outcome = reckon(
        "hole", PackExamples.input(row, "hole_in") + " in", "casing", PackExamples.input(row, "screen_od_in") + " in",
        "from", "100 ft", "to", 100 + length + " ft", "bag-volume", PackExamples.input(row, "bag_ft3") + " ft3",
        "overage", 100 * PackExamples.input(row, "overage_fraction") + " %");
    assertThat(cubicFeet(outcome, "volume"))
        .isCloseTo(PackExamples.expected(row, "gauge_volume_ft3"), withinPercentage(0.01));
    assertThat(cubicFeet(outcome, "order-volume"))
        .isCloseTo(PackExamples.expected(row, "order_volume_ft3"), withinPercentage(0.01));
    assertThat(outcome.quantity("order-bags").coherent()).isEqualTo(PackExamples.expected(row, "bags"));
  }

  /**
   * A supplier's bulletin (seen) prints 83.6 ft³ and 84 bags for this hole, because it rounds 16 in to 1.33 ft on the
   * way; a foot so rounded costs a bag.
   */
  @Test
  void doesNotRoundOnTheWay() {
    Outcome outcome =
        reckon("hole", "16 in", "casing", "8.625 in", "from", "0 ft", "to", "85 ft", "bag-volume", "1 ft3");
    assertThat(outcome.quantity("bags").coherent()).isEqualTo(85);
  }

  /** Own scenario, arithmetic checked by hand: 5 ft of full bore and 22 ft of annulus. */
  @Test
  void fillsTheFullBoreBelowTheString() {
    Outcome outcome = reckon(
        "hole", "7.875 in", "casing", "4.5 in", "string-bottom", "137 ft", "from", "115 ft", "to", "142 ft", "overage",
        "25 %");
    assertThat(cubicFeet(outcome, "volume")).isCloseTo(6.703, within(0.0005));
    assertThat(outcome.quantity("bags-filled").coherent()).isCloseTo(13.4, within(0.05));
    assertThat(outcome.quantity("bags").coherent()).isEqualTo(14);
    assertThat(outcome.quantity("order-bags").coherent()).isEqualTo(17);
  }

  @Test
  void saysWhatDoesNotFit() {
    assertThatThrownBy(() -> reckon("hole", "4 in", "casing", "4.5 in", "from", "100 ft", "to", "120 ft"))
        .isInstanceOf(NotReckonable.class).hasMessage("The pipe is larger than the hole: 4 1/2 in against 4 in.");
    assertThatThrownBy(() -> reckon("hole", "8 in", "casing", "4.5 in", "from", "120 ft", "to", "100 ft"))
        .isInstanceOf(NotReckonable.class).hasMessage("The lower end must be deeper than the upper end.");
  }

  private static Outcome reckon(String... namesAndTexts) {
    return PackVolume.RECKONING.of(Inputs.of(Body.of(namesAndTexts)));
  }

  private static double cubicFeet(Outcome outcome, String answer) {
    return outcome.quantity(answer).in(Unit.CUBIC_FOOT);
  }
}
