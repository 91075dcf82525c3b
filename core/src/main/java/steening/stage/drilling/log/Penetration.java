package steening.stage.drilling.log;

import java.util.List;
import java.util.Optional;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Length;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Answer;
import steening.reckoning.Coefficient;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Term;
import steening.stage.drilling.Drilling;
import steening.stage.drilling.DrillingStage;

/**
 * How fast the bit goes down, by the clock.
 *
 * <p>r = L / t. L drilled in t.
 *
 * <p>Source: definition. Range: the time from one rod to the next holds the connection, so that the bit itself is
 * faster. Accuracy: that of the clock.
 */
public final class Penetration {
  static final QuantityField DRILLED = QuantityField.of(
          "drilled", Scale.DEPTH, Phrase.of("drilled", "perforado"), "20 ft", "6.1 m")
      .between("0.01 ft", "2000 ft").usually("0.5 ft", "60 ft");
  static final QuantityField MINUTES = QuantityField.of(
          "minutes", Scale.MINUTES, Phrase.of("in so many minutes", "en tantos minutos"), "22 min", "22 min")
      .between("0.1 min", "10000 min").usually("1 min", "600 min");

  static final Answer RATE =
      new Answer("rate", Phrase.of("penetration rate", "velocidad de avance"), Scale.PENETRATION);

  public static final Reckoning RECKONING = new Reckoning(
      "penetration-rate",
      DrillingStage.NAME,
      Phrase.of("Penetration rate", "Velocidad de avance"),
      List.of(DRILLED, MINUTES),
      List.of(RATE),
      Source.derived("Definition.", "Definición."),
      List.of(Phrase.of(
          "With the time of the connection in it, the bit itself is faster.",
          "Si incluye la conexión, la barrena misma va más rápido.")),
      Penetration::reckon);

  /** More than this between two rods is a pause and no rate. Common practice, no source. */
  private static final double A_PAUSE = 4 * 60;

  private Penetration() {}

  /** From one rod to the next, by the hours of their entries; nothing where these tell none. */
  static Optional<Outcome> between(Drilling.Rod before, Drilling.Rod rod) {
    double minutes = rod.at().minutesSince(before.at());
    boolean tells = minutes >= 1 && minutes <= A_PAUSE && rod.depth().isMoreThan(before.depth());
    if (!tells) return Optional.empty();
    return Outcome.ifReckonable(() -> RECKONING.of(Inputs.none()
        .with(DRILLED, rod.depth().minus(before.depth())).with(MINUTES, Measure.of(minutes, Unit.MINUTE))));
  }

  /** While the bit was at a depth: by the rod that drilled it, or the last one above. */
  public static Optional<Quantity> at(List<Drilling.Rod> rods, Length depth) {
    Optional<Quantity> rate = Optional.empty();
    for (int i = 1; i < rods.size() && rods.get(i - 1).depth().isLessThan(depth); i++) {
      rate = between(rods.get(i - 1), rods.get(i)).map(o -> o.quantity(RATE.name()));
    }
    return rate;
  }

  private static Outcome reckon(Inputs inputs) {
    Term rate = Coefficient.giving(Scale.PENETRATION, 1).of(Scale.DEPTH).of(Scale.MINUTES, -1).term()
        .times(inputs.given("L", DRILLED))
        .over(inputs.given("t", MINUTES))
        .named("r", RATE.label(), RATE.scale());
    return Outcome.empty().with(RATE.name(), rate);
  }
}
