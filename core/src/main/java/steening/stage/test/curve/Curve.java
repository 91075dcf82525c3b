package steening.stage.test.curve;

import steening.fit.Fitted;
import steening.language.Phrase;
import steening.number.Elementary;
import steening.quantity.Dimension;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.reckoning.Answer;
import steening.reckoning.Outcome;
import steening.reckoning.Term;

/** What all curves laid through drawdowns answer beside what they are made of. */
public final class Curve {
  public static final Answer MISFIT = new Answer(
      "misfit", Phrase.of("how far the readings are missed, root mean square",
          "cuánto se apartan las lecturas, media cuadrática"), Scale.DEPTH);
  public static final Answer T_ERROR = new Answer(
      "transmissivity-error",
      Phrase.of("standard error of the transmissivity", "error estándar de la transmisividad"), Scale.SHARE);
  public static final Answer S_ERROR = new Answer(
      "storativity-error",
      Phrase.of("standard error of the storativity", "error estándar del coeficiente de almacenamiento"), Scale.SHARE);
  static final Answer CORRELATION = new Answer(
      "correlation", Phrase.of("correlation of the two", "correlación de ambos"), Scale.NUMBER);

  /** A standard error of a logarithm above this is a factor of two either way: nobody would build on it. */
  static final double UNDETERMINED = 0.7;

  private Curve() {}

  /** A parameter found as a logarithm, as a term that is given by the fit. */
  public static Term found(String symbol, Phrase label, Scale scale, double coherent) {
    Phrase said = Phrase.of("{0}, by least squares", "{0}, por mínimos cuadrados", label);
    return Term.given(symbol, said, scale, scale.dimension().of(coherent));
  }

  public static Term given(String symbol, Answer answer, Quantity quantity) {
    return Term.given(symbol, answer.label(), answer.scale(), quantity);
  }

  public static Outcome missing(Outcome outcome, Fitted fitted) {
    return outcome.with(MISFIT.name(), given("e", MISFIT, Length.ofMetres(fitted.misfit())));
  }

  /** Said where a parameter is not told by the readings; the error of its logarithm decides. */
  public static boolean isUndetermined(Fitted fitted, int parameter) {
    return !(fitted.standardError(parameter) < UNDETERMINED);
  }

  public static Outcome error(Outcome outcome, Answer answer, String symbol, Fitted fitted, int parameter) {
    double error = fitted.standardError(parameter);
    if (!(error < Double.MAX_VALUE)) return outcome;
    return outcome.with(answer.name(), given(symbol, answer, number(error)));
  }

  public static Quantity number(double value) {
    return new Measure(Dimension.NUMBER, value);
  }

  public static Figure minutes(double seconds) {
    return new Figure(new Measure(Dimension.TIME, seconds), Scale.MINUTES);
  }

  static double logarithm(double value) {
    return Elementary.ln(value);
  }
}
