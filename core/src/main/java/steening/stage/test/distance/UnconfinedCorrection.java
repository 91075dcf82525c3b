package steening.stage.test.distance;

import java.util.List;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Scale;
import steening.reckoning.Answer;
import steening.reckoning.Coefficient;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Term;
import steening.stage.test.TestStage;

/**
 * Drawdown under a water table as it would be had the aquifer not grown thinner, and what that share of the thickness
 * gives.
 *
 * <p>s′ = s − s² / (2 b); x = s / b, yield 1 − (1 − x)² of the most, specific capacity (2 − x) / 2 of its first value;
 * b thickness under water before pumping. Source: Jacob 1944 and Dupuit 1863, derivable; that two thirds of the
 * drawdown give some 90 % of the yield is Driscoll 1986 (memory). Range: s from none to b, screen at the bottom.
 * Accuracy: exact.
 */
public final class UnconfinedCorrection {
  public static final QuantityField DRAWDOWN = QuantityField.of(
          "drawdown", Scale.DEPTH, Phrase.of("drawdown", "abatimiento"), "20 ft", "6 m")
      .between("0 ft", "6000 ft");
  public static final QuantityField THICKNESS = QuantityField.of(
          "thickness", Scale.DEPTH,
          Phrase.of("saturated thickness before pumping", "espesor saturado antes de bombear"), "30 ft", "9 m")
      .between("0.1 ft", "6000 ft");

  static final Answer CORRECTED = new Answer(
      "corrected", Phrase.of("drawdown corrected for the thinning", "abatimiento corregido por el adelgazamiento"),
      Scale.DEPTH);
  static final Answer PART = new Answer(
      "drawn-share", Phrase.of("share of the thickness drawn down", "parte del espesor abatida"), Scale.SHARE);
  static final Answer YIELD = new Answer(
      "yield-share", Phrase.of("yield, of the most there is", "gasto, del máximo posible"), Scale.SHARE);
  static final Answer CAPACITY = new Answer(
      "capacity-share", Phrase.of("specific capacity, of its first value", "caudal específico, de su valor inicial"),
      Scale.SHARE);

  public static final Reckoning RECKONING = new Reckoning(
      "unconfined-correction",
      TestStage.NAME,
      Phrase.of("Drawdown under a water table", "Abatimiento en acuífero libre"),
      List.of(DRAWDOWN, THICKNESS),
      List.of(CORRECTED, PART, YIELD, CAPACITY),
      Source.memory("Jacob 1944; Dupuit 1863; two thirds of the drawdown: Driscoll 1986.",
          "Jacob 1944; Dupuit 1863; dos tercios del abatimiento: Driscoll 1986."),
      List.of(
          Phrase.of("Unconfined aquifer, before any delayed yield has come.",
              "Acuífero libre, antes de todo drenaje retardado."),
          Phrase.of(
              "Stopping at two thirds of the thickness is a custom: beyond it, little more water for much more lift.",
              "Parar a dos tercios del espesor es costumbre: más allá hay poca agua más por mucha más elevación.")),
      UnconfinedCorrection::reckon);

  private UnconfinedCorrection() {}

  private static Outcome reckon(Inputs inputs) {
    Term drawdown = inputs.given("s", DRAWDOWN);
    Term thickness = inputs.given("b", THICKNESS);
    if (drawdown.quantity().coherent() > thickness.quantity().coherent()) {
      throw new NotReckonable(
          "A drawdown of {0} is more than the {1} of water there were.",
          "Un abatimiento de {0} es más que los {1} de agua que había.",
          new Figure(drawdown.quantity(), Scale.DEPTH), new Figure(thickness.quantity(), Scale.DEPTH));
    }
    Term x = drawdown.over(thickness)
        .named("x", Phrase.of("share of the thickness", "parte del espesor"), Scale.NUMBER);
    Term left = Term.number(1).minus(x);
    return Outcome.empty()
        .with(CORRECTED.name(), drawdown.minus(drawdown.squared().over(Term.number(2).times(thickness)))
            .named("s′", CORRECTED.label(), CORRECTED.scale()))
        .with(PART.name(), percent().times(x).named("x_s", PART.label(), PART.scale()))
        .with(YIELD.name(), percent().times(Term.number(1).minus(left.squared()))
            .named("y", YIELD.label(), YIELD.scale()))
        .with(CAPACITY.name(), percent().times(Term.number(2).minus(x)).over(2)
            .named("c", CAPACITY.label(), CAPACITY.scale()));
  }

  private static Term percent() {
    return Coefficient.giving(Scale.SHARE, 1).of(Scale.NUMBER).term();
  }
}
