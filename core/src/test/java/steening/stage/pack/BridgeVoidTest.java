package steening.stage.pack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import steening.quantity.Unit;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;

/** Own scenario, arithmetic checked by hand: three bags hang above 84.6 ft with their top at 71.2 ft. */
class BridgeVoidTest {
  private static final Inputs INPUTS = Inputs.none()
      .with(BridgeVoid.HOLE, "7.875 in").with(BridgeVoid.CASING, "4.5 in").with(BridgeVoid.BEFORE, "84.6 ft")
      .with(BridgeVoid.BAGS, "3").with(BridgeVoid.SCREEN_TOP, "84 ft").with(BridgeVoid.SCREEN_BOTTOM, "94 ft");

  /** 13.4 ft hold 3.05 ft³; 1.5 went in: 1.55 ft³ of void, 6.8 ft, under 6.6 ft of plug; 84.6 − 84 of screen. */
  @Test
  void measuresPlugVoidAndBareScreen() {
    Outcome found = BridgeVoid.RECKONING.of(INPUTS.with(BridgeVoid.FOUND, "71.2 ft"));
    assertThat(found.quantity("plug").in(Unit.FOOT)).isCloseTo(6.6, within(0.05));
    assertThat(found.quantity("void-volume").in(Unit.CUBIC_FOOT)).isCloseTo(1.55, within(0.005));
    assertThat(found.quantity("void").in(Unit.FOOT)).isCloseTo(6.8, within(0.05));
    assertThat(found.quantity("void-top").in(Unit.FOOT)).isCloseTo(77.8, within(0.05));
    assertThat(found.quantity("bare").in(Unit.FOOT)).isCloseTo(0.6, within(0.001));
    // from the reading before, 84.6 − 6.58; from the bottom of the hole by all nine bags it is 77.7
    assertThat(found.quantity("after").in(Unit.FOOT)).isCloseTo(78.02, within(0.01));
  }

  @Test
  void thereIsNoVoidWhereTheBagsFillTheStretch() {
    assertThatThrownBy(() -> BridgeVoid.RECKONING.of(INPUTS.with(BridgeVoid.FOUND, "78.2 ft")))
        .isInstanceOf(NotReckonable.class);
  }
}
