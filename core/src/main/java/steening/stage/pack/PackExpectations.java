package steening.stage.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.bore.Bagged;
import steening.bore.BagsLeft;
import steening.finding.Expectation;
import steening.language.Phrase;
import steening.quantity.Length;
import steening.reckoning.Outcome;
import steening.well.Fill;
import steening.well.Well;

/** What the tape should read next, before it is let down. */
final class PackExpectations {
  /** As many bags as may go in before the next reading (common practice, no source). */
  private static final int NEXT_BAGS = 3;

  private PackExpectations() {}

  /** For the bags that are in, where they were not sounded yet or a bridge is to be broken; and for the next three. */
  static List<Expectation> of(Well well) {
    if (well.get(Fill.CHIPS).isBegun() || well.get(Fill.GROUT).isBegun()) return List.of();
    return Pouring.of(well).map(PackExpectations::of).orElse(List.of());
  }

  private static List<Expectation> of(Pouring pouring) {
    List<Expectation> expectations = new ArrayList<>();
    boolean bridged = Bridge.evidence(pouring).isPresent();
    if (pouring.pack().bagsSinceTag() > 0 || bridged) after(pouring, 0, bridged).ifPresent(expectations::add);
    int next = Math.min(NEXT_BAGS, bagsLeft(pouring).orElse(NEXT_BAGS));
    if (next > 0 && !bridged) after(pouring, next, false).ifPresent(expectations::add);
    if (!bridged) Standing.bagsLeft(pouring).ifPresent(o -> expectations.add(left(o)));
    return expectations;
  }

  private static Optional<Expectation> after(Pouring pouring, int more, boolean bridged) {
    Optional<Length> stickUp = pouring.readFromCasing();
    String answer = (stickUp.isPresent() ? ExpectedTape.READING : ExpectedTape.TAPE).name();
    return Outcome.ifReckonable(() -> pouring.with(more).expected(stickUp))
        .map(o -> new Expectation(
            what(pouring.pack().bags() + more, stickUp.isPresent(), bridged),
            o.figure(answer), Optional.of(o.figure(ExpectedTape.BAND.name())), o));
  }

  private static Expectation left(Outcome left) {
    Phrase what = Phrase.of(
        "bags of pack still needed: {0} in the mean, nine times in ten no more than",
        "sacos de filtro que faltan: {0} en promedio, nueve de diez veces no más de",
        Bagged.about(left.quantity(BagsLeft.MEAN.name())));
    return new Expectation(what, left.figure(BagsLeft.WHOLE.name()), Optional.empty(), left);
  }

  private static Phrase what(int bags, boolean fromCasing, boolean bridged) {
    Phrase after = Phrase.of("tape after bag {0}", "sonda tras el saco {0}", Integer.toString(bags));
    Phrase when = bridged ? Phrase.of("{0}, the bridge broken", "{0}, roto el puente", after) : after;
    return fromCasing ? Phrase.of("{0}, from the top of casing", "{0}, desde la boca del ademe", when) : when;
  }

  /** Whole bags from where the pack stands, or should stand, to its planned top; none where that is not known. */
  static Optional<Integer> bagsLeft(Pouring pouring) {
    Optional<Length> now = top(pouring);
    if (now.isEmpty() || pouring.plannedTop().isEmpty()) return Optional.empty();
    if (!now.get().isMoreThan(pouring.plannedTop().get())) return Optional.of(0);
    return toPlannedTop(pouring).map(o -> (int) Math.ceil(o.quantity("bags").coherent()));
  }

  /** What the stretch up to the planned top takes. */
  static Optional<Outcome> toPlannedTop(Pouring pouring) {
    return top(pouring).flatMap(top -> pouring.plannedTop().flatMap(planned -> Outcome.ifReckonable(() ->
        Bagged.of(pouring.annulus(), planned, top, pouring.nextBag(), Bagged.NO_OVERAGE))));
  }

  /** As sounded, or as expected where bags went in since. */
  static Optional<Length> top(Pouring pouring) {
    if (pouring.pack().bagsSinceTag() == 0 && pouring.pack().top().isPresent()) {
      return pouring.pack().top().map(top -> top.min(pouring.annulus().hole().bottom()));
    }
    return Outcome.ifReckonable(() -> pouring.with(0).expected(Optional.empty()))
        .map(o -> (Length) o.quantity(ExpectedTape.TAPE.name()));
  }
}
