package steening.stage.test;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import steening.finding.Expectation;
import steening.language.Phrase;
import steening.number.Elementary;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.reckoning.Outcome;
import steening.reckoning.Term;
import steening.stage.test.LevelReadings.LevelReading;
import steening.well.CasingString;
import steening.well.DepthFrom;
import steening.well.Plan;
import steening.well.PumpingTest;
import steening.well.Well;

/** The next number on the tape, before it is read. */
final class TestExpectations {
  /** The minutes at which levels are customarily read, closer together at first (common practice, no source). */
  private static final int[] SCHEDULE =
      {1, 2, 3, 4, 5, 6, 8, 10, 15, 20, 30, 45, 60, 90, 120, 180, 240, 300, 360, 480, 600, 720, 1440, 2880, 4320};

  /** With fewer readings beyond the two that make a line, its scatter is not known. */
  private static final int FEWEST_FOR_BAND = 4;

  private TestExpectations() {}

  static List<Expectation> of(Well well) {
    RunReckoned reckoned = RunReckoned.of(well);
    Run run = reckoned.run();
    if (run.rest().isEmpty() || well.get(PumpingTest.PART).stopped().isPresent()) return List.of();
    return run.pumping().isEmpty() ? fromNeighbours(well, run) : fromLine(well, reckoned);
  }

  private static List<Expectation> fromNeighbours(Well well, Run run) {
    Optional<Neighbours> neighbours = Neighbours.of(well);
    Optional<Quantity> rate = run.rate().isPresent() ? run.rate().map(q -> q) : well.get(Plan.PART).rate().map(q -> q);
    if (neighbours.isEmpty() || rate.isEmpty()) return List.of();
    Outcome outcome = neighbours.get().drawdown(rate.get());
    Length drawdown = (Length) outcome.quantity("drawdown");
    // One spread either way is a factor; the band is its larger side.
    Optional<Figure> band = neighbours.get().spread()
        .map(s -> new Figure(Length.ofMetres(drawdown.coherent() * (s - 1)), Scale.DEPTH));
    Phrase what = Phrase.of(
        "drawdown at the neighbours' specific capacity", "abatimiento con el caudal específico de los vecinos");
    return List.of(new Expectation(what, outcome.figure("drawdown"), band, outcome));
  }

  private static List<Expectation> fromLine(Well well, RunReckoned reckoned) {
    Run run = reckoned.run();
    double last = run.last().orElseThrow().minutes();
    Optional<Outcome> settled = reckoned.line();
    Optional<Outcome> line = settled.isPresent() ? settled : reckoned.line(0);
    int next = next(last);
    if (line.isEmpty() || next == 0) return List.of();
    LevelReading latest = run.last().get().reading();
    Optional<Length> rest = asRead(well, run.rest().get(), latest.from());
    if (rest.isEmpty()) return List.of();
    Term start = line.get().term(ConstantRateTest.START.name());
    Term slope = line.get().term(ConstantRateTest.SLOPE.name());
    Term minutes = Term.given("t", Phrase.of("minutes since the start", "minutos desde el arranque"), Scale.MINUTES,
        Window.quantity(next));
    Term drawdown = start.plus(slope.times(minutes.log10())).named("s", SpecificCapacity.DRAWDOWN.label(), Scale.DEPTH);
    Term from = Term.given(
        "z₀", Phrase.of("static water level, {0}", "nivel estático, {0}", TestWords.from(latest.from())), Scale.DEPTH,
        rest.get());
    Term level = from.plus(drawdown).named("z", TestEntries.PUMPING.label(), Scale.DEPTH);
    Outcome outcome = new Outcome(Map.of(), line.get().remarks()).with("level", level);
    Phrase what = Phrase.of(
        "pumping water level at {0}, {1}", "nivel dinámico a {0}, {1}", Window.minutes(next),
        TestWords.from(latest.from()));
    Optional<Figure> band = settled.isPresent() ? band(run.since(reckoned.firstTrue()), line.get(), next)
        : Optional.empty();
    return List.of(new Expectation(what, outcome.figure("level"), band, outcome));
  }

  private static int next(double minutes) {
    for (int at : SCHEDULE) if (at > minutes) return at;
    return 0;
  }

  /** The level at rest as the tape would show it from a point. */
  private static Optional<Length> asRead(Well well, LevelReading rest, DepthFrom from) {
    Length depth = rest.depth().orElseThrow();
    return from == DepthFrom.GROUND ? Optional.of(depth) : well.get(CasingString.PART).stickUp().map(depth::plus);
  }

  /** Twice the standard error of one more reading, from the scatter of those before. */
  private static Optional<Figure> band(List<Run.Drawdown> used, Outcome line, double minutes) {
    int n = used.size();
    if (n < FEWEST_FOR_BAND) return Optional.empty();
    double start = line.quantity(ConstantRateTest.START.name()).coherent();
    double slope = line.quantity(ConstantRateTest.SLOPE.name()).coherent();
    double sumX = 0;
    double squares = 0;
    List<Double> logs = new ArrayList<>();
    for (Run.Drawdown one : used) {
      double x = Elementary.log10(one.minutes());
      double miss = one.size().coherent() - start - slope * x;
      sumX += x;
      squares += miss * miss;
      logs.add(x);
    }
    double mean = sumX / n;
    double across = 0;
    for (double x : logs) across += (x - mean) * (x - mean);
    double away = Elementary.log10(minutes) - mean;
    double error = Elementary.sqrt(squares / (n - 2) * (1 + 1.0 / n + away * away / across));
    return Optional.of(new Figure(Length.ofMetres(2 * error), Scale.DEPTH));
  }
}
