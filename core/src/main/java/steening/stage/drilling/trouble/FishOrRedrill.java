package steening.stage.drilling.trouble;

import java.util.List;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Dimension;
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
import steening.stage.drilling.DrillingStage;

/**
 * Whether one more hour of fishing is worth its cost.
 *
 * <p>p = (C + r H) / (F + R + S); m = 2 / (5 + k); n = 2 / p − 5. C an hour's cost, r chance that the hole caves in
 * that hour, H worth of the hole, F of the fish, R drilling again, S sealing; k hours failed so far, m chance of the
 * next hour, p chance that pays, n hours after which it does not.
 *
 * <p>Source: mean of a beta distribution that begins as two successes to three failures (standard statistics, from
 * memory); the beginning is a judgement, no source. Range: hours alike and independent. Accuracy: that of the costs.
 */
public final class FishOrRedrill {
  static final QuantityField FAILED = QuantityField.of(
          "failed", Scale.HOURS, Phrase.of("hours fished without success", "horas pescadas sin éxito"), "3 h", "3 h")
      .between("0 h", "500 h").usually("0 h", "60 h").optional();

  static final Answer PAYS = new Answer(
      "pays", Phrase.of("chance by the hour that pays", "probabilidad por hora que conviene"), Scale.SHARE);
  static final Answer CHANCE =
      new Answer("chance", Phrase.of("chance of the next hour", "probabilidad de la próxima hora"), Scale.SHARE);
  static final Answer STOP = new Answer(
      "stop-after", Phrase.of("stop after so many hours, in all", "pare tras tantas horas, en total"), Scale.HOURS);
  static final Answer ADVICE = Answer.word("advice", Phrase.of("so", "entonces"));

  private static final Phrase GO_ON = Phrase.of("go on fishing", "seguir pescando");
  private static final Phrase DRILL_AGAIN = Phrase.of("stop and drill again", "parar y perforar de nuevo");

  public static final Reckoning RECKONING = new Reckoning(
      "fish-or-redrill",
      DrillingStage.NAME,
      Phrase.of("Fish on, or drill again", "Seguir pescando o perforar de nuevo"),
      List.of(
          TroubleEntries.HOUR_COST, TroubleEntries.CAVE_RISK, TroubleEntries.HOLE_VALUE, TroubleEntries.FISH_VALUE,
          TroubleEntries.REDRILL, TroubleEntries.SEALING, FAILED),
      List.of(PAYS, CHANCE, STOP, ADVICE),
      Source.memory(
          "Mean of a beta distribution, standard statistics. That it begins as 2 to 3 is a judgement, no source.",
          "Media de una distribución beta, estadística común. Que empiece como 2 a 3 es un juicio, sin fuente."),
      List.of(Phrase.of(
          "Hours alike; costs in one money. A fish that moves, or new tools, are worth a fresh count.",
          "Horas parecidas; costos en una misma moneda. Si lo perdido se mueve o hay otra herramienta, cuente de"
              + " nuevo.")),
      FishOrRedrill::reckon);

  private static final Quantity NO_RISK = new Measure(Dimension.NUMBER, 0);
  private static final Quantity NO_HOURS = Measure.of(0, Unit.HOUR);

  private FishOrRedrill() {}

  static Outcome of(Troubles.Costs costs, Quantity failed) {
    Inputs inputs = Inputs.none()
        .with(TroubleEntries.HOUR_COST, costs.hour()).with(TroubleEntries.HOLE_VALUE, costs.hole())
        .with(TroubleEntries.FISH_VALUE, costs.fish()).with(TroubleEntries.REDRILL, costs.redrill())
        .with(TroubleEntries.SEALING, costs.sealing()).with(FAILED, failed);
    return RECKONING.of(costs.caveRisk().map(r -> inputs.with(TroubleEntries.CAVE_RISK, r)).orElse(inputs));
  }

  private static Outcome reckon(Inputs inputs) {
    Term atStake = inputs.given("F", TroubleEntries.FISH_VALUE)
        .plus(inputs.given("R", TroubleEntries.REDRILL))
        .plus(inputs.given("S", TroubleEntries.SEALING))
        .named("G", Phrase.of("gained where it is caught", "lo que se gana si se atrapa"), Scale.NUMBER);
    Term risked = Coefficient.giving(Scale.NUMBER, 1).of(Scale.SHARE).of(Scale.NUMBER).term()
        .times(inputs.given("r", TroubleEntries.CAVE_RISK, NO_RISK))
        .times(inputs.given("H", TroubleEntries.HOLE_VALUE));
    Term hour = inputs.given("C", TroubleEntries.HOUR_COST).plus(risked)
        .named("c", Phrase.of("an hour, with its risk", "una hora, con su riesgo"), Scale.NUMBER);
    if (!(atStake.quantity().coherent() > 0) || !(hour.quantity().coherent() > 0)) {
      throw new NotReckonable(
          "An hour must cost something, and the fish or a new hole too.",
          "Una hora debe costar algo, y también lo perdido o un barreno nuevo.");
    }
    Term share = Coefficient.giving(Scale.SHARE, 1).term();
    Term pays = share.times(hour).over(atStake).named("p", PAYS.label(), PAYS.scale());
    Term chance = share.times(2).over(Term.number(5).plus(inputs.given("k", FAILED, NO_HOURS)))
        .named("m", CHANCE.label(), CHANCE.scale());
    Term stop = Term.number(2).times(atStake).over(hour).minus(Term.number(5))
        .named("n", STOP.label(), STOP.scale());
    boolean goOn = chance.quantity().coherent() >= pays.quantity().coherent();
    Outcome outcome = Outcome.empty().with(PAYS.name(), pays).with(CHANCE.name(), chance)
        .naming(ADVICE.name(), goOn ? GO_ON : DRILL_AGAIN);
    return stop.quantity().coherent() > 0 ? outcome.with(STOP.name(), stop) : outcome;
  }

  static boolean isWorth(Outcome outcome) {
    return outcome.quantity(CHANCE.name()).coherent() >= outcome.quantity(PAYS.name()).coherent();
  }
}
