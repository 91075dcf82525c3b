package steening.stage.seal;

import java.util.Optional;
import steening.bore.Annulus;
import steening.language.Phrase;
import steening.quantity.Dimension;
import steening.quantity.Length;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.reckoning.Term;

/**
 * The grout still to pump from where its top stands: V R / Y bags; V what the hole as drilled takes up to the planned
 * top, R how many times as much it took so far, Y yield of a bag. Source: geometry. Range: a hole above the tape like
 * the hole below it, which is a guess, and says so.
 */
final class StillNeeded {
  private static final Quantity AS_DRILLED = new Measure(Dimension.NUMBER, 1);

  private StillNeeded() {}

  /** At the rate seen below a depth, or as drilled where none was seen; none where nothing is left to fill. */
  static Optional<Outcome> above(Sealing sealing, Length top, Optional<Outcome> seen) {
    return Outcome.ifReckonable(() -> of(
        sealing.annulus(), sealing.top(), top, sealing.recipe(),
        seen.map(o -> o.quantity("ratio")).orElse(AS_DRILLED)));
  }

  private static Outcome of(Annulus annulus, Length to, Length from, Recipe recipe, Quantity ratio) {
    Term gauge = annulus.volume("V", Phrase.of("left to fill, as drilled", "por llenar, según lo perforado"), to, from);
    Term yield = GroutMix.of(recipe).term(GroutMix.YIELD_VOLUME.name());
    Term times = Inputs.count(
        "R", Phrase.of("put in over reckoned, so far", "vertido entre calculado, hasta ahora"), ratio.coherent());
    Term planned = gauge.over(yield).named("n", Phrase.of("bags as drilled", "sacos según lo perforado"), Scale.NUMBER);
    Term needed = planned.times(times)
        .named("m", Phrase.of("bags as seen so far", "sacos según lo visto"), Scale.NUMBER);
    Term bags = needed.roundedUp().named("M", Phrase.of("bags still needed", "sacos que faltan"), Scale.NUMBER);
    Term water = bags.times(Term.given("W", GroutMix.WATER.label(), Scale.LIQUID, recipe.water()));
    return Outcome.empty()
        .with("bags-as-drilled", planned)
        .with("bags-as-seen", needed)
        .with("bags", bags)
        .with("water", water.named("w", Phrase.of("water for them", "agua para ellos"), Scale.LIQUID))
        .with("liquid", Liquids.asLiquid(gauge.times(times))
            .named("G", Phrase.of("grout still needed", "lechada que falta"), Scale.LIQUID));
  }
}
