package steening.stage.disinfection;

import java.util.List;
import steening.language.Phrase;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.reckoning.Answer;
import steening.reckoning.Coefficient;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Term;

/**
 * Dry calcium hypochlorite for a well.
 *
 * <p>M = c V / s; c chlorine wanted, V water to treat, s share of available chlorine by weight. Source: mass balance.
 * Range: product that is dissolved first; dry product sinks and works at the bottom only. Accuracy: as good as the
 * label.
 */
public final class DryChlorineDose {
  static final Answer DOSE =
      new Answer("dose", Phrase.of("dry calcium hypochlorite", "hipoclorito de calcio seco"), Scale.SMALL_WEIGHT);

  public static final Reckoning RECKONING = new Reckoning(
      "dry-chlorine-dose",
      DisinfectionStage.NAME,
      Phrase.of("Dry chlorine for a well", "Cloro seco para un pozo"),
      WaterToTreat.inputsAnd(DisinfectionEntries.DRY_STRENGTH, DisinfectionEntries.TARGET),
      List.of(WaterToTreat.CASING_WATER, WaterToTreat.PACK_WATER, WaterToTreat.WATER, DOSE),
      Source.derived("Mass balance.", "Balance de masa."),
      Cautions.and(
          Phrase.of("Dissolve it in a plastic pail first; tablets alone are not enough.",
              "Disuélvalo antes en una cubeta de plástico; las pastillas solas no bastan."),
          Phrase.of("Keep it dry, and away from fuel, oil and grease.",
              "Guárdelo seco, lejos de combustible, aceite y grasa.")),
      DryChlorineDose::reckon);

  private DryChlorineDose() {}

  private static Outcome reckon(Inputs inputs) {
    Outcome water = WaterToTreat.of(inputs);
    Term factor = Coefficient.giving(Scale.SMALL_WEIGHT, 1)
        .of(Scale.CONCENTRATION).of(Scale.LIQUID).of(Scale.SHARE, -1).term();
    Term dose = factor.times(inputs.given("c", DisinfectionEntries.TARGET)).times(water.term(WaterToTreat.WATER.name()))
        .over(inputs.given("s", DisinfectionEntries.DRY_STRENGTH));
    return water.with(DOSE.name(), dose.named("M", DOSE.label(), DOSE.scale()));
  }

  /** The other way round: what a weight put in makes of the water. */
  static Outcome reached(Term water, Quantity weight, Quantity strength) {
    Term put = Term.given("M", DisinfectionEntries.WEIGHT.label(), Scale.SMALL_WEIGHT, weight);
    Term label = Term.given("s", DisinfectionEntries.STRENGTH.label(), Scale.SHARE, strength);
    Term factor = Coefficient.giving(Scale.CONCENTRATION, 1)
        .of(Scale.SMALL_WEIGHT).of(Scale.SHARE).of(Scale.LIQUID, -1).term();
    return Reached.outcome(factor.times(put).times(label).over(water));
  }
}
