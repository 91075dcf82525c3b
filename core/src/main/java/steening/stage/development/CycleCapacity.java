package steening.stage.development;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.language.Phrase;
import steening.quantity.FlowRate;
import steening.quantity.Length;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.reckoning.Coefficient;
import steening.reckoning.Outcome;
import steening.reckoning.Term;
import steening.well.Levels;
import steening.well.Well;

/**
 * Specific capacity cycle by cycle: q = Q / (z − z₀). A well that still opens up gives more for each foot each time.
 *
 * @param cycle it was read in
 * @param working with the answer {@code specific-capacity}
 */
record CycleCapacity(Development.Cycle cycle, Outcome working) {
  static List<CycleCapacity> all(Well well) {
    Optional<Length> rest = well.get(Levels.PART).atRest().map(Levels.Level::depth);
    List<CycleCapacity> all = new ArrayList<>();
    if (rest.isEmpty()) return all;
    for (Development.Cycle cycle : well.get(Development.PART).cycles()) {
      boolean drawn = cycle.level().filter(l -> l.isMoreThan(rest.get())).isPresent();
      if (!drawn || cycle.rate().isEmpty()) continue;
      all.add(new CycleCapacity(cycle, of(cycle.rate().get(), cycle.level().get(), rest.get())));
    }
    return all;
  }

  Quantity size() {
    return working.quantity("specific-capacity");
  }

  private static Outcome of(FlowRate rate, Length level, Length rest) {
    Term flow = Term.given("Q", DevelopmentEntries.RATE.label(), Scale.FLOW, rate);
    Term pumping = Term.given("z", DevelopmentEntries.LEVEL.label(), Scale.DEPTH, level);
    Term still = Term.given("z₀", Phrase.of("static water level", "nivel estático"), Scale.DEPTH, rest);
    Term capacity = Coefficient.giving(Scale.SPECIFIC_CAPACITY, 1).of(Scale.FLOW).of(Scale.DEPTH, -1).term()
        .times(flow).over(pumping.minus(still));
    return Outcome.empty().with(
        "specific-capacity",
        capacity.named("q", Phrase.of("specific capacity", "caudal específico"), Scale.SPECIFIC_CAPACITY));
  }
}
