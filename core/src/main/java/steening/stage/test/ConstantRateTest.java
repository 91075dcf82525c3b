package steening.stage.test;

import java.util.ArrayList;
import java.util.List;
import steening.field.QuantityField;
import steening.field.SeriesField;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Answer;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Term;

/**
 * Transmissivity from the straight part of a constant-rate test, after Cooper and Jacob.
 *
 * <p>Drawdown is a straight line over log t: T = 2.303 Q / (4 π Δs); Q rate, Δs drawdown per log cycle. With an
 * observation well at distance r: S = 2.25 T t₀ / r², t₀ where the line meets zero, and u = r² S / (4 T t).
 *
 * <p>Source: Cooper and Jacob 1946; the constants 264 and 0.3 for gpm, feet and gpd/ft in Illinois Adm. Code 35-671
 * Appendix E and TM 5-818-5 Appendix C (seen). Range: constant rate, u below 0.05 (2 % of the drawdown), no boundary or
 * leakage in the window. Accuracy: 0.1 % of the line that was fitted; of the aquifer, whatever the window decides.
 */
public final class ConstantRateTest {
  public static final QuantityField RATE = TestEntries.RATE;

  public static final SeriesField TIMES = SeriesField.of(
      QuantityField.of("times", Scale.MINUTES, Phrase.of("minutes since the start", "minutos desde el arranque"),
          "10 min", "10 min")
          .between("0 min", "1000000 min"),
      2, "10; 100; 240 min", "10; 100; 240 min");

  public static final SeriesField DRAWDOWNS = SeriesField.of(
      QuantityField.of("drawdowns", Scale.DEPTH, Phrase.of("drawdowns", "abatimientos"), "10.58 ft", "3.22 m")
          .between("-100 ft", "6000 ft"),
      2, "10.58; 11.90; 12.40 ft", "3.22; 3.63; 3.78 m");

  public static final QuantityField FROM = Window.FROM;

  public static final QuantityField TO = Window.TO;

  /** To a well where the level is watched; nothing is drawn from it. */
  public static final QuantityField OBSERVED_AT = QuantityField.of(
          "distance", Scale.DISTANCE,
          Phrase.of("distance to the observation well", "distancia al pozo de observación"), "200 ft", "60 m")
      .between("1 ft", "20000 ft").usually("5 ft", "3000 ft");

  public static final QuantityField DISTANCE = OBSERVED_AT.optional();

  static final Answer SLOPE = new Answer(
      "slope", Phrase.of("drawdown per log cycle", "abatimiento por ciclo logarítmico"), Scale.DEPTH);
  static final Answer START = new Answer("start", Phrase.of("the line at 1 min", "la recta a 1 min"), Scale.DEPTH);
  static final Answer TRANSMISSIVITY = new Answer(
      "transmissivity", Phrase.of("transmissivity", "transmisividad"), Scale.TRANSMISSIVITY);
  static final Answer ZERO_TIME = new Answer(
      "zero-time",
      Phrase.of("time at which the line meets zero drawdown", "tiempo en que la recta corta el abatimiento cero"),
      Scale.MINUTES);
  static final Answer STORATIVITY = new Answer(
      "storativity", Phrase.of("storativity", "coeficiente de almacenamiento"), Scale.NUMBER);
  static final Answer U = new Answer(
      "u", Phrase.of("u at the first reading used", "u en la primera lectura usada"), Scale.NUMBER);
  static final Answer CAPACITY = new Answer(
      "specific-capacity",
      Phrase.of("specific capacity at the last reading used", "caudal específico en la última lectura usada"),
      Scale.SPECIFIC_CAPACITY);

  public static final Reckoning RECKONING = new Reckoning(
      "constant-rate-test",
      TestStage.NAME,
      Phrase.of("Constant-rate test", "Prueba a caudal constante"),
      List.of(RATE, TIMES, DRAWDOWNS, FROM, TO, DISTANCE),
      List.of(SLOPE, START, TRANSMISSIVITY, ZERO_TIME, STORATIVITY, U, CAPACITY),
      Source.seen(
          "Cooper and Jacob 1946; constants as in Illinois Adm. Code 35-671 Appendix E and TM 5-818-5 Appendix C.",
          "Cooper y Jacob 1946; constantes según Illinois Adm. Code 35-671 apéndice E y TM 5-818-5 apéndice C."),
      List.of(
          Phrase.of("The rate stays the same from start to end.", "El gasto no cambia de principio a fin."),
          Phrase.of(
              "u is below 0.05 in the window; in the pumped well, casing storage is past.",
              "u es menor de 0.05 en la ventana; en el pozo bombeado ya pasó el almacenamiento en el ademe."),
          Phrase.of(
              "No boundary, leakage or recharge bends the line in the window.",
              "Ninguna frontera, goteo o recarga dobla la recta en la ventana.")),
      ConstantRateTest::reckon);

  private ConstantRateTest() {}

  private static Outcome reckon(Inputs inputs) {
    Window window = Window.in(inputs);
    List<StraightLine.Point> used = window.of(points(inputs.value(TIMES), inputs.value(DRAWDOWNS)));
    Term rate = inputs.given("Q", RATE);
    Phrase logarithms = Phrase.of("log t, t in minutes", "log t, t en minutos");
    StraightLine.Sums sums = StraightLine.Sums.of(used, logarithms);
    Term slope = sums.slope().named("Δs", SLOPE.label(), SLOPE.scale());
    if (!StraightLine.rises(slope)) {
      throw new NotReckonable(
          "The drawdown does not grow in the window: {0} per log cycle. No transmissivity follows from that.",
          "El abatimiento no crece en la ventana: {0} por ciclo logarítmico. De eso no resulta transmisividad.",
          new Figure(slope.quantity(), Scale.DEPTH));
    }
    StraightLine line = sums.line(slope, "s₁", START.label());
    Term transmissivity = JacobConstants.transmissivity(rate, slope)
        .named("T", TRANSMISSIVITY.label(), TRANSMISSIVITY.scale());
    Outcome outcome = Outcome.empty()
        .with(SLOPE.name(), slope).with(START.name(), line.start()).with(TRANSMISSIVITY.name(), transmissivity);
    outcome = Storage.added(outcome, inputs, used, transmissivity, line);
    outcome = capacity(outcome, used, rate);
    return outcome.remarking(window.told(used)).remarking(line.misfit(used));
  }

  static List<StraightLine.Point> points(List<Quantity> times, List<Quantity> drawdowns) {
    if (times.size() != drawdowns.size()) {
      throw new NotReckonable(
          "{0} times and {1} drawdowns do not pair.", "{0} tiempos y {1} abatimientos no forman pares.",
          Integer.toString(times.size()), Integer.toString(drawdowns.size()));
    }
    List<StraightLine.Point> points = new ArrayList<>();
    for (int i = 0; i < times.size(); i++) {
      double minutes = times.get(i).in(Unit.MINUTE);
      if (minutes > 0) points.add(StraightLine.Point.at(minutes, minutes, (Length) drawdowns.get(i)));
    }
    return points;
  }

  private static Outcome capacity(Outcome outcome, List<StraightLine.Point> used, Term rate) {
    StraightLine.Point last = used.stream().max((a, b) -> Double.compare(a.minutes(), b.minutes())).orElseThrow();
    if (!last.y().isMoreThan(Length.ZERO)) return outcome;
    Phrase label = Phrase.of("drawdown at the last reading used", "abatimiento en la última lectura usada");
    Term drawdown = Term.given("s", label, Scale.DEPTH, last.y());
    return outcome.with(CAPACITY.name(),
        SpecificCapacity.of(rate, drawdown).named("q", CAPACITY.label(), CAPACITY.scale()));
  }
}
