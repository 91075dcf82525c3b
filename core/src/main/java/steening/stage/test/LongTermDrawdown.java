package steening.stage.test;

import java.util.List;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Dimension;
import steening.quantity.Figure;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Answer;
import steening.reckoning.Coefficient;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Term;

/**
 * The drawdown after a long time of steady pumping, along the line of the test.
 *
 * <p>s₂ = s₁ + Δs log(t₂ / t₁). Source: the straight line of Cooper and Jacob 1946, carried on; 100 days without rain
 * is common practice, no source. Range: the same rate, no boundary, no recharge. Accuracy: a line over three log cycles
 * carried on for three more; a boundary it has not met yet makes it wrong.
 */
public final class LongTermDrawdown {
  public static final QuantityField DRAWDOWN = SpecificCapacity.DRAWDOWN;

  public static final QuantityField MINUTES = QuantityField.of(
          "minutes", Scale.MINUTES,
          Phrase.of("minutes of pumping it was read at", "minutos de bombeo a los que se leyó"), "240 min", "240 min")
      .between("0.1 min", "1000000 min");

  public static final QuantityField SLOPE = QuantityField.of(
          "slope", Scale.DEPTH, ConstantRateTest.SLOPE.label(), "1.32 ft", "0.40 m")
      .between("0 ft", "3000 ft");

  public static final QuantityField DAYS = QuantityField.of(
          "days", Scale.DAYS, Phrase.of("days of steady pumping", "días de bombeo continuo"), "100 d", "100 d")
      .between("0.01 d", "40000 d").usually("1 d", "8000 d").optional();

  /** As long as a dry season (common practice, no source). */
  static final Quantity HUNDRED_DAYS = new Measure(Dimension.TIME, Unit.DAY.toCoherent(100));

  static final Answer LATER = new Answer("drawdown", Phrase.of("drawdown then", "abatimiento entonces"), Scale.DEPTH);

  public static final Reckoning RECKONING = new Reckoning(
      "long-term-drawdown",
      TestStage.NAME,
      Phrase.of("Long-term drawdown", "Abatimiento a largo plazo"),
      List.of(DRAWDOWN, MINUTES, SLOPE, DAYS),
      List.of(LATER),
      Source.derived(
          "The straight line of Cooper and Jacob 1946, carried on. 100 days: common practice, no source.",
          "La recta de Cooper y Jacob 1946, prolongada. 100 días: práctica común, sin fuente."),
      List.of(
          Phrase.of("Steady pumping at the rate of the test.", "Bombeo continuo al gasto de la prueba."),
          Phrase.of(
              "No boundary and no recharge that the test has not met.",
              "Sin fronteras ni recarga que la prueba no haya encontrado."),
          Phrase.of("Without days given, 100.", "Si no se dan días, 100.")),
      LongTermDrawdown::reckon);

  private LongTermDrawdown() {}

  private static Outcome reckon(Inputs inputs) {
    Term early = inputs.given("t₁", MINUTES);
    Term late = inputs.given("t₂", DAYS, HUNDRED_DAYS);
    if (late.quantity().coherent() < early.quantity().coherent()) {
      throw new NotReckonable(
          "{0} is sooner than the reading at {1}.", "{0} es antes que la lectura a {1}.",
          new Figure(late.quantity(), Scale.DAYS), new Figure(early.quantity(), Scale.MINUTES));
    }
    Term ratio = Coefficient.giving(Scale.NUMBER, 1).of(Scale.DAYS).of(Scale.MINUTES, -1).term().times(late)
        .over(early);
    Term later = inputs.given("s₁", DRAWDOWN).plus(inputs.given("Δs", SLOPE).times(ratio.log10()));
    return Outcome.empty().with(LATER.name(), later.named("s₂", LATER.label(), LATER.scale()));
  }
}
