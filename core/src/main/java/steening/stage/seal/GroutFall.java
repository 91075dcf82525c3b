package steening.stage.seal;

import java.util.List;
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
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Term;
import steening.well.Plan;

/**
 * Whether grout that stands with the pump off is being lost: f = z₂ − z₁, x = f / (z₀ − z₁), y = x max(1; h / t). z₀
 * where the grout starts, z₁ and z₂ its top at first and t later, h an hour; x and y shares of the column, y for a test
 * shorter than an hour as if it went on so.
 *
 * <p>Source: more than 5 % of the column in an hour is a loss: common practice, no source. A tape is read to half a
 * foot, so on a short test or a short column only a clear fall tells.
 */
public final class GroutFall {
  public static final QuantityField BOTTOM = GroutTop.BOTTOM;
  public static final QuantityField BEFORE =
      QuantityField.of("before", Scale.DEPTH, Phrase.of("top at first", "tope al principio"), "31 ft", "9.4 m")
          .between("-20 ft", "6000 ft").usually("0 ft", "600 ft");
  public static final QuantityField AFTER = BEFORE.named("after").labelled("top later", "tope después");
  public static final QuantityField MINUTES =
      QuantityField.of("minutes", Scale.MINUTES, Phrase.of("time between", "tiempo entre ambos"), "15 min", "15 min")
          .between("0.5 min", "10000 min").usually("1 min", "1500 min");

  static final Answer FALL = new Answer("fall", Phrase.of("fall", "bajada"), Scale.DEPTH);
  static final Answer SHARE = new Answer("share", Phrase.of("of the column", "de la columna"), Scale.SHARE);
  static final Answer HOURLY =
      new Answer("hourly", Phrase.of("of the column in an hour", "de la columna en una hora"), Scale.SHARE);

  /** More of the column than this in an hour is being lost (common practice, no source). */
  static final double LOST = 0.05;

  private static final Quantity HOUR = Measure.of(1, Unit.HOUR);

  public static final Reckoning RECKONING = new Reckoning(
      "grout-fall",
      SealStage.NAME,
      Phrase.of("Fall of the grout, pump off", "Bajada de la lechada, bomba parada"),
      List.of(BOTTOM, BEFORE, AFTER, MINUTES),
      List.of(FALL, SHARE, HOURLY),
      Source.derived(
          "Geometry; 5 % of the column in an hour is a loss: common practice, no source.",
          "Geometría; 5 % de la columna en una hora es pérdida: práctica común, sin fuente."),
      List.of(
          Phrase.of(
              "A test shorter than an hour is taken to go on so; a tape is read to half a foot.",
              "Una prueba de menos de una hora se prolonga igual; la sonda se lee a 15 cm."),
          Phrase.of(
              "Overnight grout settles as it sets; that is topped up, and is no loss by itself.",
              "De noche la lechada se asienta al fraguar; eso se completa y no es pérdida por sí solo.")),
      GroutFall::reckon);

  private GroutFall() {}

  private static Outcome reckon(Inputs inputs) {
    return of(inputs.length(BOTTOM), inputs.length(BEFORE), inputs.length(AFTER), inputs.amount(MINUTES));
  }

  /** @throws NotReckonable where there is no column, or no time passed */
  static Outcome of(Length bottom, Length before, Length after, Quantity minutes) {
    if (!bottom.isMoreThan(before)) {
      throw new NotReckonable(
          "The top of the grout must be above where it starts.",
          "El tope de la lechada debe estar arriba de donde empieza.");
    }
    if (!(minutes.coherent() > 0)) {
      throw new NotReckonable("No time passed between the two.", "No pasó tiempo entre ambos.");
    }
    Term first = Term.given("z₁", BEFORE.label(), Scale.DEPTH, before);
    Term fall = Term.given("z₂", AFTER.label(), Scale.DEPTH, after).minus(first)
        .named("f", FALL.label(), Scale.DEPTH);
    Term column = Term.given("z₀", BOTTOM.label(), Scale.DEPTH, bottom).minus(first)
        .named("k", Phrase.of("column", "columna"), Scale.DEPTH);
    Term share = Coefficient.giving(Scale.SHARE, 1).term().times(fall.over(column))
        .named("x", SHARE.label(), Scale.SHARE);
    Term times = Term.given("h", Phrase.of("an hour", "una hora"), Scale.MINUTES, HOUR)
        .over(Term.given("t", MINUTES.label(), Scale.MINUTES, minutes)).most(Term.number(1));
    return Outcome.empty()
        .with(FALL.name(), fall)
        .with(SHARE.name(), share)
        .with(HOURLY.name(), share.times(times).named("y", HOURLY.label(), Scale.SHARE));
  }

  /** Whether it falls so fast that it must be going somewhere. */
  static boolean isLoss(Outcome fall) {
    return fall.quantity(HOURLY.name()).coherent() > LOST;
  }
}
