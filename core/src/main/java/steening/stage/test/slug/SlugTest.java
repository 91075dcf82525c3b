package steening.stage.test.slug;

import java.util.List;
import steening.aquifer.Slug;
import steening.field.QuantityField;
import steening.field.SeriesField;
import steening.fit.Fitted;
import steening.fit.LeastSquares;
import steening.language.Phrase;
import steening.number.Elementary;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.reckoning.Answer;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Term;
import steening.stage.test.TestStage;
import steening.stage.test.curve.Curve;

/**
 * Transmissivity from a slug of water in a well through the whole of a confined aquifer, by the curve laid through all
 * readings.
 *
 * <p>H / H₀ = F(β, α), β = T t / rc², α = rs² S / rc²; T, and S where it is not given, are those that miss least.
 * Source: Cooper, Bredehoeft and Papadopulos 1967; least squares after Levenberg and Marquardt. Range: H₀ known, level
 * in the casing. Accuracy: T to 0.5 % of the least sum; S is never known better than its order of magnitude.
 */
public final class SlugTest {
  public static final QuantityField CASING = SlugReadings.CASING;
  public static final QuantityField SCREEN = SlugReadings.SCREEN;
  public static final QuantityField FIRST = QuantityField.of(
          "first-head", Scale.DEPTH, Phrase.of("level just after the slug, off its rest",
              "nivel justo tras el golpe, respecto al reposo"), "1.84 ft", "0.56 m")
      .between("0.001 ft", "1000 ft");
  public static final SeriesField TIMES = SlugReadings.TIMES;
  public static final SeriesField HEADS = SlugReadings.HEADS;
  public static final QuantityField STORATIVITY = QuantityField.of(
          "storativity", Scale.NUMBER,
          Phrase.of("storativity, where it is known", "coeficiente de almacenamiento, si se conoce"), "0.001", "0.001")
      .between("0.000000001", "0.5").optional();

  static final Answer TRANSMISSIVITY =
      new Answer("transmissivity", Phrase.of("transmissivity", "transmisividad"), Scale.TRANSMISSIVITY);
  static final Answer S = new Answer(
      "storativity", Phrase.of("storativity", "coeficiente de almacenamiento"), Scale.NUMBER);
  static final Answer MISFIT = new Answer(
      "misfit", Phrase.of("how far the readings are missed, of the first level",
          "cuánto se apartan las lecturas, del primer nivel"), Scale.SHARE);

  public static final Reckoning RECKONING = new Reckoning(
      "slug-test",
      TestStage.NAME,
      Phrase.of("Slug test by a curve", "Prueba de golpe de agua por una curva"),
      List.of(CASING, SCREEN, FIRST, TIMES, HEADS, STORATIVITY),
      List.of(TRANSMISSIVITY, S, MISFIT, Curve.T_ERROR, Curve.S_ERROR),
      Source.memory(
          "Cooper, Bredehoeft and Papadopulos 1967, whose table was seen; least squares after Levenberg 1944 and"
              + " Marquardt 1963.",
          "Cooper, Bredehoeft y Papadopulos 1967, cuya tabla se leyó; mínimos cuadrados según Levenberg 1944 y"
              + " Marquardt 1963."),
      List.of(
          Phrase.of("Confined aquifer, screened through all of it.", "Acuífero confinado, con rejilla en todo él."),
          Phrase.of("Storativity from a slug is an order of magnitude at best.",
              "El almacenamiento por un golpe de agua es, a lo más, un orden de magnitud."),
          Phrase.of("It tells of the ground near the well only.", "Habla sólo del terreno cercano al pozo.")),
      SlugTest::reckon);

  private static final Phrase UNTOLD = Phrase.of(
      "Storativity is not determined by these readings: a value twice or half as large would fit about as well.",
      "Estas lecturas no determinan el coeficiente de almacenamiento: el doble o la mitad ajustaría casi igual.");

  private static final double FIRST_STORATIVITY = 1e-3;
  private static final double LEAST_STORATIVITY = 1e-12;

  private SlugTest() {}

  private static Outcome reckon(Inputs inputs) {
    SlugReadings readings = SlugReadings.in(inputs);
    double casing = inputs.amount(CASING).coherent() / 2;
    double ratio = inputs.amount(SCREEN).coherent() / 2 / casing;
    Quantity known = inputs.find(STORATIVITY).orElse(null);
    Fitted fitted = fit(readings, inputs.amount(FIRST).coherent(), casing * casing, ratio * ratio, known);
    Term transmissivity =
        Curve.found("T", TRANSMISSIVITY.label(), TRANSMISSIVITY.scale(), Elementary.exp(fitted.parameter(0)));
    Outcome outcome = Outcome.empty().with(TRANSMISSIVITY.name(), transmissivity)
        .with(MISFIT.name(), Curve.given("e", MISFIT, Curve.number(fitted.misfit())));
    outcome = Curve.error(outcome, Curve.T_ERROR, "εT", fitted, 0);
    if (known != null) return outcome;
    outcome = outcome.with(S.name(), Curve.found("S", S.label(), S.scale(), Elementary.exp(fitted.parameter(1))));
    outcome = Curve.error(outcome, Curve.S_ERROR, "εS", fitted, 1);
    return Curve.isUndetermined(fitted, 1) ? outcome.remarking(UNTOLD) : outcome;
  }

  /** The logarithms of T in m²/s and, where it is not known, of S. */
  private static Fitted fit(SlugReadings readings, double first, double casing, double ratio, Quantity known) {
    double[] shares = readings.metres().clone();
    double[] seconds = readings.seconds();
    for (int i = 0; i < shares.length; i++) shares[i] /= first;
    double transmissivity = Elementary.ln(casing / halfTime(seconds, shares));
    double storativity = Elementary.ln(known == null ? FIRST_STORATIVITY : known.coherent());
    double[] start = known == null ? new double[] {transmissivity, storativity} : new double[] {transmissivity};
    Fitted fitted = LeastSquares.fit(
        (i, p) -> share(Elementary.exp(p[0]) * seconds[i] / casing,
            ratio * Elementary.exp(p.length > 1 ? p[1] : storativity)),
        shares, start);
    if (fitted.isSettled() && (known != null || Elementary.exp(fitted.parameter(1)) > LEAST_STORATIVITY)) return fitted;
    throw new NotReckonable(
        "No curve comes near these readings. See the first level and the diameters, or give a storativity.",
        "Ninguna curva se acerca a estas lecturas. Revise el primer nivel y los diámetros, o dé un almacenamiento.");
  }

  private static double share(double beta, double alpha) {
    return beta > 0 ? Slug.f(beta, alpha) : 1;
  }

  /** About when the level was half gone: of the reading nearest to it, and never zero. */
  private static double halfTime(double[] seconds, double[] shares) {
    double time = 0;
    double off = Double.MAX_VALUE;
    for (int i = 0; i < shares.length; i++) {
      double here = Math.abs(shares[i] - 0.5);
      if (seconds[i] > 0 && here < off) {
        off = here;
        time = seconds[i];
      }
    }
    return time;
  }
}
