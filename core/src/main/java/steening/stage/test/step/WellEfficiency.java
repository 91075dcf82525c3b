package steening.stage.test.step;

import java.util.List;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Scale;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.stage.test.TestStage;

/**
 * Drawdown and efficiency of a well at a rate, from the B and C of a step test.
 *
 * <p>s = B Q + C Q², E = B Q / s. Source: Jacob 1947, Bierschenk 1963 (seen in its abstract); classes of Walton 1962
 * (memory). Range: rates near those of the test, the same hours of pumping. Accuracy: of B and C.
 */
public final class WellEfficiency {
  public static final QuantityField AQUIFER = QuantityField.of(
          "aquifer-loss-coefficient", Scale.SPECIFIC_DRAWDOWN,
          Phrase.of("B, what the aquifer takes", "B, lo que toma el acuífero"), "0.3 ft/gpm", "0.0168 d/m2")
      .between("0.000001 ft/gpm", "1000 ft/gpm");
  public static final QuantityField WELL = QuantityField.of(
          "well-loss-coefficient", Scale.WELL_LOSS,
          Phrase.of("C, what the well takes", "C, lo que toma el pozo"), "0.006 ft/gpm2", "0.0000616 d2/m5")
      .between("0 ft/gpm2", "1000 ft/gpm2");
  public static final QuantityField RATE = WellLoss.RATE;

  public static final Reckoning RECKONING = new Reckoning(
      "well-efficiency",
      TestStage.NAME,
      Phrase.of("Efficiency of a well at a rate", "Eficiencia de un pozo a un gasto"),
      List.of(AQUIFER, WELL, RATE),
      List.of(WellLoss.AQUIFER, WellLoss.WELL, WellLoss.DRAWDOWN, WellLoss.EFFICIENCY, WellLoss.CLASS),
      Source.seen("Jacob 1947; Bierschenk 1963, of which the abstract was read.",
          "Jacob 1947; Bierschenk 1963, del que se leyó el resumen."),
      List.of(Phrase.of(
          "Rates near those of the step test, after as long a pumping as its steps.",
          "Gastos cercanos a los de la prueba escalonada, tras un bombeo tan largo como sus escalones.")),
      WellEfficiency::reckon);

  private WellEfficiency() {}

  private static Outcome reckon(Inputs inputs) {
    return WellLoss.at(
        Outcome.empty(), inputs.given("Q", RATE), inputs.given("B", AQUIFER), inputs.given("C", WELL));
  }
}
