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
 * Hydraulic conductivity from the steady heights of water in two wells about a pumped one, in a water-table aquifer.
 *
 * <p>K = 2.303 Q log(r₂ / r₁) / (π (h₂² − h₁²)); h height of the water over the bottom of the aquifer. Source: Dupuit
 * and Thiem, in every textbook. Range: flow nearly level, so not close to the pumped well. Accuracy: exact; of the
 * aquifer as the heights allow.
 */
public final class SteadyUnconfined {
  public static final QuantityField RATE = ConstantRateTest.RATE;
  public static final QuantityField NEAR = Pairs.NEAR;
  public static final QuantityField FAR = Pairs.FAR;
  public static final QuantityField NEAR_HEIGHT = height(
      "near-height", "water over the bottom of the aquifer, nearer well",
      "agua sobre el fondo del acuífero, pozo cercano", "36.7 ft", "11.2 m");
  public static final QuantityField FAR_HEIGHT = height(
      "far-height", "water over the bottom of the aquifer, farther well",
      "agua sobre el fondo del acuífero, pozo lejano", "38.6 ft", "11.75 m");

  static final Answer CONDUCTIVITY =
      new Answer("conductivity", Phrase.of("hydraulic conductivity", "conductividad hidráulica"), Scale.CONDUCTIVITY);

  public static final Reckoning RECKONING = new Reckoning(
      "thiem-unconfined",
      TestStage.NAME,
      Phrase.of("Two wells at rest with the pump, unconfined", "Dos pozos en equilibrio con el bombeo, libre"),
      List.of(RATE, NEAR, FAR, NEAR_HEIGHT, FAR_HEIGHT),
      List.of(CONDUCTIVITY),
      Source.memory("Dupuit 1863 and Thiem 1906, as in every textbook.",
          "Dupuit 1863 y Thiem 1906, como en todo manual."),
      List.of(
          Phrase.of(
              "Both wells farther from the pumped one than about one and a half times the water is high.",
              "Ambos pozos más lejos del bombeado que vez y media la altura del agua, aproximadamente."),
          Phrase.of("The levels have come to rest with the pump running.",
              "Los niveles se han estabilizado con la bomba en marcha.")),
      SteadyUnconfined::reckon);

  private static final double LN_10_OVER_PI = 2.302585092994046 / 3.141592653589793;

  private SteadyUnconfined() {}

  private static Outcome reckon(Inputs inputs) {
    Term near = inputs.given("h₁", NEAR_HEIGHT);
    Term far = inputs.given("h₂", FAR_HEIGHT);
    if (!(far.quantity().coherent() > near.quantity().coherent())) {
      throw new NotReckonable(
          "The water stands {0} high in the nearer well, not lower than in the farther one, {1}. See which is which.",
          "El agua tiene {0} de altura en el pozo cercano, no menos que en el lejano, {1}. Vea cuál es cuál.",
          new Figure(near.quantity(), Scale.DEPTH), new Figure(far.quantity(), Scale.DEPTH));
    }
    Term spread = Pairs.spread(inputs.given("r₁", NEAR), inputs.given("r₂", FAR));
    Term conductivity = Coefficient.giving(Scale.CONDUCTIVITY, LN_10_OVER_PI)
        .of(Scale.FLOW).of(Scale.DEPTH, -2).term()
        .times(inputs.given("Q", RATE)).times(spread).over(far.squared().minus(near.squared()));
    return Outcome.empty().with(
        CONDUCTIVITY.name(), conductivity.named("K", CONDUCTIVITY.label(), CONDUCTIVITY.scale()));
  }

  private static QuantityField height(String name, String english, String spanish, String us, String metric) {
    return QuantityField.of(name, Scale.DEPTH, Phrase.of(english, spanish), us, metric).between("0.1 ft", "6000 ft");
  }
}
