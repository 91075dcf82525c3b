package steening.stage.pump;

import java.util.List;
import java.util.Optional;
import steening.field.Field;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Measure;
import steening.quantity.Pressure;
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
 * The pressure tank: what share of it is water between cut-out and cut-in, and how large it has to be.
 *
 * <p>k = (P₀ + A)(1/(P₁ + A) − 1/(P₂ + A)) with P₀ precharge, P₁ cut-in, P₂ cut-out, A pressure of the air outside;
 * drawdown u = Q t for a pump of rate Q that must run at least t; tank V = u/k; and a tank of volume v gives k v.
 *
 * <p>Source: Boyle's law at one temperature, as a column on tank drawdown in a trade journal has it (2006; seen).
 * Range: a tank whose air is kept apart from the water, precharge not above cut-in. Accuracy: rounding only; warm air
 * and a worn bladder make the difference.
 */
final class PressureTank {
  static final QuantityField RATE = PumpEntries.RATE;
  static final QuantityField RUN = QuantityField.of(
          "run-time", Scale.MINUTES, Phrase.of("least run of the pump", "marcha mínima de la bomba"), "2 min", "2 min")
      .between("0.1 min", "60 min").usually("0.5 min", "5 min").optional();
  static final QuantityField CUT_IN = PumpEntries.CUT_IN;
  static final QuantityField CUT_OUT = PumpEntries.CUT_OUT;
  static final QuantityField PRECHARGE = PumpEntries.PRECHARGE;
  static final QuantityField TANK = PumpEntries.TANK.optional();
  static final QuantityField AIR = QuantityField.of(
          "air-pressure", Scale.PRESSURE,
          Phrase.of("pressure of the air outside", "presión del aire exterior"), "14.7 psi", "101 kPa")
      .between("7 psi", "16 psi").usually("9 psi", "15.5 psi").optional();

  static final Answer SHARE = new Answer(
      "share", Phrase.of("share of the tank that is drawn", "parte útil del tanque"), Scale.NUMBER);
  static final Answer NEEDED = new Answer(
      "drawdown-needed", Phrase.of("tank drawdown needed", "volumen útil necesario"), Scale.LIQUID);
  static final Answer LEAST_TANK = new Answer(
      "least-tank", Phrase.of("smallest tank that will do", "tanque mínimo que basta"), Scale.LIQUID);
  static final Answer DRAWDOWN = new Answer(
      "drawdown", Phrase.of("drawdown of this tank", "volumen útil de este tanque"), Scale.LIQUID);
  static final Answer THIS_RUN = new Answer(
      "this-run", Phrase.of("run of the pump with this tank", "marcha de la bomba con este tanque"), Scale.MINUTES);

  static final Reckoning RECKONING = new Reckoning(
      "pressure-tank",
      PumpStage.NAME,
      Phrase.of("Pressure tank", "Tanque hidroneumático"),
      List.<Field>of(RATE, CUT_IN, CUT_OUT, PRECHARGE, RUN, TANK, AIR),
      List.of(SHARE, NEEDED, LEAST_TANK, DRAWDOWN, THIS_RUN),
      Source.seen(
          "Boyle's law, as in a trade journal's column on pressure-tank drawdown (2006).",
          "Ley de Boyle, como en una columna de revista técnica sobre el volumen útil del tanque (2006)."),
      List.of(
          Phrase.of(
              "A tank whose air is kept apart from the water, with the precharge not above cut-in.",
              "Tanque con el aire separado del agua y la precarga no mayor que la presión de arranque."),
          Phrase.of(
              "Least run: 1 min to 3/4 hp and 2 min above in one source, 1 min in another. The motor maker goes first.",
              "Marcha mínima: 1 min hasta 3/4 hp y 2 min arriba, o 1 min, según la fuente. Vale antes el fabricante.")),
      PressureTank::reckon);

  /** The standard atmosphere, exact by definition; about half a psi less for each thousand feet of elevation. */
  private static final Pressure ATMOSPHERE = new Pressure(101_325);

  private static final Pressure BELOW_CUT_IN = Pressure.of(2, Unit.PSI);
  private static final Quantity ONE_MINUTE = Measure.of(1, Unit.MINUTE);
  private static final Quantity TWO_MINUTES = Measure.of(2, Unit.MINUTE);
  private static final double SMALL_MOTOR = Measure.of(0.75, Unit.HORSEPOWER).coherent();

  private PressureTank() {}

  /** 1 minute up to 3/4 hp, 2 minutes above: a pump installer's article (seen); other trade sources ask for one. */
  static Quantity leastRun(Quantity motor) {
    return motor.coherent() <= SMALL_MOTOR ? ONE_MINUTE : TWO_MINUTES;
  }

  /** 2 psi below cut-in, as the published example has it. */
  static Pressure usualPrecharge(Pressure cutIn) {
    return new Pressure(Math.max(0, cutIn.pascals() - BELOW_CUT_IN.pascals()));
  }

  private static Outcome reckon(Inputs inputs) {
    Pressure cutIn = (Pressure) inputs.amount(CUT_IN);
    Pressure precharge = (Pressure) inputs.find(PRECHARGE).orElse(usualPrecharge(cutIn));
    check(precharge, cutIn, (Pressure) inputs.amount(CUT_OUT));
    Term air = inputs.given("A", AIR, ATMOSPHERE);
    Term one = Term.number(1);
    Term share = inputs.given("P₀", PRECHARGE, precharge).plus(air)
        .times(one.over(inputs.given("P₁", CUT_IN).plus(air)).minus(one.over(inputs.given("P₂", CUT_OUT).plus(air))))
        .named("k", SHARE.label(), Scale.NUMBER);
    Term rate = inputs.given("Q", RATE);
    Term needed = Coefficient.giving(Scale.LIQUID, 1).of(Scale.FLOW).of(Scale.MINUTES).term()
        .times(rate).times(inputs.given("t", RUN, ONE_MINUTE))
        .named("u", NEEDED.label(), Scale.LIQUID);
    Outcome outcome = Outcome.empty()
        .with(SHARE.name(), share)
        .with(NEEDED.name(), needed)
        .with(LEAST_TANK.name(), needed.over(share).named("V", LEAST_TANK.label(), Scale.LIQUID));
    Optional<Quantity> tank = inputs.find(TANK);
    if (tank.isEmpty()) return outcome;
    Term drawdown = share.times(inputs.given("v", TANK)).named("w", DRAWDOWN.label(), Scale.LIQUID);
    Term run = Coefficient.giving(Scale.MINUTES, 1).of(Scale.LIQUID).of(Scale.FLOW, -1).term()
        .times(drawdown).over(rate)
        .named("T", THIS_RUN.label(), Scale.MINUTES);
    return outcome.with(DRAWDOWN.name(), drawdown).with(THIS_RUN.name(), run);
  }

  private static void check(Pressure precharge, Pressure cutIn, Pressure cutOut) {
    Figure in = new Figure(cutIn, Scale.PRESSURE);
    if (cutOut.pascals() <= cutIn.pascals()) {
      throw new NotReckonable(
          "Cut-out must be above cut-in: {0} against {1}.",
          "La presión de paro debe superar la de arranque: {0} contra {1}.",
          new Figure(cutOut, Scale.PRESSURE), in);
    }
    if (precharge.pascals() > cutIn.pascals()) {
      throw new NotReckonable(
          "The precharge must not be above cut-in: {0} against {1}.",
          "La precarga no debe superar la presión de arranque: {0} contra {1}.",
          new Figure(precharge, Scale.PRESSURE), in);
    }
  }
}
