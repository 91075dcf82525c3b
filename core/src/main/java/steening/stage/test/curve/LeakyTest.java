package steening.stage.test.curve;

import java.util.List;
import steening.aquifer.Hantush;
import steening.field.QuantityField;
import steening.fit.Fitted;
import steening.fit.LeastSquares;
import steening.language.Phrase;
import steening.number.Elementary;
import steening.quantity.Dimension;
import steening.quantity.Measure;
import steening.quantity.Scale;
import steening.reckoning.Answer;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Term;
import steening.stage.test.ConstantRateTest;

/**
 * Transmissivity, storativity and leakage from the drawdowns in an observation well, by the curve of Hantush and Jacob
 * laid through all of them.
 *
 * <p>s = Q W(u; r/B) / (4 π T), u = r² S / (4 T t), c = B² / T; B leakage factor, c resistance of the leaking layer.
 * Source: Hantush and Jacob 1955; least squares after Levenberg and Marquardt. Range: as for Theis, with a level above
 * the leaking layer that does not fall, and a layer that stores nothing. Accuracy: the least sum is found to 1e-6; B and
 * c are seldom known better than to a factor of two.
 */
public final class LeakyTest {
  public static final QuantityField RATE = ConstantRateTest.RATE;
  public static final QuantityField DISTANCE = ConstantRateTest.OBSERVED_AT;

  static final Answer FACTOR = new Answer(
      "leakage-factor", Phrase.of("leakage factor", "factor de goteo"), Scale.DISTANCE);
  static final Answer RESISTANCE = new Answer(
      "resistance", Phrase.of("resistance of the leaking layer", "resistencia hidráulica de la capa con goteo"),
      Scale.DAYS);
  static final Answer B_ERROR = new Answer(
      "leakage-error", Phrase.of("standard error of the leakage factor", "error estándar del factor de goteo"),
      Scale.SHARE);

  public static final Reckoning RECKONING = new Reckoning(
      "leaky-test",
      "test",
      Phrase.of("Test in a leaky aquifer", "Prueba en un acuífero con goteo"),
      List.of(RATE, DISTANCE, Drawdowns.TIMES, Drawdowns.SIZES, Drawdowns.FROM, Drawdowns.TO),
      List.of(TheisTest.TRANSMISSIVITY, TheisTest.STORATIVITY, FACTOR, RESISTANCE, TheisTest.LAST, Curve.MISFIT,
          Curve.T_ERROR, Curve.S_ERROR, B_ERROR),
      Source.seen("Hantush and Jacob 1955; least squares after Levenberg 1944 and Marquardt 1963.",
          "Hantush y Jacob 1955; mínimos cuadrados según Levenberg 1944 y Marquardt 1963."),
      List.of(
          Phrase.of(
              "Leakage through one layer that stores no water, from a level that does not fall.",
              "Goteo a través de una capa que no almacena agua, desde un nivel que no baja."),
          Phrase.of(
              "Levels of an observation well, at a constant rate.",
              "Niveles de un pozo de observación, a gasto constante.")),
      LeakyTest::reckon);

  private static final Phrase UNTOLD = Phrase.of(
      "Leakage is not determined by these readings: without it the curve fits about as well. Use the curve of Theis.",
      "Estas lecturas no determinan el goteo: sin él la curva ajusta casi igual. Use la curva de Theis.");

  /** Where the search for r/B begins: leakage that is just seen. */
  private static final double FIRST_RATIO = 0.1;

  /** Below this r/B nothing of the curve bends within any test. */
  private static final double LEAST_RATIO = 1e-4;

  private LeakyTest() {}

  private static Outcome reckon(Inputs inputs) {
    Drawdowns drawdowns = Drawdowns.in(inputs, 3);
    double distance = inputs.amount(DISTANCE).coherent();
    Fitted fitted = fit(drawdowns, inputs.amount(RATE).coherent(), distance);
    double factor = distance / Elementary.exp(fitted.parameter(2));
    Term q = inputs.given("Q", RATE);
    Term r = inputs.given("r", DISTANCE);
    Term t = Curve.found("T", TheisTest.TRANSMISSIVITY.label(), Scale.TRANSMISSIVITY,
        Elementary.exp(fitted.parameter(0)));
    Term s = Curve.found("S", TheisTest.STORATIVITY.label(), Scale.NUMBER, Elementary.exp(fitted.parameter(1)));
    Term b = Curve.found("B", FACTOR.label(), Scale.DISTANCE, factor);
    Term minutes = Term.given("t", Phrase.of("time of the last reading", "tiempo de la última lectura"), Scale.MINUTES,
        new Measure(Dimension.TIME, drawdowns.last()));
    Term u = TheisCurve.u(r, s, t, minutes).named("u", Phrase.of("u there", "u ahí"), Scale.NUMBER);
    Term leakage = r.over(b).named("r/B", Phrase.of("distance over leakage factor", "distancia entre factor de goteo"),
        Scale.NUMBER);
    Term w = u.wellFunction(leakage)
        .named("W", Phrase.of("well function there", "función de pozo ahí"), Scale.NUMBER);
    Outcome outcome = Outcome.empty()
        .with(TheisTest.TRANSMISSIVITY.name(), t).with(TheisTest.STORATIVITY.name(), s).with(FACTOR.name(), b)
        .with(RESISTANCE.name(), TheisCurve.resistance(b, t).named("c", RESISTANCE.label(), RESISTANCE.scale()))
        .with(TheisTest.LAST.name(), TheisCurve.drawdown(q, t, w).named("s", TheisTest.LAST.label(), Scale.DEPTH));
    outcome = Curve.missing(outcome, fitted);
    outcome = Curve.error(outcome, Curve.T_ERROR, "εT", fitted, 0);
    outcome = Curve.error(outcome, Curve.S_ERROR, "εS", fitted, 1);
    outcome = Curve.error(outcome, B_ERROR, "εB", fitted, 2).remarking(drawdowns.told());
    return Curve.isUndetermined(fitted, 2) ? outcome.remarking(UNTOLD) : outcome;
  }

  /** The logarithms of T in m²/s, of S and of r/B. */
  private static Fitted fit(Drawdowns drawdowns, double rate, double distance) {
    double[] seconds = drawdowns.seconds();
    Fitted tight = TheisTest.fit(drawdowns, rate, distance);
    double[] start = {tight.parameter(0), tight.parameter(1), Curve.logarithm(FIRST_RATIO)};
    Fitted fitted = LeastSquares.fit(
        (i, p) -> drawdown(rate, distance, Elementary.exp(p[0]), Elementary.exp(p[1]), Elementary.exp(p[2]), seconds[i]),
        drawdowns.metres(), start);
    if (fitted.isSettled() && Elementary.exp(fitted.parameter(2)) > LEAST_RATIO) return fitted;
    throw new NotReckonable(
        "These readings show no leakage that could be told. Use the curve of Theis.",
        "Estas lecturas no muestran un goteo que se pueda distinguir. Use la curva de Theis.");
  }

  private static double drawdown(double rate, double distance, double t, double s, double ratio, double seconds) {
    return rate / (TheisCurve.FOUR_PI * t) * Hantush.w(distance * distance * s / (4 * t * seconds), ratio);
  }
}
