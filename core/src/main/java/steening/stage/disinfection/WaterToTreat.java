package steening.stage.disinfection;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.bore.Annulus;
import steening.field.Field;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Dimension;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Answer;
import steening.reckoning.Coefficient;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.reckoning.Term;
import steening.well.Plan;

/**
 * The water that a dose is spread through: what stands in the casing, what fills the pores of the pack, and what else
 * is to be treated.
 *
 * <p>V = π/4 D² h + p P + W; D casing inside, h standing water, P volume of the pack in water, p its porosity, W other
 * water. Source: geometry; porosity 35 %, common practice, no source. Accuracy: the pack's within a fifth.
 */
final class WaterToTreat {
  static final QuantityField INSIDE = Plan.CASING_OUTSIDE.named("casing-inside")
      .labelled("casing inside diameter", "diámetro interior del ademe");

  static final QuantityField COLUMN = QuantityField.of(
          "water-column", Scale.DEPTH, Phrase.of("water standing in the casing", "agua en el ademe, altura"),
          "107.5 ft", "32.8 m")
      .between("0 ft", "6000 ft").usually("5 ft", "600 ft");

  static final QuantityField PACK = QuantityField.of(
          "pack-volume", Scale.VOLUME, Phrase.of("filter pack below water", "filtro de grava bajo el agua"),
          "6.7 ft3", "0.19 m3")
      .between("0 ft3", "10000 ft3").usually("0.5 ft3", "200 ft3").optional();

  static final QuantityField POROSITY = QuantityField.of(
          "porosity", Scale.SHARE, Phrase.of("porosity of the pack", "porosidad del filtro"), "35 %", "35 %")
      .between("1 %", "60 %").usually("20 %", "45 %").optional();

  static final QuantityField OTHER = QuantityField.of(
          "other-water", Scale.LIQUID, Phrase.of("other water: tank, pipes", "otra agua: tanque, tuberías"), "80 gal",
          "300 L")
      .between("0 gal", "100000 gal").usually("1 gal", "2000 gal").optional();

  static final Answer CASING_WATER =
      new Answer("casing-water", Phrase.of("water in the casing", "agua en el ademe"), Scale.LIQUID);
  static final Answer PACK_WATER = new Answer(
      "pack-water", Phrase.of("water in the pores of the pack", "agua en los poros del filtro"), Scale.LIQUID);
  static final Answer WATER = new Answer("water", Phrase.of("water to treat", "agua a tratar"), Scale.LIQUID);

  private static final Quantity THIRD = new Measure(Dimension.NUMBER, Unit.PERCENT.toCoherent(35));

  private WaterToTreat() {}

  /** The water's inputs with others behind them. */
  static List<Field> inputsAnd(Field... more) {
    List<Field> inputs = new ArrayList<>(List.of(INSIDE, COLUMN, PACK, POROSITY, OTHER));
    inputs.addAll(List.of(more));
    return inputs;
  }

  /** The three answers above; the pack's only where there is one. */
  static Outcome of(Inputs inputs) {
    Term casing = Annulus.cylinder(inputs.given("D", INSIDE), inputs.given("h", COLUMN), Scale.LIQUID)
        .named("V_c", CASING_WATER.label(), CASING_WATER.scale());
    Outcome outcome = Outcome.empty().with(CASING_WATER.name(), casing);
    Term sum = casing;
    if (inputs.find(PACK).isPresent()) {
      Term pores = Coefficient.giving(Scale.LIQUID, 1).of(Scale.SHARE).of(Scale.VOLUME).term()
          .times(inputs.given("p", POROSITY, THIRD)).times(inputs.given("P", PACK))
          .named("V_p", PACK_WATER.label(), PACK_WATER.scale());
      outcome = outcome.with(PACK_WATER.name(), pores);
      sum = sum.plus(pores);
    }
    Optional<Quantity> other = inputs.find(OTHER);
    if (other.isPresent()) sum = sum.plus(inputs.given("W", OTHER));
    Term water = sum.named("V", WATER.label(), WATER.scale());
    if (water.quantity().coherent() > 0) return outcome.with(WATER.name(), water);
    throw new NotReckonable("There is no water to treat.", "No hay agua que tratar.");
  }
}
