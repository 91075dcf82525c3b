package steening.stage.seal;

import java.util.Optional;
import steening.bore.BagsLeft;
import steening.bore.Overbreak;
import steening.bore.Taken;
import steening.language.Phrase;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.reckoning.Term;
import steening.well.Fill;
import steening.well.Took;
import steening.well.UsualGround;
import steening.well.Well;

/**
 * How many more bags of grout the hole takes: by what the pack took below, carried into the ground above, then by the
 * grout's own soundings.
 */
final class GroutForecast {
  /** A hole is not narrower than its bit: a stretch that took less than this of its size hid a bridge. */
  private static final double TOO_LITTLE = 0.9;

  private static final Phrase BELOW = Phrase.of("pack and chips put in", "filtro y pellets vertidos");

  private GroutForecast() {}

  /** What the ground round the grout takes, before any grout is in. */
  static Overbreak before(Well well) {
    Overbreak usually = Overbreak.usually(UsualGround.of(well));
    return Took.pack(well).filter(GroutForecast::isWhole)
        .map(t -> usually.having(
            new Taken(t.annulus(), t.top(), t.bottom(), t.sounded(),
                Term.given("V″", BELOW, Scale.VOLUME, t.volume())),
            "″").inOtherGround(usually))
        .orElse(usually).onGrout();
  }

  private static boolean isWhole(Took took) {
    Optional<Outcome> holds = Outcome.ifReckonable(() -> Outcome.empty().with(
        "holds", took.annulus().volume("V", BELOW, took.top(), took.bottom())));
    return holds.filter(h ->
        took.volume().cubicMetres() >= TOO_LITTLE * h.quantity("holds").coherent()).isPresent();
  }

  /** Bags from where the grout was last found, or starts, to where it is to end; none where nothing is left. */
  static Optional<Outcome> left(Sealing sealing) {
    Optional<Fill.Tag> tag = sealing.grout().lastTag().filter(t -> t.bags() > 0);
    if (tag.isPresent() && !sealing.isDeep(tag.get())) return Optional.empty();
    Length from = tag.map(Fill.Tag::depth).orElse(sealing.bottom());
    int since = sealing.grout().bags() - tag.map(Fill.Tag::bags).orElse(0);
    return Outcome.ifReckonable(() -> {
      Term bag = bag(sealing.recipe());
      return withWater(
          BagsLeft.of(
              hole(sealing), sealing.annulus(), sealing.top(), from, bag,
              Inputs.count("i", GroutLeft.SINCE, since)),
          sealing.recipe());
    });
  }

  /** Grout that sank overnight tells nothing of the hole. */
  private static Overbreak hole(Sealing sealing) {
    return sealing.lastTagOfTheDay().filter(t -> t.depth().isLessThan(sealing.bottom()))
        .map(t -> sealing.ground().having(new Taken(
            sealing.annulus(), t.depth(), sealing.bottom(), true,
            Term.given("V", GroutLeft.IN_HOLE, Scale.VOLUME, sealing.inHole(t)))))
        .orElse(sealing.ground());
  }

  /** What a bag makes, as something known; the mix has a working of its own. */
  static Term bag(Recipe recipe) {
    return Term.given(
        "b", GroutMix.YIELD.label(), Scale.VOLUME, GroutMix.of(recipe).quantity(GroutMix.YIELD_VOLUME.name()));
  }

  /** With the water for the whole bags. */
  static Outcome withWater(Outcome left, Recipe recipe) {
    Term each = Term.given("W", GroutMix.WATER.label(), Scale.LIQUID, recipe.water());
    return left.with(
        GroutLeft.WATER.name(),
        left.term(BagsLeft.WHOLE.name()).times(each).named("U", GroutLeft.WATER.label(), Scale.LIQUID));
  }
}
