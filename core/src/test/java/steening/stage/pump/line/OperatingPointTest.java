package steening.stage.pump.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import steening.journal.Body;
import steening.quantity.Unit;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;

/** An invented curve, 200 ft less 5 ft for each gpm, against 50 ft of lift in wide pipe. Arithmetic checked by hand. */
class OperatingPointTest {
  private static final Body WELL = Body.of(
      "curve-flows", "0; 20 gpm", "curve-heads", "200; 100 ft", "pumping-level", "50 ft", "cut-in", "40 psi", "cut-out",
      "60 psi", "pipe-inside", "4 in", "pipe-length", "10 ft");

  /** 40 psi are 92.36 ft: (200 − 142.36) / 5 = 11.53 gpm; 60 psi are 138.54 ft: (200 − 188.54) / 5 = 2.29 gpm. */
  @Test
  void theFlowAtCutInIsTheLargest() {
    Outcome outcome = OperatingPoint.RECKONING.of(Inputs.of(WELL));
    assertThat(outcome.quantity("flow-cut-in").in(Unit.GALLON_PER_MINUTE)).isCloseTo(11.53, within(0.01));
    assertThat(outcome.quantity("head-cut-in").in(Unit.FOOT)).isCloseTo(142.36, within(0.01));
    assertThat(outcome.quantity("flow-cut-out").in(Unit.GALLON_PER_MINUTE)).isCloseTo(2.29, within(0.01));
  }

  /** Where the two meet, the curve and the pipe ask for one head: 200 − 5 Q. */
  @Test
  void bothCurvesMeetInNarrowPipeToo() {
    Outcome outcome = OperatingPoint.RECKONING.of(Inputs.of(WELL.with("pipe-inside", "0.824 in")
        .with("pipe-length", "300 ft")));
    double flow = outcome.quantity("flow-cut-in").in(Unit.GALLON_PER_MINUTE);
    assertThat(flow).isBetween(1.0, 11.0);
    assertThat(outcome.quantity("head-cut-in").in(Unit.FOOT)).isCloseTo(200 - 5 * flow, within(1e-6));
  }

  @Test
  void refusesWhatIsNoCurve() {
    refused("One point", WELL.with("curve-flows", "10 gpm").with("curve-heads", "150 ft"));
    refused("do not pair", WELL.with("curve-flows", "0; 10; 20 gpm"));
    refused("does not fall", WELL.with("curve-heads", "100; 200 ft"));
    refused("does not fall", WELL.with("curve-flows", "20; 20 gpm"));
  }

  @Test
  void saysWhereThePumpIsTooWeakOrTooStrong() {
    refused("never stop", WELL.with("cut-out", "70 psi"));
    refused("end of its curve", WELL.with("curve-heads", "400; 350 ft"));
    refused("Cut-out must be above", WELL.with("cut-out", "30 psi"));
  }

  @Test
  void betweenLaminarAndTurbulentFrictionIsRefused() {
    Body pipe = Body.of("rate", "5 gpm", "pipe-inside", "4.026 in", "pipe-length", "100 ft");
    assertThatThrownBy(() -> PipeFriction.RECKONING.of(Inputs.of(pipe)))
        .isInstanceOf(NotReckonable.class).hasMessageContaining("between 2300 and 4000");
  }

  private static void refused(String words, Body body) {
    assertThatThrownBy(() -> OperatingPoint.RECKONING.of(Inputs.of(body)))
        .isInstanceOf(NotReckonable.class).hasMessageContaining(words);
  }
}
