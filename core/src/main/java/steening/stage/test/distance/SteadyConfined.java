package steening.stage.test.distance;

import java.util.List;
import steening.field.QuantityField;
import steening.language.Phrase;
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
import steening.stage.test.ConstantRateTest;
import steening.stage.test.TestStage;

/**
 * Transmissivity from the steady drawdowns in two wells about a pumped one, in a confined aquifer.
 *
 * <p>T = 2.303 Q log(r₂ / r₁) / (2 π (s₁ − s₂)): 528 in gpm, feet and gpd/ft. Source: Thiem 1906, in every textbook.
 * Range: the difference of the two drawdowns no longer changes. Accuracy: exact; of the aquifer as the levels allow.
 */
public final class SteadyConfined {
  public static final QuantityField RATE = ConstantRateTest.RATE;
  public static final QuantityField NEAR = Pairs.NEAR;
  public static final QuantityField FAR = Pairs.FAR;
  public static final QuantityField NEAR_DRAWDOWN = drawdown(
      "near-drawdown", "drawdown in the nearer well", "abatimiento en el pozo cercano", "6.2 ft", "1.9 m");
  public static final QuantityField FAR_DRAWDOWN = drawdown(
      "far-drawdown", "drawdown in the farther well", "abatimiento en el pozo lejano", "2.9 ft", "0.9 m");

  static final Answer TRANSMISSIVITY =
      new Answer("transmissivity", Phrase.of("transmissivity", "transmisividad"), Scale.TRANSMISSIVITY);

  public static final Reckoning RECKONING = new Reckoning(
      "thiem-confined",
      TestStage.NAME,
      Phrase.of("Two wells at rest with the pump, confined", "Dos pozos en equilibrio con el bombeo, confinado"),
      List.of(RATE, NEAR, FAR, NEAR_DRAWDOWN, FAR_DRAWDOWN),
      List.of(TRANSMISSIVITY),
      Source.memory("Thiem 1906, as in every textbook.", "Thiem 1906, como en todo manual."),
      List.of(
          Phrase.of(
              "The two drawdowns no longer part from each other as pumping goes on.",
              "La diferencia entre ambos abatimientos ya no cambia al seguir bombeando."),
          Phrase.of("Confined aquifer, the same everywhere; screens through all of it.",
              "Acuífero confinado, igual en todas partes; rejillas en todo su espesor.")),
      SteadyConfined::reckon);

  private static final double LN_10_OVER_TWO_PI = 2.302585092994046 / 6.283185307179586;

  private SteadyConfined() {}

  private static Outcome reckon(Inputs inputs) {
    Term near = inputs.given("s₁", NEAR_DRAWDOWN);
    Term far = inputs.given("s₂", FAR_DRAWDOWN);
    if (!(near.quantity().coherent() > far.quantity().coherent())) {
      throw new NotReckonable(
          "The nearer well is drawn down {0}, not more than the farther one, {1}. See which is which.",
          "El pozo cercano baja {0}, no más que el lejano, {1}. Vea cuál es cuál.",
          new Figure(near.quantity(), Scale.DEPTH), new Figure(far.quantity(), Scale.DEPTH));
    }
    Term spread = Pairs.spread(inputs.given("r₁", NEAR), inputs.given("r₂", FAR));
    Term transmissivity = Coefficient.giving(Scale.TRANSMISSIVITY, LN_10_OVER_TWO_PI)
        .of(Scale.FLOW).of(Scale.DEPTH, -1).term()
        .times(inputs.given("Q", RATE)).times(spread).over(near.minus(far));
    return Outcome.empty().with(
        TRANSMISSIVITY.name(), transmissivity.named("T", TRANSMISSIVITY.label(), TRANSMISSIVITY.scale()));
  }

  private static QuantityField drawdown(String name, String english, String spanish, String us, String metric) {
    return QuantityField.of(name, Scale.DEPTH, Phrase.of(english, spanish), us, metric).between("0 ft", "6000 ft");
  }
}
