package steening.stage.sample;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import steening.language.Phrase;
import steening.language.Shown;
import steening.quantity.Figure;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.stage.Sheet;

/** What the laboratory found beside the limits, what a treatment would have to take out, and how hard the water is. */
final class LimitTable {
  private static final Phrase NONE = Phrase.same("–");

  private LimitTable() {}

  static Sheet added(Sheet sheet, Samples samples) {
    List<List<Shown>> rows = new ArrayList<>();
    for (Constituent constituent : Constituent.values()) {
      Optional<Quantity> found = samples.testedFor(constituent).flatMap(r -> r.amount(constituent));
      if (found.isEmpty()) continue;
      for (Limit limit : constituent.limits) rows.add(row(constituent, found.get(), limit));
    }
    Sheet so = rows.isEmpty() ? sheet : sheet.table(
        Phrase.of(
            "Beside the federal limits of public systems: for a private well a guide; state and local rules may be"
                + " stricter, the current text decides",
            "Junto a los límites federales de sistemas públicos: para un pozo privado, una guía; las reglas estatales"
                + " y locales pueden ser más estrictas, decide el texto vigente"),
        List.of(
            Phrase.of("what", "qué"), Phrase.of("found", "hallado"), Phrase.of("limit", "límite"),
            Phrase.of("sort of limit", "clase de límite"), ShareToRemove.SHARE.label(),
            Phrase.of("source", "fuente"), Phrase.of("as of", "vigente a")),
        rows);
    return nature(so, samples);
  }

  private static List<Shown> row(Constituent constituent, Quantity found, Limit limit) {
    Figure bound = new Figure(limit.bound(), constituent.scale());
    Optional<Outcome> share = constituent.scale() == Scale.NUMBER || !limit.isBrokenBy(found)
        ? Optional.empty() : ShareToRemove.of(found, limit.bound());
    return List.of(
        constituent.field.label(),
        new Figure(found, constituent.scale()),
        limit.isLeast()
            ? Phrase.of("at least {0}", "al menos {0}", bound)
            : Phrase.of("{0} at most", "máx. {0}", bound),
        limit.rank().label,
        share.<Shown>map(o -> o.figure(ShareToRemove.SHARE.name())).orElse(NONE),
        Phrase.same(limit.citation()),
        limit.asOf());
  }

  /** Hardness and the Langelier index of the last sample that gives what they need. */
  private static Sheet nature(Sheet sheet, Samples samples) {
    Sheet so = sheet;
    Optional<Outcome> hardness = last(samples, LimitTable::hardness);
    if (hardness.isPresent()) {
      Outcome outcome = hardness.get();
      so = so.line(Hardness.HARDNESS.label(), outcome.figure(Hardness.HARDNESS.name()), outcome)
          .line(Hardness.CLASS.label(), outcome.shown(Hardness.CLASS.name()).orElse(NONE));
    }
    Optional<Outcome> index = last(samples, LimitTable::index);
    if (index.isEmpty()) return so;
    return so.line(LangelierIndex.INDEX.label(), index.get().figure(LangelierIndex.INDEX.name()), index.get())
        .line(LangelierIndex.TENDENCY.label(), index.get().shown(LangelierIndex.TENDENCY.name()).orElse(NONE));
  }

  private static Optional<Outcome> last(Samples samples, Function<Sample.Result, Optional<Outcome>> method) {
    return samples.results().stream().map(method).flatMap(Optional::stream).reduce((a, b) -> b);
  }

  private static Optional<Outcome> hardness(Sample.Result result) {
    return Outcome.ifReckonable(() -> Hardness.RECKONING.of(Inputs.of(result.found())));
  }

  /** The laboratory gives calcium as such; the index wants it as calcium carbonate. */
  private static Optional<Outcome> index(Sample.Result result) {
    Optional<Quantity> calcium = Hardness.CALCIUM.in(result.found());
    boolean whole = LangelierIndex.PH.isIn(result.found()) && LangelierIndex.TEMPERATURE.isIn(result.found())
        && LangelierIndex.SOLIDS.isIn(result.found()) && LangelierIndex.ALKALINITY.isIn(result.found());
    if (calcium.isEmpty() || !whole) return Optional.empty();
    double carbonate = Hardness.CARBONATE_TO_CALCIUM * calcium.get().in(Unit.MILLIGRAM_PER_LITRE);
    return Outcome.ifReckonable(() -> LangelierIndex.RECKONING.of(Inputs.of(result.found())
        .with(LangelierIndex.CALCIUM, Measure.of(carbonate, Unit.MILLIGRAM_PER_LITRE))));
  }
}
