package steening.stage.test.distance;

import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.reckoning.NotReckonable;
import steening.reckoning.Term;

/** Two wells of observation, the nearer and the farther. */
final class Pairs {
  static final QuantityField NEAR = distance(
      "near-distance", "distance to the nearer well", "distancia al pozo cercano", "20 ft", "6 m");
  static final QuantityField FAR = distance("far-distance", "distance to the farther well", "distancia al pozo lejano",
      "100 ft", "30 m");

  private Pairs() {}

  /** log(r₂ / r₁). */
  static Term spread(Term near, Term far) {
    if (!(far.quantity().coherent() > near.quantity().coherent())) {
      throw new NotReckonable(
          "The farther well, at {0}, is not beyond the nearer one, at {1}.",
          "El pozo lejano, a {0}, no está más allá del cercano, a {1}.",
          figure(far.quantity()), figure(near.quantity()));
    }
    return far.over(near).named("r₂/r₁", Phrase.of("ratio of the distances", "razón de las distancias"), Scale.NUMBER)
        .log10();
  }

  private static Figure figure(Quantity distance) {
    return new Figure(distance, Scale.DISTANCE);
  }

  private static QuantityField distance(String name, String english, String spanish, String us, String metric) {
    return QuantityField.of(name, Scale.DISTANCE, Phrase.of(english, spanish), us, metric)
        .between("0.1 ft", "20000 ft");
  }
}
