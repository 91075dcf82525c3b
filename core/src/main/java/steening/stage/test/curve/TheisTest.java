package steening.stage.test.curve;

import java.util.List;
import steening.aquifer.Theis;
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
 * Transmissivity and storativity from the drawdowns in an observation well, by the curve of Theis laid through all of
 * them.
 *
 * <p>s = Q W(u) / (4 π T), u = r² S / (4 T t); T and S are those for which the sum of squares of what is missed is least,
 * all readings weighing alike. Source: Theis 1935; least squares after Levenberg and Marquardt. Range: confined, endless,
 * even aquifer, constant rate. Accuracy: the least sum is found to 1e-6; of the aquifer see the standard errors.
 */
public final class TheisTest {
  public static final QuantityField RATE = ConstantRateTest.RATE;
  public static final QuantityField DISTANCE = ConstantRateTest.OBSERVED_AT;

  static final Answer TRANSMISSIVITY =
      new Answer("transmissivity", Phrase.of("transmissivity", "transmisividad"), Scale.TRANSMISSIVITY);
  static final Answer STORATIVITY = new Answer(
      "storativity", Phrase.of("storativity", "coeficiente de almacenamiento"), Scale.NUMBER);
  static final Answer LAST = new Answer(
      "drawdown", Phrase.of("the curve at the last reading", "la curva en la última lectura"), Scale.DEPTH);

  public static final Reckoning RECKONING = new Reckoning(
      "theis-test",
      "test",
      Phrase.of("Test by the curve of Theis", "Prueba por la curva de Theis"),
      List.of(RATE, DISTANCE, Drawdowns.TIMES, Drawdowns.SIZES, Drawdowns.FROM, Drawdowns.TO),
      List.of(TRANSMISSIVITY, STORATIVITY, LAST, Curve.MISFIT, Curve.T_ERROR, Curve.S_ERROR, Curve.CORRELATION),
      Source.seen("Theis 1935; least squares after Levenberg 1944 and Marquardt 1963.",
          "Theis 1935; mínimos cuadrados según Levenberg 1944 y Marquardt 1963."),
      List.of(
          Phrase.of(
              "Confined aquifer without end, the same everywhere; constant rate; no leakage.",
              "Acuífero confinado sin fin, igual en todas partes; gasto constante; sin goteo."),
          Phrase.of(
              "Levels of an observation well: the pumped well's own losses would pass for storage.",
              "Niveles de un pozo de observación: las pérdidas del pozo bombeado se tomarían por almacenamiento.")),
      TheisTest::reckon);

  private static final Phrase UNTOLD = Phrase.of(
      "Storativity is not determined by these readings: a value twice or half as large would fit about as well.",
      "Estas lecturas no determinan el coeficiente de almacenamiento: el doble o la mitad ajustaría casi igual.");

  /** Where a search begins: what the last reading would give with u near 0.01. */
  private static final double FIRST_U = 0.01;

  private TheisTest() {}

  private static Outcome reckon(Inputs inputs) {
    Drawdowns drawdowns = Drawdowns.in(inputs, 2);
    double rate = inputs.amount(RATE).coherent();
    double distance = inputs.amount(DISTANCE).coherent();
    Fitted fitted = fit(drawdowns, rate, distance);
    double transmissivity = Elementary.exp(fitted.parameter(0));
    double storativity = Elementary.exp(fitted.parameter(1));
    Term q = inputs.given("Q", RATE);
    Term r = inputs.given("r", DISTANCE);
    Term t = Curve.found("T", TRANSMISSIVITY.label(), TRANSMISSIVITY.scale(), transmissivity);
    Term s = Curve.found("S", STORATIVITY.label(), STORATIVITY.scale(), storativity);
    Term minutes = Term.given("t", Phrase.of("time of the last reading", "tiempo de la última lectura"), Scale.MINUTES,
        new Measure(Dimension.TIME, drawdowns.last()));
    Term u = TheisCurve.u(r, s, t, minutes).named("u", Phrase.of("u there", "u ahí"), Scale.NUMBER);
    Term w = u.wellFunction().named("W", Phrase.of("well function there", "función de pozo ahí"), Scale.NUMBER);
    Outcome outcome = Outcome.empty().with(TRANSMISSIVITY.name(), t).with(STORATIVITY.name(), s)
        .with(LAST.name(), TheisCurve.drawdown(q, t, w).named("s", LAST.label(), LAST.scale()));
    outcome = Curve.missing(outcome, fitted);
    outcome = Curve.error(outcome, Curve.T_ERROR, "εT", fitted, 0);
    outcome = Curve.error(outcome, Curve.S_ERROR, "εS", fitted, 1);
    outcome = outcome.with(Curve.CORRELATION.name(),
        Curve.given("ρ", Curve.CORRELATION, Curve.number(fitted.correlation(0, 1))));
    outcome = outcome.remarking(drawdowns.told());
    return Curve.isUndetermined(fitted, 1) ? outcome.remarking(UNTOLD) : outcome;
  }

  /** The logarithms of T in m²/s and S. */
  static Fitted fit(Drawdowns drawdowns, double rate, double distance) {
    double[] seconds = drawdowns.seconds();
    double transmissivity = rate / (TheisCurve.FOUR_PI * drawdowns.deepest()) * Theis.w(FIRST_U);
    double storativity = 4 * transmissivity * drawdowns.last() * FIRST_U / (distance * distance);
    Fitted fitted = LeastSquares.fit(
        (i, p) -> drawdown(rate, distance, Elementary.exp(p[0]), Elementary.exp(p[1]), seconds[i]),
        drawdowns.metres(), new double[] {Curve.logarithm(transmissivity), Curve.logarithm(storativity)});
    if (fitted.isSettled()) return fitted;
    throw new NotReckonable(
        "No curve of Theis comes near these readings. See whether the rate was constant, and try another window.",
        "Ninguna curva de Theis se acerca a estas lecturas. Vea si el gasto fue constante, y pruebe otra ventana.");
  }

  private static double drawdown(double rate, double distance, double t, double s, double seconds) {
    return rate / (TheisCurve.FOUR_PI * t) * Theis.w(distance * distance * s / (4 * t * seconds));
  }
}
