package steening.mix;

import java.util.List;
import steening.language.Phrase;
import steening.pipe.Buoyancy;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.reckoning.Answer;
import steening.reckoning.Coefficient;
import steening.reckoning.Outcome;
import steening.reckoning.Source;
import steening.reckoning.Term;

/**
 * What dry parts and water come to: absolute volumes, the grains' own and the water's, added up.
 *
 * <p>y = W + Σ m / (G ρ); δ = (M + ρ W) / y; s = M / (M + ρ W). W water, m and G dry weight and specific gravity of
 * each part, M = Σ m, ρ density of water, y yield, δ weight of the mix, s solids by weight.
 *
 * <p>Source: G of cement 3.15 (trade article on the volume of grout) and of bentonite 2.60 (trade article on mud),
 * seen; of sand 2.65, memory. Accuracy: 2 % in the yield, from air and the weight of bags; published yields of 18 mixes
 * agree within that.
 */
public final class Mixture {
  public static final double BENTONITE_GRAVITY = 2.60;
  public static final double CEMENT_GRAVITY = 3.15;
  public static final double SAND_GRAVITY = 2.65;

  public static final Source SOURCE = Source.seen(
      "Absolute volumes; specific gravity of cement 3.15, bentonite 2.60, water 8.34 lb/gal: trade articles. Sand"
          + " 2.65: from memory.",
      "Volúmenes absolutos; densidad relativa del cemento 3.15, bentonita 2.60, agua 1 kg/L: artículos técnicos."
          + " Arena 2.65: de memoria.");

  public static final Answer YIELD = new Answer("yield", Phrase.of("yield", "rendimiento"), Scale.LIQUID);
  public static final Answer YIELD_VOLUME =
      new Answer("yield-volume", Phrase.of("yield as a volume", "rendimiento como volumen"), Scale.VOLUME);
  public static final Answer DENSITY =
      new Answer("density", Phrase.of("weight of the grout", "densidad de la lechada"), Scale.DENSITY);
  public static final Answer SOLIDS =
      new Answer("solids", Phrase.of("solids by weight", "sólidos en peso"), Scale.SHARE);

  private Mixture() {}

  /** Something dry and the specific gravity of its grains. */
  public record Part(Term weight, double gravity) {
    public static Part of(String symbol, Phrase label, Quantity weight, double gravity) {
      return new Part(Term.given(symbol, label, Scale.WEIGHT, weight), gravity);
    }
  }

  /** The answers {@code yield}, {@code yield-volume}, {@code density}, {@code solids}. */
  public static Outcome of(List<Part> parts, Term water) {
    Term density = Term.given("ρ", Phrase.of("density of water", "densidad del agua"), Scale.DENSITY, Buoyancy.WATER);
    Term room = Coefficient.giving(Scale.LIQUID, 1).of(Scale.WEIGHT).of(Scale.DENSITY, -1).term();
    Term yield = water;
    for (Part part : parts) yield = yield.plus(room.times(part.weight).over(Term.number(part.gravity).times(density)));
    Term gallons = yield.named("y", YIELD.label(), YIELD.scale());
    Term dry = Term.sum(parts.stream().map(Part::weight).toList())
        .named("M", Phrase.of("dry weight", "peso seco"), Scale.WEIGHT);
    Term wet = dry
        .plus(Coefficient.giving(Scale.WEIGHT, 1).of(Scale.DENSITY).of(Scale.LIQUID).term().times(density).times(water))
        .named("K", Phrase.of("weight with the water", "peso con el agua"), Scale.WEIGHT);
    Term share = Coefficient.giving(Scale.SHARE, 1).term();
    Term volume = Coefficient.giving(Scale.VOLUME, 1).of(Scale.LIQUID).term().times(gallons);
    return Outcome.empty()
        .with(YIELD.name(), gallons)
        .with(YIELD_VOLUME.name(), volume.named("Y", YIELD_VOLUME.label(), YIELD_VOLUME.scale()))
        .with(DENSITY.name(), Coefficient.giving(Scale.DENSITY, 1).of(Scale.WEIGHT).of(Scale.LIQUID, -1).term()
            .times(wet).over(gallons).named("δ", DENSITY.label(), DENSITY.scale()))
        .with(SOLIDS.name(), share.times(dry).over(wet).named("s", SOLIDS.label(), SOLIDS.scale()));
  }
}
