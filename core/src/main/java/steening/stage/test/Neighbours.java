package steening.stage.test;

import java.util.Optional;
import steening.language.Phrase;
import steening.number.Elementary;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.reckoning.Coefficient;
import steening.reckoning.Outcome;
import steening.reckoning.Term;
import steening.well.Site;
import steening.well.Well;

/**
 * What the wells around give, as a scale to hold this one to: logarithms of specific capacity spread evenly round their
 * median. Source: common practice, no source.
 *
 * @param median of the neighbours' specific capacities
 * @param spread geometric standard deviation, above one
 */
record Neighbours(Quantity median, Optional<Double> spread) {
  /** So many spreads from the median is taken for a slip rather than a rare well. */
  static final double FAR = 3;

  static Optional<Neighbours> of(Well well) {
    return well.get(Site.PART).place().flatMap(place -> place.neighboursSpecificCapacity()
        .filter(q -> q.coherent() > 0)
        .map(q -> new Neighbours(q, place.neighboursSpread().map(Quantity::coherent).filter(s -> s > 1))));
  }

  /** How many spreads away: z = ln(q / median) / ln(spread). */
  Optional<Double> distance(Quantity capacity) {
    if (!(capacity.coherent() > 0)) return Optional.empty();
    return spread.map(s -> Elementary.ln(capacity.coherent() / median.coherent()) / Elementary.ln(s));
  }

  /** The drawdown to expect at a rate: s = Q / q. */
  Outcome drawdown(Quantity rate) {
    Term flow = Term.given("Q", TestEntries.RATE.label(), Scale.FLOW, rate);
    Term capacity = Term.given(
        "q", Phrase.of("neighbours' median specific capacity", "mediana del caudal específico de los vecinos"),
        Scale.SPECIFIC_CAPACITY, median);
    Term drawdown = Coefficient.giving(Scale.DEPTH, 1).of(Scale.FLOW).of(Scale.SPECIFIC_CAPACITY, -1).term()
        .times(flow).over(capacity);
    return Outcome.empty().with("drawdown", drawdown.named("s", SpecificCapacity.DRAWDOWN.label(), Scale.DEPTH));
  }
}
