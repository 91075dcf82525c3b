package steening.stage.test.step;

import java.util.List;
import steening.field.QuantityField;
import steening.field.SeriesField;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.FlowRate;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;

/**
 * The steps of a test, each with the drawdown that it came to.
 *
 * @param rates in m³/s, not all alike
 * @param drawdowns in metres, above zero
 */
record Steps(double[] rates, double[] drawdowns) {
  static final SeriesField RATES = SeriesField.of(
      QuantityField.of("rates", Scale.FLOW, Phrase.of("rates of the steps", "gastos de los escalones"), "10 gpm",
          "0.6 L/s")
          .between("0.01 gpm", "5000 gpm"),
      2, "5; 10; 15; 20; 25 gpm", "0.3; 0.6; 0.9; 1.2; 1.5 L/s");
  static final SeriesField DRAWDOWNS = SeriesField.of(
      QuantityField.of("drawdowns", Scale.DEPTH,
          Phrase.of("drawdowns at their ends", "abatimientos al final de cada uno"), "3.6 ft", "1.1 m")
          .between("0.001 ft", "6000 ft"),
      2, "1.65; 3.61; 5.84; 8.41; 11.25 ft", "0.485; 1.067; 1.731; 2.507; 3.363 m");

  static Steps in(Inputs inputs) {
    List<Quantity> rates = inputs.value(RATES);
    List<Quantity> drawdowns = inputs.value(DRAWDOWNS);
    if (rates.size() != drawdowns.size()) {
      throw new NotReckonable(
          "{0} rates and {1} drawdowns do not pair.", "{0} gastos y {1} abatimientos no forman pares.",
          Integer.toString(rates.size()), Integer.toString(drawdowns.size()));
    }
    double[] q = rates.stream().mapToDouble(Quantity::coherent).toArray();
    double[] s = drawdowns.stream().mapToDouble(Quantity::coherent).toArray();
    Steps steps = new Steps(q, s);
    for (double one : q) if (one != q[0]) return steps;
    throw new NotReckonable(
        "All steps were at {0}. A line through s/Q needs two rates at least.",
        "Todos los escalones fueron a {0}. Una recta por s/Q necesita dos gastos por lo menos.", steps.highest());
  }

  int size() {
    return rates.length;
  }

  double most() {
    double most = 0;
    for (double rate : rates) most = Math.max(most, rate);
    return most;
  }

  Figure highest() {
    return new Figure(new FlowRate(most()), Scale.FLOW);
  }

  /** Rates as shares of the highest. */
  double[] shares() {
    double most = most();
    double[] shares = rates.clone();
    for (int i = 0; i < shares.length; i++) shares[i] /= most;
    return shares;
  }

  /** s/Q of each step, in s/m². */
  double[] specific() {
    double[] specific = drawdowns.clone();
    for (int i = 0; i < specific.length; i++) specific[i] /= rates[i];
    return specific;
  }
}
