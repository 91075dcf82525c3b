package steening.ground;

import steening.field.QuantityField;
import steening.language.Phrase;
import steening.number.Decimal;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Inputs;
import steening.reckoning.Term;

/**
 * How thick water is, by its temperature: a straight line between the figures of the tables, five degrees Celsius
 * apart.
 *
 * <p>Source: kinematic viscosity of water, handbook table (memory; 1.307 at 10 °C and 1.004 at 20 °C mm²/s). Range 0 to
 * 30 °C. Accuracy: 0.5 % between two figures.
 */
final class Water {
  static final QuantityField TEMPERATURE = QuantityField.of(
          "temperature", Scale.TEMPERATURE, Phrase.of("water temperature", "temperatura del agua"), "50 °F", "10 °C")
      .between("32 °F", "86 °F").usually("35 °F", "80 °F").optional();

  /** Common practice, no source: shallow ground water of the northern states. */
  private static final Quantity USUAL = Measure.of(10, Unit.CELSIUS);

  private static final int STEP = 5;

  /** In mm²/s at 0, 5, 10 … 30 °C. */
  private static final double[] VISCOSITIES_MM2_S = {1.792, 1.519, 1.307, 1.139, 1.004, 0.893, 0.801};

  private Water() {}

  static Term viscosity(Inputs inputs) {
    Term temperature = inputs.given("t", TEMPERATURE, USUAL);
    double celsius = temperature.quantity().in(Unit.CELSIUS);
    int step = (int) Math.max(0, Math.min(VISCOSITIES_MM2_S.length - 2, Math.floor(celsius / STEP)));
    Term cold = at("t₁", step);
    Term warm = at("t₂", step + 1);
    Term thick = thickness("ν₁", step);
    Term thin = thickness("ν₂", step + 1);
    return thick.minus(thick.minus(thin).times(temperature.minus(cold).over(warm.minus(cold))))
        .named("ν", Phrase.of("kinematic viscosity of the water", "viscosidad cinemática del agua"), Scale.VISCOSITY);
  }

  private static Term at(String symbol, int step) {
    return Term.given(
        symbol, Phrase.of("temperature in the table", "temperatura en la tabla"), Scale.TEMPERATURE,
        Measure.of(step * STEP, Unit.CELSIUS));
  }

  private static Term thickness(String symbol, int step) {
    Phrase label = Phrase.of(
        "viscosity in the table, {0} °C", "viscosidad en la tabla, {0} °C", Decimal.upTo(step * STEP, 0));
    return Term.given(
        symbol, label, Scale.VISCOSITY, Measure.of(VISCOSITIES_MM2_S[step], Unit.SQUARE_MILLIMETRE_PER_SECOND));
  }
}
