package steening.well;

import java.util.Optional;
import org.pcollections.PVector;
import org.pcollections.TreePVector;
import steening.journal.Moment;
import steening.quantity.FlowRate;
import steening.quantity.Length;

/**
 * A constant-rate test.
 *
 * @param rate what was pumped
 * @param started when the pump was started
 * @param stopped when it was stopped
 * @param readings while pumping, in order of elapsed time
 * @param recovery after the stop, in order of elapsed time since the stop
 */
public record PumpingTest(
    Optional<FlowRate> rate,
    Optional<Moment> started,
    Optional<Moment> stopped,
    PVector<Reading> readings,
    PVector<Reading> recovery) {
  public static final Part<PumpingTest> PART = Part.ofHole(
      "test",
      new PumpingTest(
          Optional.empty(), Optional.empty(), Optional.empty(), TreePVector.empty(), TreePVector.empty()));

  /**
   * One level.
   *
   * @param minutes since the pump was started, or, in recovery, stopped
   * @param depth below ground
   * @param from the point it was read from
   */
  public record Reading(double minutes, Length depth, DepthFrom from, String entry) {}

  public PumpingTest started(FlowRate rate, Moment at) {
    return new PumpingTest(Optional.of(rate), Optional.of(at), stopped, readings, recovery);
  }

  public PumpingTest stopped(Moment at) {
    return new PumpingTest(rate, started, Optional.of(at), readings, recovery);
  }

  public PumpingTest read(Reading reading) {
    return new PumpingTest(rate, started, stopped, and(readings, reading), recovery);
  }

  public PumpingTest recovered(Reading reading) {
    return new PumpingTest(rate, started, stopped, readings, and(recovery, reading));
  }

  /** Behind all that were not read later: nearly always at the end, so the search begins there. */
  private static PVector<Reading> and(PVector<Reading> readings, Reading reading) {
    int place = readings.size();
    while (place > 0 && Double.compare(readings.get(place - 1).minutes(), reading.minutes()) > 0) place--;
    return readings.plus(place, reading);
  }
}
