package steening.stage.test;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.quantity.Length;
import steening.quantity.Quantity;
import steening.quantity.Unit;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.well.CasingString;
import steening.well.Plan;
import steening.well.PumpingTest;
import steening.well.Well;

/** What the reckonings of this room make of the run on a well, each absent where too little is known. */
record RunReckoned(Run run, Optional<Length> inside, double pumped) {
  static RunReckoned of(Well well) {
    Run run = Run.of(well);
    Optional<Length> inside = well.get(CasingString.PART).inside();
    PumpingTest test = well.get(PumpingTest.PART);
    double read = run.last().map(Run.Drawdown::minutes).orElse(0.0);
    double clocked = test.started().flatMap(a -> test.stopped().map(b -> b.minutesSince(a))).orElse(0.0);
    return new RunReckoned(run, inside.isPresent() ? inside : well.get(Plan.PART).casingInside(),
        Math.max(read, clocked));
  }

  /** At the last reading. */
  Optional<Outcome> capacity() {
    Optional<Run.Drawdown> last = run.last().filter(d -> d.size().isMoreThan(Length.ZERO));
    if (last.isEmpty() || run.rate().isEmpty()) return Optional.empty();
    return Outcome.ifReckonable(() -> SpecificCapacity.RECKONING.of(Inputs.none()
        .with(SpecificCapacity.RATE, run.rate().get()).with(SpecificCapacity.DRAWDOWN, last.get().size())));
  }

  Optional<Outcome> storage() {
    Optional<Outcome> capacity = capacity();
    if (capacity.isEmpty() || inside.isEmpty()) return Optional.empty();
    return Outcome.ifReckonable(() -> CasingStorageTime.RECKONING.of(Inputs.none()
        .with(CasingStorageTime.INSIDE, inside.get())
        .with(CasingStorageTime.CAPACITY, capacity.get().quantity(SpecificCapacity.CAPACITY.name()))));
  }

  /** The minute from which levels tell of the aquifer; the first, where the casing is not known. */
  double firstTrue() {
    return storage().map(o -> o.quantity(CasingStorageTime.TIME.name()).in(Unit.MINUTE)).orElse(0.0);
  }

  /** The line through the readings from a minute on. */
  Optional<Outcome> line(double from) {
    List<Run.Drawdown> used = run.since(from);
    if (used.size() < 2 || run.rate().isEmpty()) return Optional.empty();
    return Outcome.ifReckonable(() -> ConstantRateTest.RECKONING.of(series(
        Inputs.none().with(ConstantRateTest.RATE, run.rate().get()).with(ConstantRateTest.FROM, Window.quantity(from)),
        run.pumping())));
  }

  Optional<Outcome> line() {
    return line(firstTrue());
  }

  /** After a hundred days at this rate. */
  Optional<Outcome> longTerm() {
    Optional<Outcome> line = line();
    Optional<Run.Drawdown> last = run.last();
    if (line.isEmpty() || last.isEmpty()) return Optional.empty();
    return Outcome.ifReckonable(() -> LongTermDrawdown.RECKONING.of(Inputs.none()
        .with(LongTermDrawdown.DRAWDOWN, last.get().size())
        .with(LongTermDrawdown.MINUTES, Window.quantity(last.get().minutes()))
        .with(LongTermDrawdown.SLOPE, line.get().quantity(ConstantRateTest.SLOPE.name()))));
  }

  /** The casing fills again as slowly as it gave its water, so the same minutes are left out. */
  Optional<Outcome> recovery() {
    if (run.recovery().size() < 2 || run.rate().isEmpty() || !(pumped > 0)) return Optional.empty();
    List<Quantity> times = new ArrayList<>();
    List<Quantity> residuals = new ArrayList<>();
    for (Run.Drawdown one : run.recovery()) {
      times.add(Window.quantity(one.minutes()));
      residuals.add(one.size());
    }
    return Outcome.ifReckonable(() -> RecoveryTest.RECKONING.of(Inputs.none()
        .with(RecoveryTest.RATE, run.rate().get()).with(RecoveryTest.PUMPED, Window.quantity(pumped))
        .with(Window.FROM, Window.quantity(firstTrue()))
        .with(RecoveryTest.TIMES, times).with(RecoveryTest.RESIDUALS, residuals)));
  }

  private static Inputs series(Inputs inputs, List<Run.Drawdown> drawdowns) {
    List<Quantity> times = new ArrayList<>();
    List<Quantity> sizes = new ArrayList<>();
    for (Run.Drawdown one : drawdowns) {
      times.add(Window.quantity(one.minutes()));
      sizes.add(one.size());
    }
    return inputs.with(ConstantRateTest.TIMES, times).with(ConstantRateTest.DRAWDOWNS, sizes);
  }
}
