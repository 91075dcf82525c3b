package steening.stage.development;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.finding.Expectation;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.reckoning.Term;

/**
 * Sand over pumped time, as far as it was worked in one way.
 *
 * @param all every reading of sand, against the minutes of all cycles up to its end
 * @param last how many of them, counted from the end, belong to the method now at work
 * @param step length of the last cycle with sand
 * @param entries of those that count
 */
record SandCourse(SandSeries all, int last, Quantity step, List<String> entries) {
  private static final int FEWEST = 3;

  /** None before the first reading in a cycle whose length is known. */
  static Optional<SandCourse> of(Development development) {
    List<Quantity> minutes = new ArrayList<>();
    List<Quantity> content = new ArrayList<>();
    List<String> entries = new ArrayList<>();
    String method = "";
    Quantity step = Measure.of(0, Unit.MINUTE);
    double pumped = 0;
    for (Development.Cycle cycle : development.cycles()) {
      String now = cycle.method().map(m -> m.code()).orElse("");
      if (!now.equals(method)) entries.clear();
      method = now;
      double length = cycle.minutes().map(Quantity::coherent).orElse(0.0);
      pumped += length;
      boolean read = length > 0 && cycle.settled().isPresent() && cycle.water().coherent() > 0;
      if (!read) continue;
      step = cycle.minutes().get();
      minutes.add(step.dimension().of(pumped));
      content.add(SandReadings.content(cycle).quantity(SandContent.CONTENT.name()));
      entries.add(cycle.entry());
    }
    if (minutes.isEmpty()) return Optional.empty();
    return Optional.of(new SandCourse(new SandSeries(minutes, content), entries.size(), step, entries));
  }

  /** Those of the method now at work. */
  SandSeries counted() {
    int from = all.size() - last;
    return new SandSeries(all.minutes().subList(from, all.size()), all.content().subList(from, all.size()));
  }

  /** None where there are too few readings. */
  Optional<Outcome> decay() {
    if (last < FEWEST) return Optional.empty();
    SandSeries counted = counted();
    Inputs inputs =
        Inputs.none().with(SandSeries.TIMES, counted.minutes()).with(SandSeries.CONTENTS, counted.content());
    return Outcome.ifReckonable(() -> SandDecay.RECKONING.of(inputs));
  }

  boolean isFound(Phrase found) {
    return decay().filter(o -> found.equals(o.words().get(SandDecay.FOUND.name()))).isPresent();
  }

  /** The next reading, if the sand goes on as it did: f + (c − f) / 2^(d/h). */
  Optional<Expectation> next() {
    Optional<Outcome> decay = decay().filter(o -> o.answers().containsKey(SandDecay.HALF_LIFE.name()));
    if (decay.isEmpty()) return Optional.empty();
    Term floor = decay.get().term(SandDecay.FLOOR.name());
    Quantity latest = all.content().get(all.size() - 1);
    if (latest.coherent() <= floor.quantity().coherent()) return Optional.empty();
    Term more = Term.given("d", DevelopmentEntries.MINUTES.label(), Scale.MINUTES, step);
    Term halves = Term.number(2).power(more.over(decay.get().term(SandDecay.HALF_LIFE.name())));
    Term next = floor.plus(Halving.content("c", latest).minus(floor).over(halves))
        .named("c′", SandContent.CONTENT.label(), Scale.CONCENTRATION);
    if (next.quantity().coherent() < 0) return Optional.empty();
    Outcome outcome = Outcome.empty().with("next", next);
    return Optional.of(new Expectation(
        Phrase.of("sand after another {0} like the last", "arena tras otros {0} como los últimos",
            new Figure(step, Scale.MINUTES)),
        outcome.figure("next"), Optional.empty(), outcome));
  }
}
