package steening.stage.seal;

import java.util.List;
import steening.bore.Annulus;
import steening.bore.Bagged;
import steening.bore.Bore;
import steening.bore.BoreField;
import steening.field.ChoiceField;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Length;
import steening.quantity.Mass;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Volume;
import steening.reckoning.Answer;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Term;
import steening.well.Plan;

/**
 * How much grout a stretch of the annulus takes, in bags and in water, and how much of both to load.
 *
 * <p>n = V / Y, rounded up; water n W; loaded V (1 + o) / Y, rounded up. V annulus volume, Y yield of a bag, W water
 * for it, o overage. Source, accuracy: {@link GroutMix} for the yield; 20 to 30 % of overage for holes drilled with mud
 * in sand is common practice, no source. Range: a round hole; a washed-out one takes what {@code apparent-diameter}
 * says.
 */
public final class GroutVolume {
  public static final BoreField HOLE = AnnulusVolume.HOLE;
  public static final QuantityField CASING = AnnulusVolume.CASING;
  public static final QuantityField FROM = AnnulusVolume.FROM;
  public static final QuantityField TO = AnnulusVolume.TO;
  public static final ChoiceField MATERIAL = DryGrout.FIELD.optional();
  public static final QuantityField SOLIDS = GroutEntries.SOLIDS.optional();
  public static final QuantityField WATER = GroutEntries.WATER_PER_BAG.optional();
  public static final QuantityField OVERAGE = Plan.OVERAGE;

  private static final Answer VOLUME =
      new Answer("volume", Phrase.of("grout volume", "volumen de lechada"), Scale.VOLUME);
  private static final Answer LIQUID =
      new Answer("liquid", Phrase.of("in liquid measure", "en medida de líquidos"), Scale.LIQUID);
  private static final Answer FILLED =
      new Answer("bags-filled", Phrase.of("that is, in bags", "es decir, en sacos"), Scale.NUMBER);
  private static final Answer BAGS = new Answer("bags", Phrase.of("whole bags", "sacos enteros"), Scale.NUMBER);
  private static final Answer MIX_WATER =
      new Answer("water", Phrase.of("water for them", "agua para ellos"), Scale.LIQUID);
  private static final Answer ORDER =
      new Answer("order-volume", Phrase.of("volume to load", "volumen a cargar"), Scale.VOLUME);
  private static final Answer ORDER_LIQUID =
      new Answer(
          "order-liquid", Phrase.of("volume to load, in liquid measure", "volumen a cargar, en medida de líquidos"),
          Scale.LIQUID);
  private static final Answer ORDER_BAGS =
      new Answer("order-bags", Phrase.of("bags to load", "sacos a cargar"), Scale.NUMBER);
  private static final Answer ORDER_WATER =
      new Answer("order-water", Phrase.of("water to load", "agua a cargar"), Scale.LIQUID);
  private static final Answer PER_BAG =
      new Answer("length-per-bag", Phrase.of("length that a bag fills", "longitud que llena un saco"), Scale.DEPTH);

  public static final Reckoning RECKONING = new Reckoning(
      "grout-volume",
      SealStage.NAME,
      Phrase.of("Grout volume", "Volumen de lechada"),
      List.of(HOLE, CASING, FROM, TO, MATERIAL, SOLIDS, WATER, OVERAGE),
      List.of(VOLUME, LIQUID, FILLED, BAGS, MIX_WATER, ORDER, ORDER_LIQUID, ORDER_BAGS, ORDER_WATER, PER_BAG),
      GroutMix.RECKONING.source(),
      List.of(
          Phrase.of(
              "Without a mix: bentonite, 50 lb to 24 gal, 20 % solids.",
              "Sin mezcla: bentonita, 22.7 kg con 91 L, 20 % de sólidos."),
          Phrase.of(
              "Without an overage, the hole as drilled takes it; 20 to 30 % is common practice, no source.",
              "Sin excedente, lo que lleva el barreno perforado; 20 a 30 % es práctica común, sin fuente.")),
      GroutVolume::reckon);

  private GroutVolume() {}

  private static Outcome reckon(Inputs inputs) {
    Annulus annulus = new Annulus(inputs.value(HOLE), Bore.even(inputs.length(CASING)));
    Quantity overage = inputs.find(OVERAGE).orElse(Bagged.NO_OVERAGE);
    return of(annulus, inputs.length(FROM), inputs.length(TO), recipe(inputs), overage);
  }

  /** The mix that was said, or the usual one of bentonite. */
  static Recipe recipe(Inputs inputs) {
    Recipe usual = Recipe.of(Plan.PART.empty());
    return new Recipe(
        inputs.text(MATERIAL).map(DryGrout::of).orElse(usual.material()),
        inputs.find(SOLIDS).map(m -> (Mass) m).orElse(usual.solids()),
        inputs.find(WATER).map(v -> (Volume) v).orElse(usual.water()),
        usual.entry());
  }

  /** The same for an annulus at hand; overage as a share. */
  static Outcome of(Annulus annulus, Length from, Length to, Recipe recipe, Quantity overage) {
    Term volume = annulus.volume("V", VOLUME.label(), from, to);
    Term yield = GroutMix.of(recipe).term(GroutMix.YIELD_VOLUME.name());
    Term water = Term.given("W", GroutMix.WATER.label(), Scale.LIQUID, recipe.water());
    Term filled = volume.over(yield).named("n", FILLED.label(), FILLED.scale());
    Term bags = filled.roundedUp().named("N", BAGS.label(), BAGS.scale());
    Term order = volume.times(Bagged.oneAnd(overage)).named("Vo", ORDER.label(), ORDER.scale());
    Term orderBags = order.over(yield).roundedUp().named("No", ORDER_BAGS.label(), ORDER_BAGS.scale());
    Term length = Term.given("h", Phrase.of("length", "longitud"), Scale.DEPTH, to.minus(from));
    return Outcome.empty()
        .with(VOLUME.name(), volume)
        .with(LIQUID.name(), Liquids.asLiquid(volume).named("G", LIQUID.label(), LIQUID.scale()))
        .with(FILLED.name(), filled)
        .with(BAGS.name(), bags)
        .with(MIX_WATER.name(), bags.times(water).named("w", MIX_WATER.label(), MIX_WATER.scale()))
        .with(ORDER.name(), order)
        .with(ORDER_LIQUID.name(), Liquids.asLiquid(order).named("Go", ORDER_LIQUID.label(), ORDER_LIQUID.scale()))
        .with(ORDER_BAGS.name(), orderBags)
        .with(ORDER_WATER.name(), orderBags.times(water).named("wo", ORDER_WATER.label(), ORDER_WATER.scale()))
        .with(PER_BAG.name(), length.over(filled).named("l", PER_BAG.label(), PER_BAG.scale()));
  }
}
