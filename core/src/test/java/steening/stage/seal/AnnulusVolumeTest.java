package steening.stage.seal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import steening.journal.Body;
import steening.quantity.Unit;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;

class AnnulusVolumeTest {
  /** Published volumes per foot around a pipe of 4.5 in; construction tables, file C08_volume_per_foot.csv (seen). */
  @ParameterizedTest
  @CsvSource({"7 7/8 in, 0.2278", "8 in, 0.2386", "8 3/4 in, 0.3071", "9 in, 0.3313", "10 in, 0.4350"})
  void holdsWhatTheHandbookSaysPerFoot(String hole, double cubicFeetPerFoot) {
    assertThat(volume(hole, "0 ft", "1 ft")).isCloseTo(cubicFeetPerFoot, within(0.00005));
  }

  @Test
  void sumsTheReachesOfAWashedOutHole() {
    String hole = "7 7/8 in to 57 ft; 11.2 in to 63 ft; 7 7/8 in to 142 ft";
    double gauge = volume("7 7/8 in", "0 ft", "100 ft");
    // π/4 (11.2² − 7.875²) × 6 / 144, by hand
    assertThat(volume(hole, "0 ft", "100 ft")).isCloseTo(gauge + 2.0755, within(0.0001));
    assertThat(gauge).isCloseTo(22.78, within(0.005));
  }

  /** A law: where a run is split makes no difference. */
  @ParameterizedTest
  @ValueSource(ints = {1, 37, 57, 60, 63, 99})
  void splittingARunChangesNothing(int at) {
    for (String hole : new String[] {"7 7/8 in", "7 7/8 in to 57 ft; 11.2 in to 63 ft; 7 7/8 in to 142 ft"}) {
      double whole = volume(hole, "0 ft", "100 ft");
      double parts = volume(hole, "0 ft", at + " ft") + volume(hole, at + " ft", "100 ft");
      assertThat(parts).isCloseTo(whole, within(whole * 1e-12));
    }
  }

  @Test
  void doesNotGuessADiameter() {
    assertThatThrownBy(() -> volume("7 7/8 in to 57 ft", "0 ft", "100 ft"))
        .isInstanceOf(NotReckonable.class)
        .hasMessage("The hole's diameter at 57.00 ft is not known.");
  }

  private static double volume(String hole, String from, String to) {
    Body typed = Body.of("hole", hole, "casing", "4.5 in", "from", from, "to", to);
    Outcome outcome = AnnulusVolume.RECKONING.of(Inputs.of(typed));
    return outcome.quantity("volume").in(Unit.CUBIC_FOOT);
  }
}
