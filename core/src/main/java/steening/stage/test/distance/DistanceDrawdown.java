package steening.stage.test.distance;

import java.util.List;
import steening.field.QuantityField;
import steening.field.SeriesField;
import steening.language.Phrase;
import steening.number.Elementary;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.reckoning.Answer;
import steening.reckoning.Coefficient;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Term;
import steening.stage.test.ConstantRateTest;
import steening.stage.test.StraightLine;
import steening.stage.test.TestStage;
import steening.stage.test.curve.TheisCurve;

/**
 * Transmissivity and storativity from the drawdowns of several wells at one time: a straight line over log r.
 *
 * <p>T = 2.303 Q / (2 π Δs), S = 2.25 T t / r₀²; Δs fall of the drawdown per log cycle of distance, r₀ where the line
 * meets none. The distances stand in the line as ratios to the first. Source: Cooper and Jacob 1946. Range: u below
 * 0.05 at the farthest well, one time for all. Accuracy: exact for the line; the 2.25 makes S 0.2 % large.
 */
public final class DistanceDrawdown {
  public static final QuantityField RATE = ConstantRateTest.RATE;
  public static final SeriesField DISTANCES = SeriesField.of(
      QuantityField.of("distances", Scale.DISTANCE, Phrase.of("distances of the wells", "distancias de los pozos"),
          "100 ft", "30 m")
          .between("0.1 ft", "20000 ft"),
      2, "50; 150; 400 ft", "15; 45; 120 m");
  public static final SeriesField DRAWDOWNS = SeriesField.of(
      QuantityField.of("drawdowns", Scale.DEPTH, Phrase.of("drawdowns in them", "abatimientos en ellos"), "2.9 ft",
          "0.9 m")
          .between("-100 ft", "6000 ft"),
      2, "6.2; 4.1; 2.3 ft", "1.9; 1.25; 0.7 m");
  public static final QuantityField MINUTES = QuantityField.of(
          "minutes", Scale.MINUTES, Phrase.of("minutes since the start", "minutos desde el arranque"), "1440 min",
          "1440 min")
      .between("0.1 min", "10000000 min");

  static final Answer SLOPE = new Answer(
      "slope", Phrase.of("fall of the drawdown per log cycle of distance",
          "disminución del abatimiento por ciclo logarítmico de distancia"), Scale.DEPTH);
  static final Answer TRANSMISSIVITY =
      new Answer("transmissivity", Phrase.of("transmissivity", "transmisividad"), Scale.TRANSMISSIVITY);
  static final Answer REACH = new Answer(
      "zero-distance", Phrase.of("distance of no drawdown", "distancia sin abatimiento"), Scale.DISTANCE);
  static final Answer STORATIVITY = new Answer(
      "storativity", Phrase.of("storativity", "coeficiente de almacenamiento"), Scale.NUMBER);
  static final Answer U =
      new Answer("u", Phrase.of("u at the farthest well", "u en el pozo más lejano"), Scale.NUMBER);

  public static final Reckoning RECKONING = new Reckoning(
      "distance-drawdown",
      TestStage.NAME,
      Phrase.of("Drawdown over distance", "Abatimiento según la distancia"),
      List.of(RATE, DISTANCES, DRAWDOWNS, MINUTES),
      List.of(SLOPE, TRANSMISSIVITY, REACH, STORATIVITY, U),
      Source.memory("Cooper and Jacob 1946.", "Cooper y Jacob 1946."),
      List.of(
          Phrase.of("All levels at one time, at a constant rate.",
              "Todos los niveles a un mismo tiempo, a gasto constante."),
          Phrase.of("u is below 0.05 at the farthest well.", "u es menor de 0.05 en el pozo más lejano."),
          Phrase.of("The pumped well itself stays out: its own losses would bend the line.",
              "El pozo bombeado queda fuera: sus propias pérdidas doblarían la recta.")),
      DistanceDrawdown::reckon);

  private static final double LN_10_OVER_TWO_PI = 2.302585092994046 / 6.283185307179586;
  private static final double HANDBOOK = 2.25;
  private static final double U_LIMIT = 0.05;
  /** A slope below a micrometre is what rounding leaves of none. */
  private static final double LEVEL = 1e-6;

  private DistanceDrawdown() {}

  private static Outcome reckon(Inputs inputs) {
    List<Quantity> distances = inputs.value(DISTANCES);
    List<Quantity> drawdowns = inputs.value(DRAWDOWNS);
    double[] x = logarithms(distances, drawdowns.size());
    double[] y = drawdowns.stream().mapToDouble(Quantity::coherent).toArray();
    Term first = Term.given("r₁", Phrase.of("distance of the first well", "distancia del primer pozo"), Scale.DISTANCE,
        distances.get(0));
    Term minutes = inputs.given("t", MINUTES);
    StraightLine.Sums sums = StraightLine.Sums.of(x, y, Scale.DEPTH, Phrase.same("log(r/r₁)"),
        Phrase.of("the drawdowns", "los abatimientos"));
    Term slope = Term.number(0).minus(sums.slope()).named("Δs", SLOPE.label(), SLOPE.scale());
    refuseRising(slope);
    Term start = sums.start(sums.slope())
        .named("s₁", Phrase.of("the line at the first well", "la recta en el primer pozo"), Scale.DEPTH);
    Term transmissivity = Coefficient.giving(Scale.TRANSMISSIVITY, LN_10_OVER_TWO_PI)
        .of(Scale.FLOW).of(Scale.DEPTH, -1).term().times(inputs.given("Q", RATE)).over(slope)
        .named("T", TRANSMISSIVITY.label(), TRANSMISSIVITY.scale());
    Term reach = first.times(Term.number(10).power(start.over(slope))).named("r₀", REACH.label(), REACH.scale());
    Term storativity = Coefficient.giving(Scale.NUMBER, HANDBOOK)
        .of(Scale.TRANSMISSIVITY).of(Scale.MINUTES).of(Scale.DISTANCE, -2).term()
        .times(transmissivity).times(minutes).over(reach.squared())
        .named("S", STORATIVITY.label(), STORATIVITY.scale());
    Quantity farthest = distances.stream().max((a, b) -> Double.compare(a.coherent(), b.coherent())).orElseThrow();
    Term far = Term.given("r", Phrase.of("distance of the farthest well", "distancia del pozo más lejano"),
        Scale.DISTANCE, farthest);
    Term u = TheisCurve.u(far, storativity, transmissivity, minutes).named("u", U.label(), U.scale());
    Outcome outcome = Outcome.empty().with(SLOPE.name(), slope).with(TRANSMISSIVITY.name(), transmissivity)
        .with(REACH.name(), reach).with(STORATIVITY.name(), storativity).with(U.name(), u);
    return told(outcome, x, y, start, slope, u);
  }

  private static Outcome told(Outcome outcome, double[] x, double[] y, Term start, Term slope, Term u) {
    double worst = 0;
    for (int i = 0; i < x.length; i++) {
      double line = start.quantity().coherent() - slope.quantity().coherent() * x[i];
      worst = Math.max(worst, Math.abs(y[i] - line));
    }
    Outcome more = outcome.remarking(Phrase.of(
        "The line rests on {0} wells and misses them by {1} at most.",
        "La recta se apoya en {0} pozos y se aparta de ellos {1} como máximo.",
        Integer.toString(x.length), new Figure(Length.ofMetres(worst), Scale.DEPTH)));
    if (u.quantity().coherent() <= U_LIMIT) return more;
    return more.remarking(Phrase.of(
        "u is above 0.05 at the farthest well: pump longer, or leave that well out.",
        "u pasa de 0.05 en el pozo más lejano: bombee más tiempo, o deje fuera ese pozo."));
  }

  /** log(r / r₁), r₁ the first. */
  private static double[] logarithms(List<Quantity> distances, int drawdowns) {
    if (distances.size() != drawdowns) {
      throw new NotReckonable(
          "{0} distances and {1} drawdowns do not pair.", "{0} distancias y {1} abatimientos no forman pares.",
          Integer.toString(distances.size()), Integer.toString(drawdowns));
    }
    double first = distances.get(0).coherent();
    double[] x = distances.stream().mapToDouble(r -> Elementary.log10(r.coherent() / first)).toArray();
    for (double one : x) if (one != x[0]) return x;
    throw new NotReckonable(
        "All wells stand at {0}. A line over distance needs two distances at least.",
        "Todos los pozos están a {0}. Una recta según la distancia necesita dos distancias por lo menos.",
        new Figure(distances.get(0), Scale.DISTANCE));
  }

  private static void refuseRising(Term slope) {
    if (slope.quantity().coherent() > LEVEL) return;
    throw new NotReckonable(
        "The drawdown does not lessen with distance: {0} per log cycle. See which well is which.",
        "El abatimiento no disminuye con la distancia: {0} por ciclo logarítmico. Vea cuál pozo es cuál.",
        new Figure(slope.quantity(), Scale.DEPTH));
  }
}
