package steening.stage.pack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * What bridges, soundings and forecasts come to over 2,000 invented wells; the table stands in docs/coverage.md. The
 * constants were chosen on seed 20260512, so this is another one. More wells, other seeds and other ground with
 * {@code -Dsteening.calibration.wells=20000 -Dsteening.calibration.seed=8 -Dsteening.calibration.breakaway=0.25}.
 */
class CalibrationTest {
  private static final long SEED = 7;
  private static final int WELLS = 2000;
  private static final double USUAL_BREAKAWAY = 0.12;

  @Test
  void bridgesAreCaughtSoundPacksLeftAloneAndBandsHoldWhatTheySay() {
    int wells = Integer.getInteger("steening.calibration.wells", WELLS);
    double breakaway =
        Double.parseDouble(System.getProperty("steening.calibration.breakaway", "" + USUAL_BREAKAWAY));
    long seed = Long.getLong("steening.calibration.seed", SEED);
    int earlier = Integer.getInteger("steening.calibration.earlier", 0);
    Calibration calibration = Calibration.of(seed, wells, breakaway, earlier);
    System.out.println("seed " + seed + ", " + wells + " wells, breakaway " + breakaway + ", " + earlier
        + " earlier wells\n" + calibration);
    if (earlier != 0 || breakaway != USUAL_BREAKAWAY || seed != SEED || wells != WELLS) return;
    assertThat(calibration.longBridges).isGreaterThan(wells / 10);
    assertThat(calibration.longCaughtShare()).isGreaterThan(0.98);
    assertThat(calibration.falseShare()).isLessThan(0.005);
    // What was reached. The band for 50 holds more than it says; it was not tuned on this seed.
    assertThat(calibration.held(1)).isCloseTo(53.5, within(0.5));
    assertThat(calibration.held(2)).isCloseTo(81.4, within(0.5));
    assertThat(calibration.held(3)).isCloseTo(90.0, within(0.5));
    assertThat(calibration.held(4)).isCloseTo(88.8, within(0.5));
  }
}
