package steening.stage.development;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.journal.Moment;
import steening.language.Phrase;
import steening.quantity.Dimension;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.reckoning.Term;

/**
 * The sand content of the last cycles, and their mean.
 *
 * <p>Limit 5 mg/L for domestic wells: EPA Manual of Water Well Construction Practices 1975 (memory); as the mean of
 * five samples, US Army Corps EP 1110-1-27 (seen).
 */
final class SandReadings {
  static final Quantity LIMIT = new Measure(Dimension.CONCENTRATION, Unit.MILLIGRAM_PER_LITRE.toCoherent(5));

  static final int MANY = 5;

  private static final String[] SUBSCRIPTS = {"₁", "₂", "₃", "₄", "₅"};

  private SandReadings() {}

  /** The last five at most, up to a moment where one is given. */
  static List<Development.Cycle> last(Development development, Optional<Moment> until) {
    List<Development.Cycle> all = development.withSand().stream()
        .filter(c -> until.isEmpty() || !c.at().isAfter(until.get()))
        .filter(c -> c.water().coherent() > 0)
        .toList();
    return all.subList(Math.max(0, all.size() - MANY), all.size());
  }

  static Outcome content(Development.Cycle cycle) {
    return SandContent.RECKONING.of(
        Inputs.none().with(SandContent.SAND, cycle.settled().orElseThrow()).with(SandContent.WATER, cycle.water()));
  }

  /** The mean of at least one. */
  static Outcome mean(List<Development.Cycle> cycles) {
    List<Term> contents = new ArrayList<>();
    for (int i = 0; i < cycles.size(); i++) {
      Term sand = Term.given("v" + SUBSCRIPTS[i], SandContent.SAND.label(), Scale.SETTLED_SAND,
          cycles.get(i).settled().orElseThrow());
      Term water = Term.given("V" + SUBSCRIPTS[i], SandContent.WATER.label(), Scale.LIQUID, cycles.get(i).water());
      contents.add(SandContent.of(sand, water)
          .named("c" + SUBSCRIPTS[i], SandContent.CONTENT.label(), Scale.CONCENTRATION));
    }
    Term mean = Term.sum(contents).over(cycles.size())
        .named("c", Phrase.of("mean of the last readings", "media de las últimas lecturas"), Scale.CONCENTRATION);
    return Outcome.empty().with("mean", mean);
  }
}
