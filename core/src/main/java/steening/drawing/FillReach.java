package steening.drawing;

import java.util.Optional;
import steening.bore.Annulus;
import steening.language.Phrase;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.quantity.Volume;
import steening.reckoning.NotReckonable;
import steening.reckoning.Term;
import steening.well.Fill;

/**
 * How far something fills the annulus.
 *
 * @param sounded whether the top was read from a tape; else it is what the bags poured since should come to
 */
record FillReach(Filling filling, Length top, Length bottom, boolean sounded) {
  private static final double A_CUP = 0.0002;
  private static final Phrase POURED = Phrase.of("poured since", "vertido después");
  private static final Phrase TOP = Phrase.of("expected top", "tope esperado");

  /** Nothing where nothing was poured or sounded, or where neither a tape nor the hole tells how high it stands. */
  static Optional<FillReach> of(Filling filling, Fill fill, Annulus annulus, Length bottom) {
    Optional<Length> tape = fill.top();
    Volume since = fill.volume().minus(fill.lastTag().map(Fill.Tag::poured).orElse(Volume.NONE));
    Optional<Length> expected =
        since.cubicMetres() > A_CUP ? expected(annulus, tape.orElse(bottom), since) : Optional.empty();
    return expected.or(() -> tape)
        .filter(top -> top.isLessThan(bottom))
        .map(top -> new FillReach(filling, top, bottom, expected.isEmpty()));
  }

  private static Optional<Length> expected(Annulus annulus, Length from, Volume poured) {
    try {
      Term volume = Term.given("V", POURED, Scale.VOLUME, poured);
      Length top = (Length) annulus.top("z", TOP, from, volume).quantity();
      return Optional.of(top.max(Length.ZERO));
    } catch (NotReckonable unknown) {
      return Optional.empty();
    }
  }
}
