package steening.stage.pump.motor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import steening.journal.Body;
import steening.quantity.Unit;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;

/** Own scenarios, arithmetic checked by hand; tables and worked examples are in the cases. */
class CableTest {
  private static final Body TWO = Body.of(
      "voltage", "230 V", "current", "8 A", "cable", "10", "cable-length", "100 ft", "second-cable", "12",
      "second-cable-length", "200 ft");

  /** 2 × 8 × (100 × 1.24 + 200 × 1.98) / 1000 = 8.32 V, 3.62 %. */
  @Test
  void twoSizesInSeriesAddUp() {
    Outcome outcome = CableDrop.RECKONING.of(Inputs.of(TWO));
    assertThat(outcome.quantity("drop").in(Unit.VOLT)).isCloseTo(8.32, within(1e-9));
    assertThat(outcome.quantity("drop-share").in(Unit.PERCENT)).isCloseTo(3.617, within(0.001));
    assertThat(outcome.remarks()).isEmpty();
  }

  @Test
  void aDropAboveFivePercentIsSaid() {
    assertThat(CableDrop.RECKONING.of(Inputs.of(TWO.with("second-cable-length", "500 ft"))).remarks()).hasSize(1);
  }

  @Test
  void refusesHalfACableAndAConductorTooSmall() {
    Body half = Body.of("voltage", "230 V", "current", "8 A", "cable", "10", "cable-length", "100 ft", "second-cable",
        "12");
    assertThatThrownBy(() -> CableDrop.RECKONING.of(Inputs.of(half)))
        .isInstanceOf(NotReckonable.class).hasMessageContaining("only one of the two");
    Body thin = Body.of("motor", "5-230", "cable", "14", "cable-length", "50 ft");
    assertThatThrownBy(() -> CableLength.RECKONING.of(Inputs.of(thin)))
        .isInstanceOf(NotReckonable.class).hasMessageContaining("AWG 14");
  }

  /** 3 gpm past 3.75 in of motor in 6.065 in: 0.054 ft/s; a sleeve of √(14.06 + 4.90) = 4.35 in makes 0.25 ft/s. */
  @Test
  void aWideCasingAsksForASleeve() {
    Outcome outcome = MotorCooling.RECKONING.of(Inputs.of(Body.of("rate", "3 gpm", "casing-inside", "6.065 in")));
    assertThat(outcome.quantity("velocity").in(Unit.FOOT_PER_SECOND)).isCloseTo(0.0539, within(0.0001));
    assertThat(outcome.quantity("widest-sleeve").in(Unit.INCH)).isCloseTo(4.3548, within(0.001));
    assertThat(outcome.remarks()).hasSize(1);
    assertThatThrownBy(() ->
        MotorCooling.RECKONING.of(Inputs.of(Body.of("rate", "3 gpm", "casing-inside", "3.5 in"))))
        .isInstanceOf(NotReckonable.class).hasMessageContaining("does not go into");
  }
}
