package steening.stage.test;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.journal.Moment;
import steening.quantity.FlowRate;
import steening.quantity.Length;
import steening.stage.test.LevelReadings.LevelReading;
import steening.stage.test.LevelReadings.Sort;
import steening.stage.test.gauge.MeasuredRates;
import steening.well.PumpingTest;
import steening.well.Well;

/**
 * One run of the pump: every level beside the level at rest before it.
 *
 * @param rest the last level at rest before the pump was started
 * @param rate what was said at the start, or else the mean of what was measured
 * @param pumping in order of elapsed time; none where there is no level at rest
 * @param recovery likewise, time since the stop
 */
record Run(
    Optional<LevelReading> rest, Optional<FlowRate> rate, List<Drawdown> pumping, List<Drawdown> recovery) {

  /** How far the level stood below the level at rest. */
  record Drawdown(double minutes, Length size, LevelReading reading) {}

  static Run of(Well well) {
    LevelReadings readings = well.get(LevelReadings.PART);
    PumpingTest test = well.get(PumpingTest.PART);
    Optional<LevelReading> rest = rest(readings.of(Sort.AT_REST), test.started());
    return new Run(
        rest,
        test.rate().filter(r -> r.cubicMetresPerSecond() > 0).or(() -> MeasuredRates.mean(well)),
        drawdowns(readings.of(Sort.PUMPING), rest),
        drawdowns(readings.of(Sort.RECOVERY), rest));
  }

  private static Optional<LevelReading> rest(List<LevelReading> atRest, Optional<Moment> started) {
    LevelReading before = null;
    LevelReading any = null;
    for (LevelReading reading : atRest) {
      if (reading.depth().isEmpty()) continue;
      any = reading;
      if (started.isEmpty() || !reading.at().isAfter(started.get())) before = reading;
    }
    return Optional.ofNullable(before == null ? any : before);
  }

  private static List<Drawdown> drawdowns(List<LevelReading> readings, Optional<LevelReading> rest) {
    List<Drawdown> drawdowns = new ArrayList<>();
    if (rest.isEmpty()) return drawdowns;
    for (LevelReading reading : readings) {
      if (reading.depth().isEmpty()) continue;
      drawdowns.add(new Drawdown(reading.minutes(), reading.depth().get().minus(rest.get().depth().get()), reading));
    }
    drawdowns.sort((a, b) -> Double.compare(a.minutes(), b.minutes()));
    return List.copyOf(drawdowns);
  }

  Optional<Drawdown> last() {
    return pumping.isEmpty() ? Optional.empty() : Optional.of(pumping.get(pumping.size() - 1));
  }

  List<Drawdown> since(double minutes) {
    return pumping.stream().filter(d -> d.minutes() > 0 && d.minutes() >= minutes).toList();
  }
}
