package steening.stage.disinfection;

import java.util.List;
import steening.language.Phrase;
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

/**
 * Bleach for a well.
 *
 * <p>B = c V / (1000 s); c chlorine wanted in mg/L, V water to treat, s strength as weight per volume: 5.25 % is
 * 52.5 g/L. Source: mass balance; read as weight per volume, the percentages give the amounts of a provincial table in
 * three products to its rounding (seen). Range: fresh product; it weakens with age and heat. Accuracy: 4 % at worst
 * against that table; the water in the pack decides the real error.
 */
public final class DisinfectionDose {
  /** A percentage of bleach counts grams in 100 mL of solution. */
  private static final double PER_VOLUME = Unit.GRAM_PER_CUBIC_CENTIMETRE.toCoherent(1);

  static final Answer DOSE = new Answer("dose", Phrase.of("bleach", "blanqueador"), Scale.DOSE);

  public static final Reckoning RECKONING = new Reckoning(
      "disinfection-dose",
      DisinfectionStage.NAME,
      Phrase.of("Bleach for a well", "Blanqueador para un pozo"),
      WaterToTreat.inputsAnd(DisinfectionEntries.STRENGTH, DisinfectionEntries.TARGET),
      List.of(WaterToTreat.CASING_WATER, WaterToTreat.PACK_WATER, WaterToTreat.WATER, DOSE),
      Source.seen(
          "Mass balance; strength as weight per volume, as in Alberta's shock chlorination worksheet"
              + " and Michigan R 325.1661 Table 5.",
          "Balance de masa; concentración en peso por volumen, como en la hoja de cloración de Alberta"
              + " y Michigan R 325.1661 tabla 5."),
      Cautions.and(Phrase.of(
          "Fresh bleach: an old or warm jug has lost strength.",
          "Blanqueador fresco: un envase viejo o caliente ha perdido fuerza.")),
      DisinfectionDose::reckon);

  private DisinfectionDose() {}

  private static Outcome reckon(Inputs inputs) {
    Outcome water = WaterToTreat.of(inputs);
    Term target = inputs.given("c", DisinfectionEntries.TARGET);
    Term strength = inputs.given("s", DisinfectionEntries.STRENGTH);
    Term factor = Coefficient.giving(Scale.DOSE, 1 / PER_VOLUME)
        .of(Scale.CONCENTRATION).of(Scale.LIQUID).of(Scale.SHARE, -1).term();
    Term dose = factor.times(target).times(water.term(WaterToTreat.WATER.name())).over(strength);
    return water.with(DOSE.name(), dose.named("B", DOSE.label(), DOSE.scale()));
  }

  /** The other way round: what an amount poured in makes of the water. */
  static Outcome reached(Term water, Quantity amount, Quantity strength) {
    Term poured = Term.given("B", DisinfectionEntries.AMOUNT.label(), Scale.DOSE, amount);
    Term label = Term.given("s", DisinfectionEntries.STRENGTH.label(), Scale.SHARE, strength);
    Term factor = Coefficient.giving(Scale.CONCENTRATION, PER_VOLUME)
        .of(Scale.DOSE).of(Scale.SHARE).of(Scale.LIQUID, -1).term();
    return Reached.outcome(factor.times(poured).times(label).over(water));
  }
}
