package steening.well;

import java.util.List;
import java.util.Optional;
import steening.bore.Annulus;
import steening.quantity.Length;
import steening.quantity.Volume;

/**
 * What a stretch of a well's annulus took, between where it was put in and where it was sounded.
 *
 * @param sounded whether the bottom was found by a tape too
 */
public record Took(Annulus annulus, Length top, Length bottom, boolean sounded, Volume volume) {

  /** The pack and the chips on it, as far up as both were sounded after the last bag; none while that was not done. */
  public static Optional<Took> pack(Well well) {
    Fill pack = well.get(Fill.PACK);
    Annulus annulus = WellAnnulus.of(well);
    Optional<Length> top = settled(pack);
    if (top.isEmpty() || annulus.hole().isEmpty()) return Optional.empty();
    List<Length> before = pack.tags().stream().filter(t -> t.bags() == 0).map(Fill.Tag::depth).toList();
    Length drilled = annulus.hole().bottom();
    Length bottom = before.isEmpty() ? drilled : before.get(before.size() - 1).min(drilled);
    Fill chips = well.get(Fill.CHIPS);
    Optional<Length> chipsTop = settled(chips).filter(t -> t.isLessThan(top.get()));
    Volume volume = chipsTop.isPresent() ? pack.volume().plus(chips.volume()) : pack.volume();
    return stretch(annulus, chipsTop.orElse(top.get()), bottom, !before.isEmpty(), volume);
  }

  /** The grout, from what it was pumped on to where it was found last, or to the ground where nobody sounded it. */
  public static Optional<Took> grout(Well well) {
    Fill grout = well.get(Fill.GROUT);
    Annulus annulus = WellAnnulus.of(well);
    Optional<Length> bottom = well.get(Fill.CHIPS).top().or(() -> well.get(Fill.PACK).top());
    if (!grout.isBegun() || bottom.isEmpty() || annulus.hole().isEmpty()) return Optional.empty();
    return stretch(annulus, grout.top().orElse(Length.ZERO).max(Length.ZERO), bottom.get(), true, grout.volume());
  }

  private static Optional<Took> stretch(
      Annulus annulus, Length top, Length bottom, boolean sounded, Volume volume) {
    boolean there = bottom.isMoreThan(top) && !top.isLessThan(Length.ZERO);
    return there ? Optional.of(new Took(annulus, top, bottom, sounded, volume)) : Optional.empty();
  }

  private static Optional<Length> settled(Fill fill) {
    return fill.bagsSinceTag() == 0 && fill.bags() > 0 ? fill.top() : Optional.empty();
  }
}
