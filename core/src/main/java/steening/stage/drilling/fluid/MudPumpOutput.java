package steening.stage.drilling.fluid;

import java.util.List;
import steening.bore.Annulus;
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
import steening.stage.drilling.DrillingEntries;
import steening.stage.drilling.DrillingStage;

/**
 * What a duplex double-acting piston pump gives: two cylinders that push both ways, the rod in the way on one side.
 *
 * <p>g = π/2 (2 D² − d²) L; Q = e n g / t. D liner, d pump rod, L stroke, n full cycles (there and back) counted in t,
 * e efficiency.
 *
 * <p>Source: geometry (derived); efficiency of 85 to 95 %, common practice, no source. Range: d less than D. Accuracy:
 * that of the efficiency: worn packing and swabs give less.
 */
public final class MudPumpOutput {
  static final QuantityField LINER =
      size("liner", "liner (cylinder) diameter", "diámetro de la camisa", "5 in", "127 mm");
  static final QuantityField PUMP_ROD =
      size("pump-rod", "pump rod diameter", "diámetro del vástago", "1.5 in", "38 mm").usually("0.5 in", "4 in");
  static final QuantityField STROKE = size("stroke", "stroke", "carrera", "6 in", "152 mm");
  static final QuantityField CYCLES = QuantityField.of(
          "cycles", Scale.NUMBER, Phrase.of("full cycles counted, there and back", "ciclos completos, ida y vuelta"),
          "60", "60")
      .between("1", "10000").usually("10", "500");
  static final QuantityField COUNTED = QuantityField.of(
          "minutes", Scale.MINUTES, Phrase.of("counted for", "contados durante"), "1 min", "1 min")
      .between("0.05 min", "600 min").usually("0.25 min", "10 min").optional();
  static final QuantityField EFFICIENCY = QuantityField.of(
          "efficiency", Scale.SHARE, Phrase.of("efficiency of the pump", "eficiencia de la bomba"), "90 %", "90 %")
      .between("10 %", "100 %").usually("70 %", "98 %").optional();

  static final Answer PER_CYCLE =
      new Answer("per-cycle", Phrase.of("one cycle, if full", "un ciclo, si se llena"), Scale.LIQUID);
  static final Answer RATE = new Answer("rate", DrillingEntries.PUMP_RATE.label(), Scale.FLOW);

  public static final Reckoning RECKONING = new Reckoning(
      "mud-pump-output",
      DrillingStage.NAME,
      Phrase.of("Output of a duplex mud pump", "Gasto de una bomba de lodos dúplex"),
      List.of(LINER, PUMP_ROD, STROKE, CYCLES, COUNTED, EFFICIENCY),
      List.of(PER_CYCLE, RATE),
      Source.derived(
          "Geometry. Efficiency of 90 % where none is given, usually 85 to 95 %: common practice, no source.",
          "Geometría. Eficiencia de 90 % si no se da otra, usual de 85 a 95 %: práctica común, sin fuente."),
      List.of(
          Phrase.of(
              "Two double-acting cylinders. A triplex or centrifugal pump is another matter.",
              "Dos cilindros de doble efecto. Una bomba tríplex o centrífuga es otro caso."),
          Phrase.of(
              "Worn pistons give less; fill a drum by the clock to know.",
              "Los pistones gastados dan menos; llene un tambor con reloj para saberlo.")),
      MudPumpOutput::reckon);

  private static final Quantity A_MINUTE = Measure.of(1, Unit.MINUTE);
  private static final Quantity USUAL_EFFICIENCY = new Measure(Dimension.NUMBER, 0.9);

  private MudPumpOutput() {}

  private static QuantityField size(String name, String english, String spanish, String us, String metric) {
    return QuantityField.of(name, Scale.DIAMETER, Phrase.of(english, spanish), us, metric)
        .between("0.1 in", "40 in").usually("2 in", "16 in");
  }

  private static Outcome reckon(Inputs inputs) {
    if (!inputs.length(LINER).isMoreThan(inputs.length(PUMP_ROD))) {
      throw new NotReckonable(
          "The liner must be wider than the pump rod.", "La camisa debe ser más ancha que el vástago.");
    }
    Term perCycle = Coefficient.giving(Scale.LIQUID, 2 * Annulus.QUARTER_PI).of(Scale.DIAMETER, 3).term()
        .times(Term.number(2).times(inputs.given("D", LINER).squared()).minus(inputs.given("d", PUMP_ROD).squared()))
        .times(inputs.given("L", STROKE))
        .named("g", PER_CYCLE.label(), PER_CYCLE.scale());
    Term rate = Coefficient.giving(Scale.FLOW, 1)
        .of(Scale.SHARE).of(Scale.LIQUID).of(Scale.MINUTES, -1).term()
        .times(inputs.given("e", EFFICIENCY, USUAL_EFFICIENCY))
        .times(inputs.given("n", CYCLES))
        .times(perCycle)
        .over(inputs.given("t", COUNTED, A_MINUTE))
        .named("Q", RATE.label(), RATE.scale());
    return Outcome.empty().with(PER_CYCLE.name(), perCycle).with(RATE.name(), rate);
  }
}
