package steening.stage.test.gauge;

import steening.field.QuantityField;
import steening.language.Phrase;
import steening.number.Elementary;
import steening.quantity.Dimension;
import steening.quantity.Figure;
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

/** A measured rate, and the two between which it lies by the error its way of measuring is known for. */
public final class RateBand {
  public static final Answer RATE = new Answer("rate", Phrase.of("measured rate", "gasto medido"), Scale.FLOW);
  public static final Answer LEAST = new Answer(
      "least-rate", Phrase.of("rate at the least, by the error", "gasto mínimo, por el error"), Scale.FLOW);
  public static final Answer MOST = new Answer(
      "most-rate", Phrase.of("rate at the most, by the error", "gasto máximo, por el error"), Scale.FLOW);

  private static final Phrase ERROR = Phrase.of("error of this measurement", "error de esta medición");

  private RateBand() {}

  /** An error that is known for the way of measuring as such. */
  static Term error(double share) {
    return Term.given("e", ERROR, Scale.SHARE, new Measure(Dimension.NUMBER, share));
  }

  /** An error that follows from these very readings. */
  static Term error(Term reckoned) {
    return reckoned.named("e", ERROR, Scale.SHARE);
  }

  /** What a formula gives as the rate of the measurement. */
  static Outcome around(Term formula, Term error) {
    Term rate = formula.named("Q", RATE.label(), RATE.scale());
    Term share = Coefficient.giving(Scale.NUMBER, 1).of(Scale.SHARE).term().times(error);
    Term one = Term.number(1);
    return Outcome.empty()
        .with(RATE.name(), rate)
        .with(LEAST.name(), rate.times(one.minus(share)).named("Q₁", LEAST.label(), LEAST.scale()))
        .with(MOST.name(), rate.times(one.plus(share)).named("Q₂", MOST.label(), MOST.scale()));
  }

  /**
   * Refuses a reading where the way of measuring does not hold.
   *
   * @param instead what to do there
   */
  static void check(Inputs inputs, QuantityField field, Quantity least, Quantity most, Phrase instead) {
    double value = inputs.amount(field).coherent();
    boolean within = value >= least.coherent() * (1 - 1e-9) && value <= most.coherent() * (1 + 1e-9);
    if (within) return;
    throw new NotReckonable(
        "{0}: {1}; this way of measuring holds from {2} to {3}. {4}",
        "{0}: {1}; esta forma de aforar vale de {2} a {3}. {4}",
        field.label(), figure(field, inputs.amount(field)), figure(field, least), figure(field, most), instead);
  }

  /** The size of a formula made for feet and cubic feet a second, in coherent units. */
  static double fromFeet(double factor, double power) {
    double foot = Unit.FOOT.toCoherent(1);
    return factor * Elementary.pow(foot, 3 - power);
  }

  private static Figure figure(QuantityField field, Quantity quantity) {
    return new Figure(quantity, field.scale());
  }
}
