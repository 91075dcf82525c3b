package steening.stage.pump.line;

import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Dimension;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.reckoning.Coefficient;
import steening.reckoning.Term;

/**
 * Friction by Hazen and Williams: f = 10.67 (Q/C)^(1/0.54) / d^(2.63/0.54) l in metres and cubic metres a second.
 * Source:
 * V = 0.849 C R^0.63 S^0.54 (memory), held against 77 Illinois Administrative Code 906, Appendix A, Exhibit I.
 */
public final class HazenWilliams {
  public static final QuantityField SMOOTHNESS = QuantityField.of(
          "smoothness", Scale.NUMBER, Phrase.of("C of Hazen and Williams", "C de Hazen y Williams"), "140", "140")
      .between("40", "160").usually("90", "155").optional();

  /** Plastic pipe with some years on it: 140 of the 150 that tables give for new pipe (common practice, no source). */
  public static final Quantity PLASTIC = new Measure(Dimension.NUMBER, 140);

  /** Solved for the slope S: rounded exponents would cost 0.2 %. */
  private static final double FACTOR = 10.67;

  private static final double FLOW_POWER = 1 / 0.54;
  private static final double DIAMETER_POWER = 2.63 / 0.54;

  private HazenWilliams() {}

  /** The height lost in a length of pipe. */
  public static Term friction(Term rate, Term smoothness, Term inside, Term length) {
    return Coefficient.giving(Scale.DEPTH, FACTOR)
        .of(Scale.FLOW, FLOW_POWER).of(Scale.DIAMETER, -DIAMETER_POWER).of(Scale.DEPTH).term()
        .times(rate.over(smoothness).power(FLOW_POWER)).over(inside.power(DIAMETER_POWER)).times(length);
  }
}
