package steening.stage.seal;

import java.util.ArrayList;
import java.util.List;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.pipe.Buoyancy;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.reckoning.Answer;
import steening.reckoning.Coefficient;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Term;

/**
 * What a mix comes to: absolute volumes, the grains' own and the water's, added up.
 *
 * <p>y = W + Σ m / (G ρ); δ = (M + ρ W) / y; s = M / (M + ρ W). W water, m and G dry weight and specific gravity of
 * each part, M = Σ m, ρ density of water, y yield, δ weight of the grout, s solids by weight.
 *
 * <p>Source: G of cement 3.15 (trade article on the volume of grout) and of bentonite 2.60 (trade article on mud),
 * seen; of sand 2.65, memory. Accuracy: 2 % in the yield, from air and the weight of bags; published yields of 18 mixes
 * agree within that. Makers who reckon bentonite grout at 26.4 gal to 50 lb and 24 gal say 0.4 % more.
 */
public final class GroutMix {
  public static final QuantityField BENTONITE = dry("bentonite", "bentonite", "bentonita", "50 lb", "22.7 kg");
  public static final QuantityField CEMENT = dry("cement", "cement", "cemento", "94 lb", "42.6 kg");
  public static final QuantityField SAND = dry("sand", "sand", "arena", "94 lb", "42.6 kg");
  public static final QuantityField WATER = GroutEntries.WATER.labelled("water", "agua");

  /** Quartz sand, from memory. */
  private static final double SAND_GRAVITY = 2.65;

  static final Answer YIELD = new Answer("yield", Phrase.of("yield", "rendimiento"), Scale.LIQUID);
  static final Answer YIELD_VOLUME =
      new Answer("yield-volume", Phrase.of("yield as a volume", "rendimiento como volumen"), Scale.VOLUME);
  static final Answer DENSITY =
      new Answer("density", Phrase.of("weight of the grout", "densidad de la lechada"), Scale.DENSITY);
  static final Answer SOLIDS = new Answer("solids", Phrase.of("solids by weight", "sólidos en peso"), Scale.SHARE);

  public static final Reckoning RECKONING = new Reckoning(
      "grout-mix",
      SealStage.NAME,
      Phrase.of("Grout mix", "Mezcla de lechada"),
      List.of(BENTONITE, CEMENT, SAND, WATER),
      List.of(YIELD, YIELD_VOLUME, DENSITY, SOLIDS),
      Source.seen(
          "Absolute volumes; specific gravity of cement 3.15, bentonite 2.60, water 8.34 lb/gal: trade articles. Sand"
              + " 2.65: from memory.",
          "Volúmenes absolutos; densidad relativa del cemento 3.15, bentonita 2.60, agua 1 kg/L: artículos técnicos."
              + " Arena 2.65: de memoria."),
      List.of(
          Phrase.of(
              "Yield good to 2 %: air, bags not full, a maker's own figure.",
              "Rendimiento bueno al 2 %: aire, sacos incompletos, dato propio del fabricante."),
          Phrase.of(
              "For 50 lb of bentonite to 24 gal, 26.4 gal is also printed; absolute volumes give 26.3: within the 2 %.",
              "Para 22.7 kg de bentonita con 90.8 L se imprime también 99.9 L; los volúmenes absolutos dan 99.6:"
                  + " dentro del 2 %."),
          Phrase.of("A mud balance reads to 0.1 lb/gal.", "La balanza de lodos lee a 12 kg/m³.")),
      GroutMix::reckon);

  private GroutMix() {}

  private static QuantityField dry(String name, String english, String spanish, String us, String metric) {
    return QuantityField.of(name, Scale.WEIGHT, Phrase.of(english, spanish), us, metric)
        .between("0 lb", "100000 lb").usually("1 lb", "1000 lb").optional();
  }

  private static Outcome reckon(Inputs inputs) {
    List<Part> parts = new ArrayList<>();
    inputs.find(BENTONITE).ifPresent(m -> parts.add(Part.of("B", DryGrout.BENTONITE, m)));
    inputs.find(CEMENT).ifPresent(m -> parts.add(Part.of("C", DryGrout.CEMENT, m)));
    inputs.find(SAND).ifPresent(m -> parts.add(new Part(Term.given("S", SAND.label(), Scale.WEIGHT, m), SAND_GRAVITY)));
    if (parts.isEmpty()) {
      throw new NotReckonable(
          "Say how much bentonite, cement or sand goes in.", "Diga cuánta bentonita, cemento o arena lleva.");
    }
    return of(parts, inputs.given("W", WATER));
  }

  /** For one bag and its water. */
  static Outcome of(Recipe recipe) {
    return of(recipe.material(), recipe.solids(), recipe.water());
  }

  /** For one dry part and its water. */
  static Outcome of(DryGrout material, Quantity solids, Quantity water) {
    return of(List.of(Part.of("B", material, solids)), Term.given("W", WATER.label(), Scale.LIQUID, water));
  }

  private static Outcome of(List<Part> parts, Term water) {
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
    return Outcome.empty()
        .with(YIELD.name(), gallons)
        .with(YIELD_VOLUME.name(), Liquids.asVolume(gallons).named("Y", YIELD_VOLUME.label(), YIELD_VOLUME.scale()))
        .with(DENSITY.name(), Coefficient.giving(Scale.DENSITY, 1).of(Scale.WEIGHT).of(Scale.LIQUID, -1).term()
            .times(wet).over(gallons).named("δ", DENSITY.label(), DENSITY.scale()))
        .with(SOLIDS.name(), share.times(dry).over(wet).named("s", SOLIDS.label(), SOLIDS.scale()));
  }

  /** Something dry and the specific gravity of its grains. */
  private record Part(Term weight, double gravity) {
    static Part of(String symbol, DryGrout material, Quantity weight) {
      return new Part(Term.given(symbol, material.label(), Scale.WEIGHT, weight), material.specificGravity());
    }
  }

}
