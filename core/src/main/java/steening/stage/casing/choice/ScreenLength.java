package steening.stage.casing.choice;

import java.util.List;
import steening.field.QuantityField;
import steening.language.Phrase;
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
import steening.stage.casing.CasingStage;
import steening.stage.casing.EntranceVelocity;
import steening.well.Plan;

/**
 * How long a screen has to be for the rate, clear and half blocked, by the limit that is followed and by the others.
 *
 * <p>f = Q / (V o); half blocked, 2 f. Of the thickness T: 0.8 T of a confined sand, the lower third of an unconfined
 * one.
 *
 * <p>Source: 0.1 ft/s: TI 814-01 page 5-16, Montana ARM 36.21.652, Louisiana LAC 56:I.331; 2 to 10 ft/min by
 * permeability: the table on the same page 5-16; 80 % of a confined sand: Water and Wastewater Engineering page 4-38
 * (all seen). 1.5 ft/s: AWWA A100; 90 % confined and a third to half unconfined: Driscoll 1986 (memory). Range and
 * accuracy as {@link EntranceVelocity}.
 */
public final class ScreenLength {
  static final QuantityField RATE = Plan.RATE;
  static final QuantityField OPEN_AREA = QuantityField.of(
          "open-area", Scale.OPEN_AREA, Plan.OPEN_AREA.label(), "8.5 in2/ft", "180 cm2/m")
      .between("0.1 in2/ft", "400 in2/ft").usually("2 in2/ft", "100 in2/ft");
  static final QuantityField LIMIT = Plan.ENTRANCE_LIMIT.named("limit");
  static final QuantityField THICKNESS = QuantityField.of(
          "thickness", Scale.DEPTH, Phrase.of("thickness of the sand", "espesor de la arena"), "20 ft", "6 m")
      .between("0.5 ft", "3000 ft").usually("2 ft", "300 ft").optional();

  static final Answer LENGTH =
      new Answer("length-needed", Phrase.of("screen length needed", "longitud de rejilla necesaria"), Scale.DEPTH);
  static final Answer HALF = length("length-half-blocked", "the same, half blocked", "la misma, medio tapada");
  static final Answer TIGHT = length("length-tight-sand", "at 2 ft/min: tight sand, TI 814-01",
      "a 0.6 m/min: arena poco permeable, TI 814-01");
  static final Answer OPEN = length("length-open-gravel", "at 10 ft/min: very permeable, TI 814-01",
      "a 3 m/min: muy permeable, TI 814-01");
  static final Answer LATE = length("length-late-view", "at 1.5 ft/s: AWWA A100, from memory",
      "a 0.46 m/s: AWWA A100, de memoria");
  static final Answer CONFINED =
      length("confined", "80 % of a confined sand", "80 % de una arena confinada");
  static final Answer UNCONFINED =
      length("unconfined", "lower third of an unconfined sand", "tercio inferior de una arena libre");

  public static final Reckoning RECKONING = new Reckoning(
      "screen-length",
      CasingStage.NAME,
      Phrase.of("Length of the screen", "Longitud de la rejilla"),
      List.of(RATE, OPEN_AREA, LIMIT, THICKNESS),
      List.of(LENGTH, HALF, TIGHT, OPEN, LATE, CONFINED, UNCONFINED),
      Source.seen(
          "0.1 ft/s: TI 814-01 (US Army, 1998) p. 5-16; Montana ARM 36.21.652; Louisiana LAC 56:I.331. 80 % of a "
              + "confined sand: Water and Wastewater Engineering p. 4-38.",
          "0.1 ft/s: TI 814-01 (US Army, 1998) p. 5-16; Montana ARM 36.21.652; Luisiana LAC 56:I.331. 80 % de una "
              + "arena confinada: Water and Wastewater Engineering p. 4-38."),
      List.of(
          Phrase.of(
              "Sources differ: 0.1 ft/s in three rules; 2 to 10 ft/min by permeability on the same page of TI 814-01, "
                  + "though 10 ft/min is 0.167 ft/s; up to 1.5 ft/s in a later view. Follow one of them, and do not mix. "
                  + "Without a limit of your own, 0.1 ft/s.",
              "Las fuentes difieren: 0.03 m/s (0.1 ft/s) en tres normas; 0.6 a 3 m/min según permeabilidad en la misma "
                  + "página de TI 814-01, aunque 3 m/min son 0.05 m/s; hasta 0.46 m/s en otra posterior. Siga una, sin "
                  + "mezclar. Sin límite propio, 0.03 m/s."),
          Phrase.of(
              "Even inflow. The open area is the maker's figure; pack grains block about half of it (practice, from "
                  + "memory).",
              "Entrada pareja. El área abierta es la del fabricante; los granos del filtro tapan cerca de la mitad "
                  + "(práctica, de memoria)."),
          Phrase.of(
              "Of the thickness: 80 to 90 % if confined; the lower third to half if not (Driscoll 1986, from memory).",
              "Del espesor: 80 a 90 % si es confinado; el tercio inferior o la mitad si es libre (Driscoll 1986, de "
                  + "memoria).")),
      ScreenLength::reckon);

  private ScreenLength() {}

  private static Outcome reckon(Inputs inputs) {
    Term rate = inputs.given("Q", RATE);
    Term open = inputs.given("o", OPEN_AREA);
    Term needed = length(rate, open, inputs.given("V", LIMIT, EntranceVelocity.USUAL_LIMIT), "f", LENGTH);
    Outcome outcome = Outcome.empty()
        .with(LENGTH.name(), needed)
        .with(HALF.name(), Term.number(2).times(needed).named("f₂", HALF.label(), HALF.scale()))
        .with(TIGHT.name(), length(rate, open, other("V₁", 2, Unit.FOOT_PER_MINUTE), "f₃", TIGHT))
        .with(OPEN.name(), length(rate, open, other("V₂", 10, Unit.FOOT_PER_MINUTE), "f₄", OPEN))
        .with(LATE.name(), length(rate, open, other("V₃", 1.5, Unit.FOOT_PER_SECOND), "f₅", LATE));
    if (inputs.find(THICKNESS).isEmpty()) return outcome;
    Term thickness = inputs.given("T", THICKNESS);
    return outcome
        .with(CONFINED.name(), Term.number(0.8).times(thickness).named("c", CONFINED.label(), CONFINED.scale()))
        .with(UNCONFINED.name(), thickness.over(3).named("u", UNCONFINED.label(), UNCONFINED.scale()));
  }

  private static Term length(Term rate, Term open, Term limit, String symbol, Answer answer) {
    Term flow = Coefficient.giving(Scale.FLOW, 1).of(Scale.ENTRANCE_VELOCITY).of(Scale.OPEN_AREA).of(Scale.DEPTH)
        .term();
    return rate.over(flow.times(limit).times(open)).named(symbol, answer.label(), answer.scale());
  }

  private static Term other(String symbol, double velocity, Unit unit) {
    Quantity limit = Measure.of(velocity, unit);
    return Term.given(symbol, Phrase.of("another published limit", "otro límite publicado"),
        Scale.ENTRANCE_VELOCITY, limit);
  }

  private static Answer length(String name, String english, String spanish) {
    return new Answer(name, Phrase.of(english, spanish), Scale.DEPTH);
  }
}
