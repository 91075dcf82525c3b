package steening.stage.pack;

import java.util.List;
import java.util.Optional;
import steening.bore.Annulus;
import steening.bore.UsualOverbreak;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.quantity.Volume;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.reckoning.Term;
import steening.well.CasingString;
import steening.well.DepthFrom;
import steening.well.Fill;
import steening.well.OnTruck;
import steening.well.Plan;
import steening.well.Screen;
import steening.well.UsualGround;
import steening.well.Well;
import steening.well.WellAnnulus;

/**
 * The pack of a well as it goes in.
 *
 * @param bottom where it starts: as sounded before the first bag, else the bottom of the hole
 * @param sounded whether that was sounded
 * @param usual what the ground takes before anything went in
 */
record Pouring(
    Annulus annulus, Length bottom, boolean sounded, Fill pack, Plan plan, CasingString string, UsualOverbreak usual,
    OnTruck truck) {
  /** None while neither a hole nor a plan of one is known. */
  static Optional<Pouring> of(Well well) {
    Annulus annulus = WellAnnulus.of(well);
    Fill pack = well.get(Fill.PACK);
    if (annulus.hole().isEmpty() || !annulus.hole().bottom().isMoreThan(Length.ZERO)) return Optional.empty();
    List<Fill.Tag> before = pack.tags().stream().filter(t -> t.bags() == 0).toList();
    boolean sounded = !before.isEmpty();
    // A tape that goes a hair below the drilled depth must not leave the pack without a hole.
    Length drilled = annulus.hole().bottom();
    Length bottom = sounded ? before.get(before.size() - 1).depth().min(drilled) : drilled;
    return Optional.of(new Pouring(
        annulus, bottom, sounded, pack, well.get(Plan.PART), well.get(CasingString.PART), UsualGround.of(well),
        well.get(OnTruck.PART)));
  }

  /** All of it up to a tag. */
  Run upTo(Fill.Tag tag) {
    return new Run(annulus, bottom, sounded, volume(tag.bags(), tag.poured(), 0, Volume.NONE));
  }

  /** All of it, and so many bags more. */
  Run with(int more) {
    return new Run(annulus, bottom, sounded, volume(pack.bags(), pack.volume(), more, nextBag()));
  }

  /** What went in between a tag and the last one at a smaller count of bags; none where that is the first of all. */
  Optional<Run> since(Fill.Tag tag) {
    return before(tag).map(b -> between(b, tag));
  }

  /** What went in between two tags. */
  Run between(Fill.Tag from, Fill.Tag to) {
    Volume put = to.poured().minus(from.poured());
    return new Run(annulus, from.depth(), true, volume(to.bags() - from.bags(), put, 0, Volume.NONE));
  }

  /** From the bottom where nothing was sounded in between. */
  Run lately(Fill.Tag tag) {
    return since(tag).orElseGet(() -> upTo(tag));
  }

  /** The last tag at a smaller count of bags. */
  Optional<Fill.Tag> before(Fill.Tag tag) {
    return pack.tags().stream().filter(t -> t.bags() < tag.bags() && !t.at().isAfter(tag.at())).reduce((a, b) -> b);
  }

  /** As of the last lot, else as planned. */
  Volume nextBag() {
    List<Fill.Pour> pours = pack.pours();
    return pours.isEmpty() ? plan.bagVolume() : pours.get(pours.size() - 1).bag();
  }

  /** How much one more bag would raise the pack where it stands; none where that is not known. */
  Optional<Length> lastBagHeight() {
    Term bag = Term.given("b", PackBags.BAG_VOLUME.label(), Scale.VOLUME, nextBag());
    return pack.top().flatMap(top -> Outcome.ifReckonable(() -> Outcome.empty()
            .with("top", annulus.top("z", ExpectedTape.TAPE.label(), top, bag)))
        .map(o -> top.minus((Length) o.quantity("top"))));
  }

  /** The stick-up, while the tape is read from the top of casing. */
  Optional<Length> readFromCasing() {
    return pack.lastTag().filter(t -> t.from() == DepthFrom.TOP_OF_CASING).flatMap(t -> string.stickUp());
  }

  Optional<Length> screenTop() {
    return string.screenTop().or(() -> plan.length(Plan.SCREEN_TOP));
  }

  Optional<Length> screenBottom() {
    return string.screens().stream().map(Screen::bottom).max(Length::compareTo)
        .or(() -> plan.length(Plan.SCREEN_BOTTOM));
  }

  Optional<Length> plannedTop() {
    return plan.length(Plan.PACK_TOP);
  }

  private Term volume(int bags, Volume volume, int more, Volume bag) {
    boolean alike = pack.pours().stream().allMatch(p -> alike(p.bag(), pack.pours().get(0).bag()))
        && (more == 0 || bags == 0 || alike(bag, pack.pours().get(0).bag()));
    if (!alike) return Term.given("V", ExpectedTape.POURED, Scale.VOLUME, volume.plus(bag.times(more)));
    Volume each = bags == 0 ? bag : volume.times(1.0 / bags);
    return ExpectedTape.poured(
        Inputs.count("n", PackBags.BAGS.label(), bags + more),
        Term.given("b", PackBags.BAG_VOLUME.label(), Scale.VOLUME, each));
  }

  /** Apart by less than the rounding of a division. */
  private static boolean alike(Volume one, Volume other) {
    return Math.abs(one.cubicMetres() - other.cubicMetres()) <= 1e-9 * other.cubicMetres();
  }
}
