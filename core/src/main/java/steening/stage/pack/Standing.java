package steening.stage.pack;

import java.util.Optional;
import steening.bore.BagsLeft;
import steening.bore.Overbreak;
import steening.bore.Taken;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.reckoning.Term;
import steening.well.Fill;

/** Soundings that stand: possible ones, with no bridge under them. What they tell of the hole, and of the bags left. */
final class Standing {
  /** A stretch left that is no longer than this is done, as a tape reads it. */
  private static final Length DONE = Length.feet(1);

  private Standing() {}

  /** The last of all. */
  static Optional<Fill.Tag> last(Pouring pouring) {
    return before(pouring, Integer.MAX_VALUE);
  }

  /** The last one at a smaller count of bags. */
  static Optional<Fill.Tag> before(Pouring pouring, Fill.Tag tag) {
    return before(pouring, tag.bags());
  }

  private static Optional<Fill.Tag> before(Pouring pouring, int bags) {
    Optional<Fill.Tag> stood = Optional.empty();
    for (Fill.Tag tag : pouring.pack().tags()) {
      if (tag.bags() == 0 || tag.bags() >= bags || !isPossible(pouring, tag)) continue;
      // A later reading at the same count is held against what stood below both.
      Optional<Fill.Tag> below = stood.filter(s -> s.bags() < tag.bags());
      if (Bridge.under(pouring, tag, below).isEmpty()) stood = Optional.of(tag);
    }
    return stood;
  }

  private static boolean isPossible(Pouring pouring, Fill.Tag tag) {
    return !tag.depth().isLessThan(Length.ZERO) && tag.depth().isLessThan(pouring.bottom());
  }

  /** What the hole took up to a tag; as the ground usually takes it where there is none. */
  static Overbreak hole(Pouring pouring, Optional<Fill.Tag> stood) {
    Overbreak usually = Overbreak.usually(pouring.usual());
    return stood.map(t -> usually.having(new Taken(
            pouring.annulus(), t.depth(), pouring.bottom(), pouring.sounded(), pouring.upTo(t).volume())))
        .orElse(usually);
  }

  /** Bags from the last standing sounding, or from the bottom, to the planned top; none where nothing is left. */
  static Optional<Outcome> bagsLeft(Pouring pouring) {
    if (pouring.plannedTop().isEmpty()) return Optional.empty();
    Length to = pouring.plannedTop().get();
    Optional<Fill.Tag> stood = last(pouring);
    Length from = stood.map(Fill.Tag::depth).orElse(pouring.bottom());
    if (!from.minus(to).isMoreThan(DONE)) return Optional.empty();
    Term bag = Term.given("b", PackBags.BAG_VOLUME.label(), Scale.VOLUME, pouring.nextBag());
    Term since = Inputs.count(
        "i", TruckFindings.SINCE, pouring.pack().bags() - stood.map(Fill.Tag::bags).orElse(0));
    return Outcome.ifReckonable(
        () -> BagsLeft.of(hole(pouring, stood), pouring.annulus(), to, from, bag, since));
  }
}
