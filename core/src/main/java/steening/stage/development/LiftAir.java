package steening.stage.development;

import steening.language.Phrase;
import steening.quantity.Dimension;
import steening.quantity.Length;
import steening.quantity.Measure;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Answer;
import steening.reckoning.Coefficient;
import steening.reckoning.Outcome;
import steening.reckoning.Term;

/**
 * The air of a lift by two published formulas, which answer different questions and differ by about two.
 *
 * <p>Free air of an efficient lift: V = 0.8 Q E / (C log₁₀(1 + S/34)), C by submergence (compressed-air handbooks,
 * memory). Displacement of the compressor: V = k Q E / (585 log₁₀(1 + S/34)), k = 3 + E/700 (handbook of chemical
 * engineering, about 1922, seen). V in cfm, Q in gpm, lift E and submerged length S in ft; 34 ft of water are the
 * pressure of the air. Accuracy: 30 % against field results.
 */
final class LiftAir {
  static final Answer LEAST = new Answer(
      "air-least", Phrase.of("free air, efficient lift", "aire libre, bombeo eficiente"), Scale.AIR_FLOW);
  static final Answer MOST = new Answer(
      "air-most", Phrase.of("displacement of the compressor", "desplazamiento del compresor"), Scale.AIR_FLOW);

  /** Of C, for submergences from 35 % in steps of 5; air line outside the eductor. From memory. */
  private static final double[] CONSTANTS = {216, 246, 272, 296, 318, 335, 348, 358, 366};
  private static final double LEAST_SHARE = 0.35;
  private static final double STEP = 0.05;
  /** Of a share, so that 0.7 as reckoned still is 70 %. */
  private static final double ROUNDING = 1e-9;

  /** Cubic feet of air for each gallon of water and foot of lift, in coherent units. */
  private static final double AIR_BY_LIFT =
      Unit.CUBIC_FOOT.toCoherent(1) / Unit.GALLON.toCoherent(1) / Unit.FOOT.toCoherent(1);

  private LiftAir() {}

  /**
   * An outcome with the air added.
   *
   * @param submergence a share of the whole length of the lift
   */
  static Outcome of(Outcome outcome, Term rate, Term lift, Term under, Term submergence) {
    Term atmosphere = Term.given(
        "H", Phrase.of("water that weighs as much as the air", "agua que pesa tanto como el aire"), Scale.DEPTH,
        Length.of(34, Unit.FOOT));
    Term pressed = under.plus(atmosphere).over(atmosphere).log10();
    Term stretch = Coefficient.giving(Scale.NUMBER, 1 / Unit.FOOT.toCoherent(700)).of(Scale.DEPTH).term();
    Term k = Term.number(3).plus(stretch.times(lift))
        .named("k", Phrase.of("factor of the lift", "factor de la elevación"), Scale.NUMBER);
    Term most = byLift(1).times(k).times(rate).times(lift).over(Term.number(585).times(pressed))
        .named("Vd", MOST.label(), MOST.scale());
    double share = submergence.quantity().coherent();
    double place = (share - LEAST_SHARE) / STEP;
    boolean told = place >= -ROUNDING && place <= CONSTANTS.length - 1 + ROUNDING;
    if (!told) {
      return outcome.with(MOST.name(), most).remarking(Phrase.of(
          "There is no constant of the free-air formula for this submergence; only the larger figure is given.",
          "La fórmula de aire libre no tiene constante para esta sumergencia; se da solo la cifra mayor."));
    }
    Term c = Term.given("C", Phrase.of("constant by submergence", "constante según la sumergencia"), Scale.NUMBER,
        new Measure(Dimension.NUMBER, constant(place)));
    Term least = byLift(0.8).times(rate).times(lift).over(c.times(pressed)).named("Vf", LEAST.label(), LEAST.scale());
    return outcome.with(LEAST.name(), least).with(MOST.name(), most);
  }

  private static Term byLift(double factor) {
    return Coefficient.giving(Scale.AIR_FLOW, factor * AIR_BY_LIFT).of(Scale.FLOW).of(Scale.DEPTH).term();
  }

  /** Between two of the table in proportion. */
  private static double constant(double place) {
    double within = Math.min(Math.max(place, 0), CONSTANTS.length - 1);
    int low = (int) Math.min(Math.floor(within), CONSTANTS.length - 2);
    return CONSTANTS[low] + (within - low) * (CONSTANTS[low + 1] - CONSTANTS[low]);
  }
}
