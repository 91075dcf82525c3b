package steening.stage.development;

import java.util.Optional;
import steening.bore.Annulus;
import steening.bore.Settling;
import steening.language.Phrase;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Outcome;
import steening.reckoning.Term;
import steening.well.CasingString;
import steening.well.Fill;
import steening.well.Hole;
import steening.well.Plan;
import steening.well.Sounding;
import steening.well.Well;

/**
 * How far the pack went down while the well was developed, and what it takes to fill it up again.
 *
 * @param before as it was last sounded before
 * @param after the last sounding of this room, with nothing poured since
 */
record PackSettling(Fill.Tag before, Sounding after) {
  /** Two soundings of 0.2 ft each differ by more than this only where something moved (common practice, no source). */
  private static final Length UNSURE = Length.of(0.5, Unit.FOOT);

  static Optional<PackSettling> of(Well well) {
    Development development = well.get(Development.PART);
    if (development.soundings().isEmpty()) return Optional.empty();
    Sounding after = development.soundings().get(development.soundings().size() - 1);
    Fill pack = well.get(Fill.PACK);
    boolean toppedUp = pack.pours().stream().anyMatch(p -> p.at().isAfter(after.at()))
        || pack.tags().stream().anyMatch(t -> t.at().isAfter(after.at()));
    return toppedUp ? Optional.empty() : pack.lastTag().map(before -> new PackSettling(before, after));
  }

  Length top() {
    return after.depth().orElseThrow();
  }

  Length fallen() {
    return top().minus(before.depth());
  }

  boolean isClear() {
    return fallen().isMoreThan(UNSURE);
  }

  /** How far it may go down by settling alone, and what it then covers; none where the hole is not known. */
  Optional<Outcome> usually(Well well) {
    Length bottom = well.get(Hole.PART).depth();
    if (!bottom.isMoreThan(before.depth())) return Optional.empty();
    return Optional.of(Settling.of(before.depth(), bottom, well.get(CasingString.PART).screenTop()));
  }

  /** The volume that is missing, and the bags for it; absent where the hole is not known there. */
  Optional<Outcome> toTopUp(Well well) {
    Annulus annulus = new Annulus(well.get(Hole.PART).bore(), well.get(CasingString.PART).pipe());
    return Outcome.ifReckonable(() -> {
      Term volume = annulus.volume(
          "V", Phrase.of("volume that is missing", "volumen que falta"), before.depth(), top());
      Term bag = Term.given("b", Plan.BAG_VOLUME.label(), Scale.VOLUME, well.get(Plan.PART).bagVolume());
      Term bags = volume.over(bag).roundedUp()
          .named("n", Phrase.of("bags to top up", "sacos para rellenar"), Scale.NUMBER);
      return Outcome.empty().with("volume", volume).with("bags", bags);
    });
  }
}
