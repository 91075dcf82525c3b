package steening.stage.decommissioning;

import java.util.ArrayList;
import java.util.List;
import steening.bore.Annulus;
import steening.bore.Bagged;
import steening.bore.Bore;
import steening.bore.BoreField;
import steening.field.ChoiceField;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.mix.Mixture;
import steening.quantity.Length;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Answer;
import steening.reckoning.Coefficient;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Term;
import steening.well.Plan;
import steening.well.PlugMaterial;

/**
 * What closes a stretch of hole, in bags: exactly, in whole ones, and with ten percent more.
 *
 * <p>V = π/4 D² h, summed over the reaches; n = V / b, rounded up; with overage V (1 + o) / b, rounded up;
 * D diameter of the hole, or inside of a casing that stays; h length; b what a bag fills, see {@link Filler}. Source: geometry; code
 * tables of a state (neat cement 13.4 ft a sack and chips 7.9 ft a bag in a 4-inch bore, seen) come out to 1 %; ten
 * percent more for dry sealants: trade article (seen). Range: a round hole without voids. Accuracy: 3 % in the bag; the
 * hole decides.
 */
public final class PlugVolume {
  public static final BoreField BORE = BoreField.of(
      "bore", Plan.HOLE.labelled("hole, or inside of a casing that stays", "barreno, o interior del ademe que queda"),
      Plan.DEPTH);
  public static final QuantityField FROM =
      QuantityField.of("from", Scale.DEPTH, Phrase.of("top of the plug", "tope del tapón"), "3 ft", "0.92 m")
          .between("0 ft", "6000 ft").usually("0 ft", "600 ft");
  public static final QuantityField TO =
      QuantityField.of("to", Scale.DEPTH, Phrase.of("bottom of the plug", "fondo del tapón"), "88 ft", "26.8 m")
          .between("0 ft", "6000 ft").usually("1 ft", "600 ft");
  public static final ChoiceField MATERIAL = ChoiceField.of(
      "material", Phrase.of("material", "material"), options());
  public static final QuantityField BAG = QuantityField.of(
          "bag-volume", Scale.VOLUME,
          Phrase.of("what a bag fills, if not the usual", "lo que llena un saco, si no es lo usual"),
          "0.69 ft3", "0.0195 m3")
      .between("0.01 ft3", "100 ft3").usually("0.3 ft3", "8 ft3").optional();
  public static final QuantityField WATER = QuantityField.of(
          "water", Scale.LIQUID, Phrase.of("water for a bag, if not the usual", "agua por saco, si no es la usual"),
          "5.2 gal", "19.7 L")
      .between("0.5 gal", "1000 gal").usually("4 gal", "40 gal").optional();
  public static final QuantityField OVERAGE = Plan.OVERAGE;

  /** For dry sealants (trade article, seen). */
  static final Quantity TEN_PERCENT = Measure.of(10, Unit.PERCENT);

  static final Answer VOLUME = Bagged.VOLUME;
  static final Answer LIQUID =
      new Answer("liquid", Phrase.of("in liquid measure", "en medida de líquidos"), Scale.LIQUID);
  static final Answer EXACT = Bagged.FILLED;
  static final Answer BAGS = Bagged.BAGS;
  static final Answer ORDER_BAGS = Bagged.ORDER_BAGS;
  static final Answer PER_BAG =
      new Answer("length-per-bag", Phrase.of("length that a bag fills", "longitud que llena un saco"), Scale.DEPTH);
  private static final Answer MIX_WATER =
      new Answer("mix-water", Phrase.of("water for the whole bags", "agua para los sacos enteros"), Scale.LIQUID);

  public static final Reckoning RECKONING = new Reckoning(
      "plug-volume",
      DecommissioningStage.NAME,
      Phrase.of("Plug volume", "Volumen del tapón"),
      List.of(BORE, FROM, TO, MATERIAL, BAG, WATER, OVERAGE),
      List.of(VOLUME, LIQUID, EXACT, BAGS, ORDER_BAGS, PER_BAG, MIX_WATER),
      Source.seen(
          "Geometry; feet to a bag agree with a state's code tables to 1 %; 10 % more for dry sealants: trade article.",
          "Geometría; la longitud por saco coincide al 1 % con tablas de una norma estatal; 10 % más para selladores"
              + " secos: artículo técnico."),
      List.of(
          Phrase.of(
              "Without a bag: cement 94 lb with 5.2 gal, bentonite 50 lb with 24 gal, chips 0.69 ft³, concrete"
                  + " 5.4 ft³.",
              "Sin saco: cemento 42.6 kg con 19.7 L, bentonita 22.7 kg con 90.8 L, pellets 0.0195 m³, concreto"
                  + " 0.153 m³."),
          Phrase.of("Without an overage, 10 %.", "Sin excedente, 10 %."),
          Phrase.of(
              "A hole without voids: one that takes much more has one.",
              "Un barreno sin huecos: el que lleva mucho más tiene uno.")),
      PlugVolume::reckon);

  private PlugVolume() {}

  private static ChoiceField.Option[] options() {
    List<ChoiceField.Option> options = new ArrayList<>();
    for (PlugMaterial m : PlugMaterial.values()) options.add(new ChoiceField.Option(m.code(), m.label()));
    return options.toArray(ChoiceField.Option[]::new);
  }

  private static Outcome reckon(Inputs inputs) {
    PlugMaterial material = PlugMaterial.of(inputs.value(MATERIAL).code()).orElseThrow();
    Quantity water = inputs.find(WATER).orElseGet(() -> Filler.usualWater(material));
    Term bag = inputs.find(BAG).map(Filler::bag).orElseGet(() -> Filler.isMixed(material)
        ? Filler.mixed(material, Filler.usualSolids(material), water).term(Mixture.YIELD_VOLUME.name())
        : Filler.bag(material));
    Quantity overage = inputs.find(OVERAGE).orElse(TEN_PERCENT);
    Outcome outcome = of(inputs.value(BORE), inputs.length(FROM), inputs.length(TO), bag, overage);
    if (!Filler.isMixed(material)) return outcome;
    Term all = outcome.term(BAGS.name()).times(Filler.water(water));
    return outcome.with(MIX_WATER.name(), all.named("Wn", MIX_WATER.label(), MIX_WATER.scale()));
  }

  /** The answers for a bore at hand and what a bag fills. */
  static Outcome of(Bore bore, Length from, Length to, Term bag, Quantity overage) {
    Term volume = new Annulus(bore, Bore.NONE).volume("V", VOLUME.label(), from, to);
    Term exact = volume.over(bag).named("n", EXACT.label(), EXACT.scale());
    Term order = volume.times(Bagged.oneAnd(overage)).over(bag).roundedUp();
    Term length = Term.given("h", Phrase.of("length", "longitud"), Scale.DEPTH, to.minus(from));
    return Outcome.empty()
        .with(VOLUME.name(), volume)
        .with(LIQUID.name(), Coefficient.giving(Scale.LIQUID, 1).of(Scale.VOLUME).term().times(volume)
            .named("G", LIQUID.label(), LIQUID.scale()))
        .with(EXACT.name(), exact)
        .with(BAGS.name(), exact.roundedUp().named("N", BAGS.label(), BAGS.scale()))
        .with(ORDER_BAGS.name(), order.named("No", ORDER_BAGS.label(), ORDER_BAGS.scale()))
        .with(PER_BAG.name(), length.over(exact).named("l", PER_BAG.label(), PER_BAG.scale()));
  }
}
