package steening.stage.test.slug;

import java.util.List;
import steening.field.QuantityField;
import steening.field.SeriesField;
import steening.language.Phrase;
import steening.number.Elementary;
import steening.quantity.Figure;
import steening.quantity.Scale;
import steening.reckoning.Answer;
import steening.reckoning.Coefficient;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Term;
import steening.stage.test.StraightLine;
import steening.stage.test.TestStage;

/**
 * Hydraulic conductivity from a slug of water, by the straight line of log level over time.
 *
 * <p>K = d² ln(2 L / D) / (8 L T₀): r² ln(L / R) / (2 L T₀) by diameters; d of the casing, D and L of the screen, T₀
 * the time in which the level comes to 37 % of what it was. T₀ is of the slope through all readings, so the first level
 * need not be known; times stand in the line as shares of the last one. Source: Hvorslev 1951 (formula seen in a
 * lecture sheet). Range: L / R above 8, no storage in the aquifer. Accuracy: the line is exact; K within a factor of
 * two.
 */
public final class Hvorslev {
  public static final QuantityField CASING = SlugReadings.CASING;
  public static final QuantityField SCREEN = SlugReadings.SCREEN;
  public static final QuantityField LENGTH = QuantityField.of(
          "screen-length", Scale.DEPTH, Phrase.of("length of the screen", "largo de la rejilla"), "10 ft", "3 m")
      .between("0.5 ft", "1000 ft");
  public static final SeriesField TIMES = SlugReadings.TIMES;
  public static final SeriesField HEADS = SlugReadings.HEADS;

  static final Answer LAG = new Answer(
      "lag", Phrase.of("time to come to 37 % of a level", "tiempo para llegar al 37 % de un nivel"), Scale.MINUTES);
  static final Answer CONDUCTIVITY =
      new Answer("conductivity", Phrase.of("hydraulic conductivity", "conductividad hidráulica"), Scale.CONDUCTIVITY);

  public static final Reckoning RECKONING = new Reckoning(
      "hvorslev",
      TestStage.NAME,
      Phrase.of("Slug test by a straight line", "Prueba de golpe de agua por una recta"),
      List.of(CASING, SCREEN, LENGTH, TIMES, HEADS),
      List.of(LAG, CONDUCTIVITY),
      Source.seen("Hvorslev 1951, by a lecture sheet.", "Hvorslev 1951, según unos apuntes de curso."),
      List.of(
          Phrase.of("Screen longer than four times its diameter.", "Rejilla más larga que cuatro veces su diámetro."),
          Phrase.of(
              "It tells of the few feet about the screen; the pack's own water spoils the first readings.",
              "Habla de lo que rodea a la rejilla; el agua del filtro estropea las primeras lecturas.")),
      Hvorslev::reckon);

  private static final double LN_10 = 2.302585092994046;
  private static final double LONG_ENOUGH = 4;
  private static final double LEVEL = 1e-9;

  private Hvorslev() {}

  private static Outcome reckon(Inputs inputs) {
    SlugReadings readings = SlugReadings.in(inputs);
    Term length = inputs.given("L", LENGTH);
    Term wide = inputs.given("D", SCREEN);
    double slender = length.quantity().coherent() / wide.quantity().coherent();
    if (!(slender > LONG_ENOUGH)) {
      throw new NotReckonable(
          "A screen of {0}, {1} wide, is too short for this formula: it wants more than four diameters.",
          "Una rejilla de {0} y {1} de diámetro es corta para esta fórmula: pide más de cuatro diámetros.",
          new Figure(length.quantity(), Scale.DEPTH), new Figure(wide.quantity(), Scale.DIAMETER));
    }
    Term ratio = Coefficient.giving(Scale.NUMBER, 2).of(Scale.DEPTH).of(Scale.DIAMETER, -1).term()
        .times(length).over(wide).named("L/R", Phrase.of("length over radius", "largo entre radio"), Scale.NUMBER);
    Term lag = lag(readings).named("T₀", LAG.label(), LAG.scale());
    Term conductivity = Coefficient.giving(Scale.CONDUCTIVITY, LN_10 / 8)
        .of(Scale.DIAMETER, 2).of(Scale.DEPTH, -1).of(Scale.MINUTES, -1).term()
        .times(inputs.given("d", CASING).squared()).times(ratio.log10()).over(length.times(lag))
        .named("K", CONDUCTIVITY.label(), CONDUCTIVITY.scale());
    return Outcome.empty().with(LAG.name(), lag).with(CONDUCTIVITY.name(), conductivity)
        .remarking(Phrase.of(
            "The line rests on all {0} readings; leave out those of the first bend.",
            "La recta se apoya en las {0} lecturas; quite las de la primera curva.",
            Integer.toString(readings.metres().length)));
  }

  private static Term lag(SlugReadings readings) {
    double last = readings.last();
    double[] x = readings.seconds().clone();
    double[] y = readings.metres().clone();
    double first = y[0];
    for (int i = 0; i < x.length; i++) {
      x[i] /= last;
      y[i] = Elementary.log10(y[i] / first);
    }
    StraightLine.Sums sums = StraightLine.Sums.of(x, y, Scale.NUMBER,
        Phrase.of("time / last time", "tiempo / último tiempo"),
        Phrase.of("the logarithms of level / first level", "los logaritmos de nivel / primer nivel"));
    Term fall = Term.number(0).minus(sums.slope())
        .named("m", Phrase.of("log cycles fallen until the last time", "ciclos bajados hasta el último tiempo"),
            Scale.NUMBER);
    if (!(fall.quantity().coherent() > LEVEL)) {
      throw new NotReckonable(
          "The level does not come back to its rest over these readings.",
          "El nivel no vuelve a su reposo en estas lecturas.");
    }
    Term time = Term.given("t", Phrase.of("time of the last reading", "tiempo de la última lectura"), Scale.MINUTES,
        SlugReadings.time(last));
    return Coefficient.giving(Scale.MINUTES, 1 / LN_10).of(Scale.MINUTES).term().times(time).over(fall);
  }
}
