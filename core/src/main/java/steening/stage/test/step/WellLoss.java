package steening.stage.test.step;

import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Answer;
import steening.reckoning.Coefficient;
import steening.reckoning.Outcome;
import steening.reckoning.Term;
import steening.stage.test.ConstantRateTest;

/**
 * The drawdown in a pumped well in two parts: s = B Q + C Q², the aquifer's and the well's.
 *
 * <p>Source: Jacob 1947; the share B Q / s as efficiency, Bierschenk 1963. The classes of C are Walton's, 1962, from
 * memory: 0.5, 1 and 4 min²/m⁵, which are 5, 10 and 40 s²/ft⁵ rounded.
 */
final class WellLoss {
  static final Answer DRAWDOWN =
      new Answer("drawdown", Phrase.of("drawdown at that rate", "abatimiento a ese gasto"), Scale.DEPTH);
  static final Answer AQUIFER = new Answer(
      "aquifer-loss", Phrase.of("of it, in proportion to the rate", "de él, proporcional al gasto"), Scale.DEPTH);
  static final Answer WELL = new Answer(
      "well-loss", Phrase.of("of it, with the square of the rate", "de él, con el cuadrado del gasto"), Scale.DEPTH);
  static final Answer EFFICIENCY =
      new Answer("efficiency", Phrase.of("efficiency at that rate", "eficiencia a ese gasto"), Scale.SHARE);
  static final Answer CLASS =
      Answer.word("class", Phrase.of("well losses by Walton", "pérdidas del pozo según Walton"));

  static final QuantityField RATE = ConstantRateTest.RATE.labelled("at the rate", "al gasto");

  static final Phrase MEMORY = Phrase.of(
      "The classes of Walton 1962 are from memory, not re-read.",
      "Las clases de Walton 1962 son de memoria, sin releer.");
  static final Phrase SHARE_ONLY = Phrase.of(
      "Such an efficiency is the share that grows with the rate: a clogged skin or a short screen hides in B.",
      "Esta eficiencia es la parte proporcional al gasto: una pared tapada o una rejilla corta se esconden en B.");

  private static final double MILD = limit(0.5);
  private static final double SEVERE = limit(1);
  private static final double BEYOND = limit(4);

  private WellLoss() {}

  /** Both parts, their sum, the share of the first, and the class. */
  static Outcome at(Outcome outcome, Term rate, Term aquifer, Term well) {
    Term first = Coefficient.giving(Scale.DEPTH, 1).of(Scale.SPECIFIC_DRAWDOWN).of(Scale.FLOW).term()
        .times(aquifer).times(rate).named("s_B", AQUIFER.label(), AQUIFER.scale());
    Term second = Coefficient.giving(Scale.DEPTH, 1).of(Scale.WELL_LOSS).of(Scale.FLOW, 2).term()
        .times(well).times(rate.squared()).named("s_C", WELL.label(), WELL.scale());
    Term both = first.plus(second).named("s", DRAWDOWN.label(), DRAWDOWN.scale());
    Term share = Coefficient.giving(Scale.SHARE, 1).of(Scale.DEPTH).of(Scale.DEPTH, -1).term()
        .times(first).over(both).named("E", EFFICIENCY.label(), EFFICIENCY.scale());
    return outcome.with(AQUIFER.name(), first).with(WELL.name(), second).with(DRAWDOWN.name(), both)
        .with(EFFICIENCY.name(), share).naming(CLASS.name(), classOf(well.quantity()))
        .remarking(SHARE_ONLY).remarking(MEMORY);
  }

  private static Phrase classOf(Quantity well) {
    double c = well.coherent();
    if (c < MILD) return Phrase.of("well designed and developed", "bien diseñado y desarrollado");
    if (c < SEVERE) return Phrase.of("mild deterioration", "deterioro leve");
    if (c <= BEYOND) return Phrase.of("severe deterioration or clogging", "deterioro grave u obstrucción");
    return Phrase.of("hard to restore", "difícil de recuperar");
  }

  private static double limit(double squareMinutes) {
    return Unit.SQUARE_MINUTE_PER_METRE_TO_THE_FIFTH.toCoherent(squareMinutes);
  }
}
