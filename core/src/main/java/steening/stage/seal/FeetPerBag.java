package steening.stage.seal;

import java.util.List;
import java.util.Optional;
import steening.bore.Annulus;
import steening.bore.Bore;
import steening.field.ChoiceField;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Length;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.reckoning.Answer;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Term;
import steening.well.Plan;

/**
 * How many feet of annulus one bag fills: l = Y / A; and the hole in which it would be fifteen: D = √(d² + Y / (π/4 ·
 * 15)). Y yield of a bag, A annulus volume per length, d outside diameter of the pipe.
 *
 * <p>"One bag of bentonite grout for about 15 ft" is common practice, no source: it is true around 4.5 in of pipe in a
 * hole of 7 7/8 to 8 in with a mix of 20 % solids and no overage, and false for 30 % solids (about 10 ft), cement (5
 * ft) and chips (3 ft). Source, accuracy: {@link GroutMix}. Range: a hole of the size it was drilled, nothing lost.
 */
public final class FeetPerBag {
  public static final QuantityField HOLE = Plan.HOLE.named("hole");
  public static final QuantityField CASING = AnnulusVolume.CASING;
  public static final ChoiceField MATERIAL = GroutVolume.MATERIAL;
  public static final QuantityField SOLIDS = GroutVolume.SOLIDS;
  public static final QuantityField WATER = GroutVolume.WATER;
  public static final QuantityField YIELD = QuantityField.of(
          "yield", Scale.VOLUME, Phrase.of("yield of a bag, where it is printed", "rendimiento impreso del saco"),
          "0.69 ft3", "0.0195 m3")
      .between("0.01 ft3", "200 ft3").usually("0.3 ft3", "10 ft3").optional();

  private static final Answer LENGTH =
      new Answer("length", Phrase.of("length that a bag fills", "longitud que llena un saco"), Scale.DEPTH);
  private static final Answer HOLE_FOR_FIFTEEN =
      new Answer(
          "hole-for-fifteen", Phrase.of("hole in which a bag fills 15 ft", "barreno en que un saco llena 4.57 m"),
          Scale.DIAMETER);

  /** The rule of thumb: common practice, no source. */
  private static final Length FIFTEEN = Length.feet(15);

  public static final Reckoning RECKONING = new Reckoning(
      "feet-per-bag",
      SealStage.NAME,
      Phrase.of("Feet per bag", "Longitud por saco"),
      List.of(HOLE, CASING, MATERIAL, SOLIDS, WATER, YIELD),
      List.of(LENGTH, HOLE_FOR_FIFTEEN),
      Source.derived(
          "Geometry and absolute volumes. \"A bag for 15 ft\": common practice, no source.",
          "Geometría y volúmenes absolutos. «Un saco por 4.6 m»: práctica común, sin fuente."),
      List.of(
          Phrase.of(
              "No overage: with 25 % a bag does a fifth less.",
              "Sin excedente: con 25 % un saco rinde una quinta parte menos."),
          Phrase.of(
              "A bag for 15 ft holds around 4.5 in of pipe in 7 7/8 to 8 in of hole, at 20 % solids; not for 30 %,"
                  + " cement or chips.",
              "Un saco por 4.6 m vale con tubo de 114 mm en barreno de 200 a 203 mm y 20 % de sólidos; no con 30 %,"
                  + " cemento ni pellets.")),
      FeetPerBag::reckon);

  private FeetPerBag() {}

  private static Outcome reckon(Inputs inputs) {
    Annulus annulus = new Annulus(Bore.even(inputs.length(HOLE)), Bore.even(inputs.length(CASING)));
    Optional<Quantity> printed = inputs.find(YIELD);
    Term yield = printed
        .map(q -> Term.given("Y", YIELD.label(), Scale.VOLUME, q))
        .orElseGet(() -> GroutMix.of(GroutVolume.recipe(inputs)).term(GroutMix.YIELD_VOLUME.name()));
    Term length = Annulus.perLength().times(yield).over(annulus.capacityAbove("A", FIFTEEN));
    Term fifteen = Term.given("f", Phrase.of("the rule of thumb", "la regla práctica"), Scale.DEPTH, FIFTEEN);
    return Outcome.empty()
        .with(LENGTH.name(), length.named("l", LENGTH.label(), LENGTH.scale()))
        .with(HOLE_FOR_FIFTEEN.name(), annulus.apparentDiameter(inputs.length(CASING), yield, fifteen)
            .named("Df", HOLE_FOR_FIFTEEN.label(), HOLE_FOR_FIFTEEN.scale()));
  }
}
