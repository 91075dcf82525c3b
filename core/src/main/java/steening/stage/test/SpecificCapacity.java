package steening.stage.test;

import java.util.List;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Answer;
import steening.reckoning.Coefficient;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Term;

/**
 * What a well gives for each foot it is drawn down, and a rough transmissivity from that.
 *
 * <p>q = Q / s; Q rate, s drawdown. T = 2000 q confined, 1500 q unconfined, in gpd/ft and gpm/ft. Source: the 2000 as
 * quoted after Theis and others 1963 (seen); the 1500 Driscoll 1986 (memory). Range: after about a day of pumping, a
 * well without losses. Accuracy: q as good as rate and level; T within a factor of two.
 */
public final class SpecificCapacity {
  public static final QuantityField RATE = TestEntries.RATE;

  public static final QuantityField DRAWDOWN = QuantityField.of(
          "drawdown", Scale.DEPTH, Phrase.of("drawdown", "abatimiento"), "12.40 ft", "3.78 m")
      .between("0.01 ft", "6000 ft").usually("0.1 ft", "300 ft");

  static final Answer CAPACITY =
      new Answer("specific-capacity", Phrase.of("specific capacity", "caudal específico"), Scale.SPECIFIC_CAPACITY);
  static final Answer CONFINED = new Answer(
      "transmissivity-confined",
      Phrase.of("transmissivity, were the aquifer confined", "transmisividad, si el acuífero fuera confinado"),
      Scale.TRANSMISSIVITY);
  static final Answer UNCONFINED = new Answer(
      "transmissivity-unconfined", Phrase.of("transmissivity, were it unconfined", "transmisividad, si fuera libre"),
      Scale.TRANSMISSIVITY);

  private static final double CONFINED_FACTOR = inTradeUnits(2000);
  private static final double UNCONFINED_FACTOR = inTradeUnits(1500);

  public static final Reckoning RECKONING = new Reckoning(
      "specific-capacity",
      TestStage.NAME,
      Phrase.of("Specific capacity", "Caudal específico"),
      List.of(RATE, DRAWDOWN),
      List.of(CAPACITY, CONFINED, UNCONFINED),
      Source.memory(
          "Definition. T from it: 2000 (confined) as quoted after Theis and others 1963, seen;"
              + " 1500 (unconfined) Driscoll 1986, memory.",
          "Definición. T a partir de él: 2000 (confinado) citado según Theis y otros 1963, leído;"
              + " 1500 (libre) Driscoll 1986, de memoria."),
      List.of(
          Phrase.of(
              "It falls as pumping goes on: say after how many hours it was read.",
              "Baja mientras se bombea: diga a cuántas horas se leyó."),
          Phrase.of("Such a transmissivity is good to a factor of two.",
              "Una transmisividad así vale dentro de un factor de dos.")),
      SpecificCapacity::reckon);

  private SpecificCapacity() {}

  private static Outcome reckon(Inputs inputs) {
    Term capacity = of(inputs.given("Q", RATE), inputs.given("s", DRAWDOWN))
        .named("q", CAPACITY.label(), CAPACITY.scale());
    return Outcome.empty()
        .with(CAPACITY.name(), capacity)
        .with(CONFINED.name(), factor(CONFINED_FACTOR).times(capacity).named("T_c", CONFINED.label(), CONFINED.scale()))
        .with(UNCONFINED.name(),
            factor(UNCONFINED_FACTOR).times(capacity).named("T_u", UNCONFINED.label(), UNCONFINED.scale()));
  }

  /** Q / s. */
  static Term of(Term rate, Term drawdown) {
    return Coefficient.giving(Scale.SPECIFIC_CAPACITY, 1).of(Scale.FLOW).of(Scale.DEPTH, -1).term().times(rate)
        .over(drawdown);
  }

  private static Term factor(double coherent) {
    return Coefficient.giving(Scale.TRANSMISSIVITY, coherent).of(Scale.SPECIFIC_CAPACITY).term();
  }

  /** A rule of the trade that was made for gpd/ft and gpm/ft. */
  private static double inTradeUnits(double factor) {
    return Unit.GALLON_PER_DAY_PER_FOOT.toCoherent(factor) / Unit.GALLON_PER_MINUTE_PER_FOOT.toCoherent(1);
  }
}
