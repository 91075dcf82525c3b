package steening.stage.drilling.trouble;

import java.util.List;
import java.util.Optional;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.FlowRate;
import steening.quantity.Length;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.reckoning.Answer;
import steening.reckoning.Coefficient;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Term;
import steening.stage.drilling.DrillingEntries;
import steening.stage.drilling.DrillingStage;
import steening.stage.drilling.fluid.PitFall;

/**
 * How fast mud is lost, by the fall of the pit, and what share of the pump that is.
 *
 * <p>X = A (Y − y); q = X / t; s = q / P. A area of the pit, Y its fall in t, y the fall that the new hole explains, P
 * pump rate.
 *
 * <p>Source: volume balance (derived). Range: straight walls of the pit, nothing added meanwhile. Accuracy: that of the
 * ruler, some half an inch of the pit's fall.
 */
public final class CirculationLoss {
  static final QuantityField AREA = required(DrillingEntries.PIT_AREA, "8 ft2", "1000 ft2");
  static final QuantityField DROP = QuantityField.of(
          "pit-drop", Scale.DIAMETER, Phrase.of("fall of the mud pit", "descenso de la fosa"), "14 in", "350 mm")
      .between("0.1 in", "120 in").usually("0.5 in", "24 in");
  static final QuantityField MINUTES = QuantityField.of(
          "minutes", Scale.MINUTES, Phrase.of("in so many minutes", "en tantos minutos"), "7.3 min", "7.3 min")
      .between("0.1 min", "720 min").usually("1 min", "240 min");
  static final QuantityField BIT = DrillingEntries.BIT.optional();
  static final QuantityField DRILLED = QuantityField.of(
          "drilled", Scale.DEPTH, Phrase.of("drilled meanwhile", "perforado mientras tanto"), "6 ft", "1.8 m")
      .between("0.1 ft", "200 ft").usually("0.5 ft", "60 ft").optional();

  static final Answer LOST = new Answer("lost", Phrase.of("mud lost", "lodo perdido"), Scale.LIQUID);
  static final Answer RATE =
      new Answer("loss-rate", Phrase.of("loss by the minute", "pérdida por minuto"), Scale.FLOW);
  static final Answer SHARE =
      new Answer("share", Phrase.of("share of the pump rate", "parte del gasto de la bomba"), Scale.SHARE);
  static final Answer FALL = new Answer(
      "fall", Phrase.of("fall that the hole explains", "descenso que explica el barreno"), Scale.DIAMETER);

  public static final Reckoning RECKONING = new Reckoning(
      "circulation-loss",
      DrillingStage.NAME,
      Phrase.of("Mud lost into the ground", "Lodo perdido en el terreno"),
      List.of(AREA, DROP, MINUTES, DrillingEntries.PUMP_RATE, BIT, DRILLED),
      List.of(FALL, LOST, RATE, SHARE),
      Source.derived("Volume balance of the pit.", "Balance de volumen de la fosa."),
      List.of(Phrase.of(
          "A pit with straight walls; nothing added to it meanwhile, and the cuttings shovelled out.",
          "Una fosa de paredes rectas; sin agregar nada mientras tanto y con los recortes sacados.")),
      CirculationLoss::reckon);

  private CirculationLoss() {}

  /** What is known of a loss at the rig: its rate and its share of the pump, from either. */
  static Optional<Outcome> of(Optional<FlowRate> rate, Optional<Quantity> share, Optional<FlowRate> pump) {
    if (rate.isPresent()) {
      Term lost = Term.given("q", RATE.label(), Scale.FLOW, rate.get());
      return pump.map(p -> Outcome.empty().with(RATE.name(), lost).with(SHARE.name(), PitFall.share(lost, p)));
    }
    return share.flatMap(s -> pump.map(p -> {
      Term part = Term.given("s", SHARE.label(), Scale.SHARE, s);
      Term lost = Coefficient.giving(Scale.FLOW, 1).of(Scale.SHARE).of(Scale.FLOW).term()
          .times(part)
          .times(Term.given("P", DrillingEntries.PUMP_RATE.label(), Scale.FLOW, p))
          .named("q", RATE.label(), RATE.scale());
      return Outcome.empty().with(SHARE.name(), part).with(RATE.name(), lost);
    }));
  }

  private static Outcome reckon(Inputs inputs) {
    Length fell = inputs.length(DROP);
    Quantity area = inputs.amount(AREA);
    boolean drilled = inputs.find(BIT).isPresent() && inputs.find(DRILLED).isPresent();
    Outcome lost = drilled
        ? PitFall.lost(
            PitFall.of(inputs.length(BIT), Optional.of(area), Length.ZERO, inputs.length(DRILLED)), fell, area)
        : PitFall.lost(fell, area);
    if (lost.quantity(LOST.name()).coherent() <= 0) {
      throw new NotReckonable(
          "The hole explains the whole fall of the pit: nothing was lost.",
          "El barreno explica todo el descenso de la fosa: no se perdió nada.");
    }
    return PitFall.lossRate(lost, inputs.amount(MINUTES), inputs.amount(DrillingEntries.PUMP_RATE));
  }

  /** The same field, which a form that needs it cannot leave empty. */
  private static QuantityField required(QuantityField field, String least, String most) {
    return QuantityField.of(field.name(), field.scale(), field.label(), "40 ft2", "4 m2")
        .between("1 ft2", "10000 ft2").usually(least, most);
  }
}
