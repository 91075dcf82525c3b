package steening.stage.pump.demand;

import java.util.List;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Figure;
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

/**
 * What must be stored where the well gives less than the peak asks for.
 *
 * <p>U = P t, V = P t − Q t − c and never below nothing, Y = Q a day: P peak rate, t its time, Q yield of the well, c
 * water in the casing that can be used. Source: a volume balance (derived); a peak of 5 gpm covers a typical household
 * (New York State Department of Health, Fact Sheet 2; seen). Range: the day's demand must be under the day's yield,
 * else
 * no tank helps. Accuracy: rules of thumb.
 */
public final class LowYieldStorage {
  static final QuantityField YIELD = QuantityField.of(
          "yield", Scale.FLOW, Phrase.of("yield of the well", "gasto del pozo"), "1 gpm", "0.06 L/s")
      .between("0 gpm", "1000 gpm").usually("0.1 gpm", "20 gpm");
  static final QuantityField PEAK = QuantityField.of(
          "peak-rate", Scale.FLOW, Phrase.of("peak rate", "gasto máximo"), "5 gpm", "0.32 L/s")
      .between("0.1 gpm", "5000 gpm").usually("3 gpm", "30 gpm");
  static final QuantityField TIME = QuantityField.of(
          "peak-time", Scale.MINUTES, Phrase.of("time of the peak", "duración del máximo"), "60 min", "60 min")
      .between("1 min", "1440 min").usually("5 min", "240 min");
  static final QuantityField DAY = QuantityField.of(
          "daily-demand", Scale.LIQUID, Phrase.of("demand of a day", "demanda de un día"), "330 gal", "1250 L")
      .between("1 gal", "1000000 gal").usually("50 gal", "5000 gal");
  static final QuantityField CASING = QuantityField.of(
          "casing-storage", Scale.LIQUID,
          Phrase.of("usable water in the casing", "agua utilizable en el ademe"), "40 gal", "150 L")
      .between("0 gal", "100000 gal").usually("0 gal", "600 gal").optional();

  static final Answer USED = new Answer(
      "peak-volume", Phrase.of("water of the peak", "agua del máximo"), Scale.LIQUID);
  static final Answer STORAGE = new Answer(
      "storage", Phrase.of("storage needed", "almacenamiento necesario"), Scale.LIQUID);
  static final Answer DAILY = new Answer(
      "daily-yield", Phrase.of("yield of a day", "lo que da en un día"), Scale.LIQUID);

  public static final Reckoning RECKONING = new Reckoning(
      "low-yield-storage",
      "pump",
      Phrase.of("Storage for a well of low yield", "Almacenamiento para un pozo de bajo rendimiento"),
      List.of(YIELD, PEAK, TIME, DAY, CASING),
      List.of(USED, STORAGE, DAILY),
      Source.derived(
          "A volume balance; 5 gpm for a typical peak: New York State Department of Health, Fact Sheet 2.",
          "Balance de volumen; 5 gpm para un máximo típico: New York State Department of Health, Fact Sheet 2."),
      List.of(
          Phrase.of("The yield holds all day and in a dry year; one peak between two fillings.",
              "El gasto se mantiene todo el día y en año seco; un máximo entre dos llenados."),
          Phrase.of("Where the day's demand is over the day's yield, no tank helps.",
              "Si la demanda del día supera lo que da el pozo al día, ningún tanque basta.")),
      LowYieldStorage::reckon);

  private static final Quantity ONE_DAY = Measure.of(1, Unit.DAY);

  private LowYieldStorage() {}

  private static Outcome reckon(Inputs inputs) {
    Term yield = inputs.given("Q", YIELD);
    Term time = inputs.given("t", TIME);
    Term perMinutes = Coefficient.giving(Scale.LIQUID, 1).of(Scale.FLOW).of(Scale.MINUTES).term();
    Term used = perMinutes.times(inputs.given("P", PEAK)).times(time).named("U", USED.label(), USED.scale());
    Term lacking = used.minus(perMinutes.times(yield).times(time));
    if (inputs.find(CASING).isPresent()) lacking = lacking.minus(inputs.given("c", CASING));
    Term storage = lacking.most(Term.number(0)).named("V", STORAGE.label(), STORAGE.scale());
    Term day = Term.given("d", Phrase.of("a day", "un día"), Scale.DAYS, ONE_DAY);
    Term daily = Coefficient.giving(Scale.LIQUID, 1).of(Scale.FLOW).of(Scale.DAYS).term().times(yield).times(day)
        .named("Y", DAILY.label(), DAILY.scale());
    Outcome outcome = Outcome.empty()
        .with(USED.name(), used).with(STORAGE.name(), storage).with(DAILY.name(), daily);
    if (daily.quantity().coherent() >= inputs.amount(DAY).coherent()) return outcome;
    return outcome.remarking(Phrase.of(
        "The well gives {0} a day and {1} are asked for: no tank makes up for that. Deepen, develop or save water.",
        "El pozo da {0} al día y se piden {1}: ningún tanque lo suple. Profundice, desarrolle o ahorre agua.",
        new Figure(daily.quantity(), Scale.LIQUID), new Figure(inputs.amount(DAY), Scale.LIQUID)));
  }
}
