package steening.stage.test.distance;

import java.util.ArrayList;
import java.util.List;
import steening.field.QuantityField;
import steening.field.SeriesField;
import steening.language.Phrase;
import steening.quantity.Dimension;
import steening.quantity.Figure;
import steening.quantity.FlowRate;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Term;

/** Pumping at one rate after another, as the changes that make it up. */
final class Periods {
  static final SeriesField STARTS = SeriesField.of(
      QuantityField.of("starts", Scale.DAYS,
          Phrase.of("days at which each rate began", "días en que empezó cada gasto"), "0 d", "0 d")
          .between("0 d", "100000 d"),
      1, "0; 10; 30 d", "0; 10; 30 d");
  static final SeriesField RATES = SeriesField.of(
      QuantityField.of("rates", Scale.FLOW, Phrase.of("the rates", "los gastos"), "12 gpm", "0.8 L/s")
          .between("0 gpm", "5000 gpm"),
      1, "12; 8; 0 gpm", "0.8; 0.5; 0 L/s");
  static final QuantityField AT = QuantityField.of(
          "days", Scale.DAYS, Phrase.of("days after the beginning", "días desde el principio"), "100 d", "100 d")
      .between("0.0001 d", "100000 d");

  private Periods() {}

  /**
   * One change of the rate.
   *
   * @param number counted from one
   * @param since minutes from the change on
   * @param rate what it changed by
   */
  record Change(int number, Term since, Term rate) {}

  /** The changes up to the day asked for. */
  static List<Change> changes(Inputs inputs) {
    List<Quantity> starts = inputs.value(STARTS);
    List<Quantity> rates = inputs.value(RATES);
    if (starts.size() != rates.size()) {
      throw new NotReckonable(
          "{0} beginnings and {1} rates do not pair.", "{0} comienzos y {1} gastos no forman pares.",
          Integer.toString(starts.size()), Integer.toString(rates.size()));
    }
    double at = inputs.amount(AT).coherent();
    List<Change> changes = new ArrayList<>();
    double before = 0;
    for (int i = 0; i < starts.size(); i++) {
      if (i > 0) refuseBackwards(starts.get(i - 1), starts.get(i));
      double since = at - starts.get(i).coherent();
      if (since <= 0) break;
      changes.add(change(changes.size() + 1, since, rates.get(i).coherent() - before));
      before = rates.get(i).coherent();
    }
    if (!changes.isEmpty()) return changes;
    throw new NotReckonable(
        "Pumping begins at {0}, not before {1}.", "El bombeo empieza a {0}, no antes de {1}.",
        days(starts.get(0)), days(inputs.amount(AT)));
  }

  private static Change change(int number, double seconds, double rate) {
    String index = Term.index(number);
    return new Change(
        number,
        Term.given("t" + index, Phrase.of("minutes since the change of rate", "minutos desde el cambio de gasto"),
            Scale.MINUTES, new Measure(Dimension.TIME, seconds)),
        Term.given("Q" + index, Phrase.of("change of the rate", "cambio del gasto"), Scale.FLOW, new FlowRate(rate)));
  }

  private static void refuseBackwards(Quantity before, Quantity after) {
    if (after.coherent() > before.coherent()) return;
    throw new NotReckonable(
        "The rate that begins at {0} stands after the one of {1}. Put them in the order of time.",
        "El gasto que empieza a {0} está tras el de {1}. Póngalos en orden de tiempo.", days(after), days(before));
  }

  private static Figure days(Quantity time) {
    return new Figure(time, Scale.DAYS);
  }
}
