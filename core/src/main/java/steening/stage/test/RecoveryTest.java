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
 * Transmissivity from the recovery after the pump was stopped.
 *
 * <p>Residual drawdown is a straight line over log(t/t′), t since the start and t′ since the stop: T = 2.303 Q / (4 π
 * Δs′). The line should meet zero at t/t′ = 1; where it is made to, the answer is given too. Source: Theis 1935
 * (memory); form as in Todd, Groundwater Hydrology, ch. 4 (memory). Range: constant rate before the stop, u′ below
 * 0.05. Accuracy: 0.1 % of the line that was fitted; the rate matters less than in the pumping part, since nothing
 * disturbs the level.
 */
public final class RecoveryTest {
  public static final QuantityField RATE = TestEntries.RATE;

  public static final QuantityField PUMPED = QuantityField.of(
          "pumped", Scale.MINUTES, Phrase.of("minutes pumped before the stop", "minutos de bombeo antes del paro"),
          "240 min", "240 min")
      .between("0.1 min", "1000000 min");

  public static final SeriesField TIMES = SeriesField.of(
      QuantityField.of("times", Scale.MINUTES, Phrase.of("minutes since the stop", "minutos desde el paro"), "10 min",
          "10 min")
          .between("0 min", "1000000 min"),
      2, "5; 10; 60 min", "5; 10; 60 min");

  public static final SeriesField RESIDUALS = SeriesField.of(
      QuantityField.of("residuals", Scale.DEPTH, Phrase.of("residual drawdowns", "abatimientos residuales"), "2.2 ft",
          "0.68 m")
          .between("-100 ft", "6000 ft"),
      2, "2.2; 1.8; 0.9 ft", "0.68; 0.56; 0.28 m");

  static final Answer SLOPE = new Answer(
      "slope", Phrase.of("residual drawdown per log cycle", "abatimiento residual por ciclo logarítmico"), Scale.DEPTH);
  static final Answer TRANSMISSIVITY = new Answer(
      "transmissivity", Phrase.of("transmissivity", "transmisividad"), Scale.TRANSMISSIVITY);
  static final Answer AT_ONE = new Answer(
      "residual-at-one", Phrase.of("the line at t/t′ = 1", "la recta en t/t′ = 1"), Scale.DEPTH);
  static final Answer ORIGIN_SLOPE = new Answer(
      "slope-through-zero",
      Phrase.of(
          "per log cycle, the line made to meet zero at t/t′ = 1",
          "por ciclo, con la recta forzada a cero en t/t′ = 1"),
      Scale.DEPTH);
  static final Answer ORIGIN = new Answer(
      "transmissivity-through-zero", Phrase.of("transmissivity from that line", "transmisividad con esa recta"),
      Scale.TRANSMISSIVITY);

  public static final Reckoning RECKONING = new Reckoning(
      "recovery-test",
      TestStage.NAME,
      Phrase.of("Recovery test", "Prueba de recuperación"),
      List.of(RATE, PUMPED, TIMES, RESIDUALS, Window.FROM, Window.TO),
      List.of(SLOPE, TRANSMISSIVITY, AT_ONE, ORIGIN_SLOPE, ORIGIN),
      Source.memory("Theis 1935; form as in Todd, Groundwater Hydrology, chapter 4.",
          "Theis 1935; forma según Todd, Groundwater Hydrology, capítulo 4."),
      List.of(
          Phrase.of("The rate was the same until the stop.", "El gasto fue el mismo hasta el paro."),
          Phrase.of(
              "A check valve: water running back from the drop pipe spoils the first readings.",
              "Con válvula de retención: el agua que regresa de la columna estropea las primeras lecturas.")),
      RecoveryTest::reckon);

  private RecoveryTest() {}

  private static Outcome reckon(Inputs inputs) {
    Window window = Window.in(inputs);
    double pumped = inputs.amount(PUMPED).in(Unit.MINUTE);
    List<StraightLine.Point> used = window.of(points(pumped, inputs.value(TIMES), inputs.value(RESIDUALS)));
    Term rate = inputs.given("Q", RATE);
    Phrase logarithms = Phrase.of("log(t/t′), t = {0} + t′", "log(t/t′), t = {0} + t′", Window.minutes(pumped));
    StraightLine.Sums sums = StraightLine.Sums.of(used, logarithms);
    Term slope = rising(sums.slope().named("Δs′", SLOPE.label(), SLOPE.scale()));
    StraightLine line = sums.line(slope, "s′₁", AT_ONE.label());
    Term origin = rising(sums.slopeThroughOrigin().named("Δs₀", ORIGIN_SLOPE.label(), ORIGIN_SLOPE.scale()));
    return Outcome.empty()
        .with(SLOPE.name(), slope)
        .with(TRANSMISSIVITY.name(),
            JacobConstants.transmissivity(rate, slope).named("T", TRANSMISSIVITY.label(), TRANSMISSIVITY.scale()))
        .with(AT_ONE.name(), line.start())
        .with(ORIGIN_SLOPE.name(), origin)
        .with(ORIGIN.name(), JacobConstants.transmissivity(rate, origin).named("T₀", ORIGIN.label(), ORIGIN.scale()))
        .remarking(window.told(used))
        .remarking(line.misfit(used));
  }

  private static List<StraightLine.Point> points(double pumped, List<Quantity> times, List<Quantity> residuals) {
    List<StraightLine.Point> points = new ArrayList<>();
    for (StraightLine.Point point : ConstantRateTest.points(times, residuals)) {
      points.add(StraightLine.Point.at(point.minutes(), (pumped + point.minutes()) / point.minutes(), point.y()));
    }
    return points;
  }

  private static Term rising(Term slope) {
    if (StraightLine.rises(slope)) return slope;
    throw new NotReckonable(
        "The level does not recover in the window: {0} per log cycle.",
        "El nivel no se recupera en la ventana: {0} por ciclo logarítmico.",
        new Figure((Length) slope.quantity(), Scale.DEPTH));
  }
}
