package steening.well;

import java.util.Optional;
import steening.journal.Moment;
import steening.quantity.FlowRate;
import steening.quantity.Length;

/**
 * Water levels that hold for the well.
 *
 * @param atRest the static water level as last measured
 * @param pumping the deepest pumping level of the test
 */
public record Levels(Optional<Level> atRest, Optional<Level> pumping) {
  public static final Part<Levels> PART = Part.ofHole("levels", new Levels(Optional.empty(), Optional.empty()));

  /**
   * One level.
   *
   * @param depth below ground; negative where the water stands above it
   * @param from the point it was read from
   * @param rate what the well was giving; zero at rest
   */
  public record Level(Length depth, DepthFrom from, FlowRate rate, Moment at, String entry) {}

  public Levels rest(Level level) {
    return new Levels(Optional.of(level), pumping);
  }

  public Levels pumping(Level level) {
    return new Levels(atRest, Optional.of(level));
  }
}
