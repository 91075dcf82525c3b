package steening.pipe;

import steening.language.Phrase;
import steening.quantity.Dimension;
import steening.quantity.Figure;
import steening.quantity.Measure;
import steening.quantity.Pressure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.NotReckonable;
import steening.reckoning.Term;

/**
 * How much of its stiffness PVC keeps when it is warm. Collapse follows the modulus, not the pressure rating, whose
 * multipliers fall about twice as fast.
 *
 * <p>Source: modulus of elasticity of PVC 12454 against temperature in piping manuals (memory, 5 %); linear between the
 * tabulated temperatures; the whole of it below 73 °F. Limit of service 140 °F: a manufacturer's property table (seen).
 */
final class Stiffness {
  private static final double[] FAHRENHEIT = {73, 80, 90, 100, 110, 120, 130, 140};
  private static final double[] KSI = {420, 400, 375, 360, 338, 320, 300, 270};

  private static final double PSI_A_KSI = 1000;
  private static final Quantity WHOLE = new Measure(Dimension.NUMBER, 1);

  static final Phrase LABEL = Phrase.of("share of the stiffness left", "parte de la rigidez que queda");

  private Stiffness() {}

  /**
   * The share of the modulus at 73 °F that is left.
   *
   * @throws NotReckonable above the limit of service
   */
  static Term left(String symbol, Quantity temperature) {
    double wall = temperature.in(Unit.FAHRENHEIT);
    if (wall <= FAHRENHEIT[0]) return Term.given(symbol, LABEL, Scale.NUMBER, WHOLE);
    for (int i = 1; i < FAHRENHEIT.length; i++) {
      if (wall <= FAHRENHEIT[i]) return between(i, temperature).named(symbol, LABEL, Scale.NUMBER);
    }
    throw new NotReckonable(
        "PVC casing has no strength to rely on above {0}; the wall is at {1}.",
        "Por encima de {0} no se puede contar con la resistencia del PVC; la pared está a {1}.",
        new Figure(Measure.of(FAHRENHEIT[FAHRENHEIT.length - 1], Unit.FAHRENHEIT), Scale.TEMPERATURE),
        new Figure(temperature, Scale.TEMPERATURE));
  }

  /** On the straight line between two figures of the table. */
  private static Term between(int above, Quantity temperature) {
    Term cold = at("T₁", above - 1);
    Term stiff = modulus("E₁", above - 1);
    Term wall = Term.given("T", Phrase.of("temperature of the wall", "temperatura de la pared"), Scale.TEMPERATURE,
        temperature);
    Term part = wall.minus(cold).over(at("T₂", above).minus(cold));
    return stiff.minus(stiff.minus(modulus("E₂", above)).times(part)).over(cool());
  }

  private static Term cool() {
    return modulus("E₀", 0);
  }

  private static Term at(String symbol, int row) {
    return Term.given(
        symbol, Phrase.of("temperature in the table", "temperatura en la tabla"), Scale.TEMPERATURE,
        Measure.of(FAHRENHEIT[row], Unit.FAHRENHEIT));
  }

  private static Term modulus(String symbol, int row) {
    Phrase label = Phrase.of(
        "modulus in the table, {0}", "módulo en la tabla, {0}",
        new Figure(Measure.of(FAHRENHEIT[row], Unit.FAHRENHEIT), Scale.TEMPERATURE));
    return Term.given(symbol, label, Scale.PRESSURE, Pressure.of(PSI_A_KSI * KSI[row], Unit.PSI));
  }
}
