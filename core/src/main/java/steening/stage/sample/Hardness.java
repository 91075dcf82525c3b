package steening.stage.sample;

import java.util.List;
import java.util.Optional;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Answer;
import steening.reckoning.Coefficient;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Term;

/**
 * How hard water is.
 *
 * <p>H = 2.497 Ca + 4.118 Mg, all in mg/L, H as calcium carbonate; or H as the laboratory gives it. Source: weights of
 * the atoms, as in Standard Methods 2340 B (memory); classes of the US Geological Survey, soft to 60, moderately hard to
 * 120, hard to 180 (seen as others give them). Range: fresh water, where calcium and magnesium make the hardness.
 * Accuracy: the laboratory's.
 */
public final class Hardness {
  static final QuantityField CALCIUM = metal("calcium", Phrase.of("calcium", "calcio"), "48 mg/L", "500 mg/L");
  static final QuantityField MAGNESIUM = metal("magnesium", Phrase.of("magnesium", "magnesio"), "12 mg/L", "300 mg/L");
  static final QuantityField TOTAL = metal(
      "hardness", Phrase.of("hardness as calcium carbonate", "dureza como carbonato de calcio"), "169 mg/L",
      "1500 mg/L");

  static final Answer HARDNESS = new Answer(
      "hardness", Phrase.of("hardness as calcium carbonate", "dureza como carbonato de calcio"), Scale.CONCENTRATION);
  static final Answer GRAINS = new Answer(
      "grains", Phrase.of("grains per gallon, for a softener", "granos por galón, para un suavizador"), Scale.NUMBER);
  static final Answer CLASS = Answer.word("class", Phrase.of("class", "clase"));

  /** Weight of calcium carbonate to that of the calcium in it. */
  static final double CARBONATE_TO_CALCIUM = 2.497;

  private static final double SOFT_TO = 60;
  private static final double MODERATE_TO = 120;
  private static final double HARD_TO = 180;

  public static final Reckoning RECKONING = new Reckoning(
      "hardness",
      SampleStage.NAME,
      Phrase.of("Hardness of water", "Dureza del agua"),
      List.of(CALCIUM, MAGNESIUM, TOTAL),
      List.of(HARDNESS, GRAINS, CLASS),
      Source.memory(
          "Weights of the atoms, as in Standard Methods 2340 B; classes of the US Geological Survey.",
          "Pesos atómicos, como en Standard Methods 2340 B; clases del Servicio Geológico de EE. UU."),
      List.of(Phrase.of(
          "Other lists draw the classes elsewhere: hard from 150, very hard from 300 mg/L. A softener adds sodium.",
          "Otras listas ponen las clases en otra parte: dura desde 150, muy dura desde 300 mg/L."
              + " Un suavizador añade sodio.")),
      Hardness::reckon);

  private Hardness() {}

  private static Outcome reckon(Inputs inputs) {
    Term hardness = total(inputs);
    Term grains = Coefficient.giving(Scale.NUMBER, 1 / Unit.GRAIN_PER_GALLON.toCoherent(1)).of(Scale.CONCENTRATION)
        .term().times(hardness).named("G", GRAINS.label(), GRAINS.scale());
    return Outcome.empty()
        .with(HARDNESS.name(), hardness)
        .with(GRAINS.name(), grains)
        .naming(CLASS.name(), named(hardness.quantity()));
  }

  /** The sum where both metals are given, even beside a total. */
  private static Term total(Inputs inputs) {
    Optional<Quantity> given = inputs.find(TOTAL);
    if (inputs.find(CALCIUM).isEmpty() || inputs.find(MAGNESIUM).isEmpty()) {
      if (given.isEmpty()) {
        throw new NotReckonable(
            "Calcium and magnesium are wanted, or the hardness.", "Hacen falta calcio y magnesio, o la dureza.");
      }
      return Term.number(1).times(inputs.given("H_g", TOTAL)).named("H", HARDNESS.label(), HARDNESS.scale());
    }
    return inputs.given("Ca", CALCIUM).times(CARBONATE_TO_CALCIUM).plus(inputs.given("Mg", MAGNESIUM).times(4.118))
        .named("H", HARDNESS.label(), HARDNESS.scale());
  }

  static Phrase named(Quantity hardness) {
    double milligrams = hardness.in(Unit.MILLIGRAM_PER_LITRE);
    if (milligrams <= SOFT_TO) return Phrase.of("soft", "blanda");
    if (milligrams <= MODERATE_TO) return Phrase.of("moderately hard", "moderadamente dura");
    return milligrams <= HARD_TO ? Phrase.of("hard", "dura") : Phrase.of("very hard", "muy dura");
  }

  private static QuantityField metal(String name, Phrase label, String example, String most) {
    return QuantityField.of(name, Scale.CONCENTRATION, label, example, example)
        .between("0 mg/L", "100000 mg/L").usually("0.1 mg/L", most).optional();
  }
}
