package steening.pipe;

import steening.language.Phrase;
import steening.quantity.Dimension;
import steening.quantity.Figure;
import steening.quantity.Measure;
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

  private Stiffness() {}

  /**
   * The share of the modulus at 73 °F that is left.
   *
   * @throws NotReckonable above the limit of service
   */
  static Term left(String symbol, Quantity temperature) {
    Phrase label = Phrase.of(
        "share of the stiffness left at {0}", "parte de la rigidez que queda a {0}",
        new Figure(temperature, Scale.TEMPERATURE));
    return Term.given(symbol, label, Scale.NUMBER, new Measure(Dimension.NUMBER, share(temperature)));
  }

  private static double share(Quantity temperature) {
    double wall = temperature.in(Unit.FAHRENHEIT);
    if (wall <= FAHRENHEIT[0]) return 1;
    for (int i = 1; i < FAHRENHEIT.length; i++) {
      if (wall > FAHRENHEIT[i]) continue;
      double part = (wall - FAHRENHEIT[i - 1]) / (FAHRENHEIT[i] - FAHRENHEIT[i - 1]);
      return (KSI[i - 1] + part * (KSI[i] - KSI[i - 1])) / KSI[0];
    }
    throw new NotReckonable(
        "PVC casing has no strength to rely on above {0}; the wall is at {1}.",
        "Por encima de {0} no se puede contar con la resistencia del PVC; la pared está a {1}.",
        new Figure(Measure.of(FAHRENHEIT[FAHRENHEIT.length - 1], Unit.FAHRENHEIT), Scale.TEMPERATURE),
        new Figure(temperature, Scale.TEMPERATURE));
  }
}
