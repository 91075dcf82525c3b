package steening.stage.test.curve;

import java.util.ArrayList;
import java.util.List;
import steening.field.QuantityField;
import steening.field.SeriesField;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.stage.test.ConstantRateTest;

/**
 * The readings of one well that a curve is laid through.
 *
 * @param seconds since the start, each above zero
 * @param metres of drawdown
 */
record Drawdowns(double[] seconds, double[] metres) {
  static final SeriesField TIMES = SeriesField.of(
      QuantityField.of("times", Scale.MINUTES, Phrase.of("minutes since the start", "minutos desde el arranque"),
          "10 min", "10 min")
          .between("0 min", "1000000 min"),
      3, "2; 5; 10; 30; 100; 300 min", "2; 5; 10; 30; 100; 300 min");
  static final SeriesField SIZES = SeriesField.of(
      QuantityField.of("drawdowns", Scale.DEPTH, Phrase.of("drawdowns", "abatimientos"), "1.03 ft", "0.31 m")
          .between("-100 ft", "6000 ft"),
      3, "0.352; 0.723; 1.03; 1.47; 1.73; 1.77 ft", "0.107; 0.22; 0.314; 0.447; 0.526; 0.538 m");
  static final QuantityField FROM = ConstantRateTest.FROM;
  static final QuantityField TO = ConstantRateTest.TO;

  /**
   * Those within the window.
   *
   * @param parameters as many readings are needed, and one to spare
   */
  static Drawdowns in(Inputs inputs, int parameters) {
    List<Quantity> times = inputs.value(TIMES);
    List<Quantity> sizes = inputs.value(SIZES);
    if (times.size() != sizes.size()) {
      throw new NotReckonable(
          "{0} times and {1} drawdowns do not pair.", "{0} tiempos y {1} abatimientos no forman pares.",
          Integer.toString(times.size()), Integer.toString(sizes.size()));
    }
    double from = inputs.find(FROM).map(Quantity::coherent).orElse(0.0);
    double to = inputs.find(TO).map(Quantity::coherent).orElse(Double.MAX_VALUE);
    List<Integer> used = new ArrayList<>();
    for (int i = 0; i < times.size(); i++) {
      double time = times.get(i).coherent();
      if (time > 0 && time >= from && time <= to) used.add(i);
    }
    if (used.size() <= parameters) {
      throw new NotReckonable(
          "A curve with {0} unknowns needs at least {1} readings after the start; the window holds {2}.",
          "Una curva con {0} incógnitas necesita al menos {1} lecturas tras el arranque; la ventana tiene {2}.",
          Integer.toString(parameters), Integer.toString(parameters + 1), Integer.toString(used.size()));
    }
    return of(times, sizes, used);
  }

  private static Drawdowns of(List<Quantity> times, List<Quantity> sizes, List<Integer> used) {
    double[] seconds = new double[used.size()];
    double[] metres = new double[used.size()];
    double most = 0;
    for (int k = 0; k < seconds.length; k++) {
      seconds[k] = times.get(used.get(k)).coherent();
      metres[k] = sizes.get(used.get(k)).coherent();
      most = Math.max(most, metres[k]);
    }
    if (most > 0) return new Drawdowns(seconds, metres);
    throw new NotReckonable(
        "No reading shows a drawdown; the largest is {0}. Levels above the static one have the wrong sign.",
        "Ninguna lectura muestra abatimiento; el mayor es {0}. Niveles sobre el estático llevan el signo contrario.",
        new Figure(Length.ofMetres(largest(metres)), Scale.DEPTH));
  }

  int size() {
    return metres.length;
  }

  double last() {
    double last = 0;
    for (double one : seconds) last = Math.max(last, one);
    return last;
  }

  double deepest() {
    return largest(metres);
  }

  /** What the curve rests on. */
  Phrase told() {
    double first = seconds[0];
    for (double one : seconds) first = Math.min(first, one);
    return Phrase.of(
        "The curve rests on {0} readings from {1} to {2}, all weighing alike; another window gives another answer.",
        "La curva se apoya en {0} lecturas de {1} a {2}, todas con igual peso; otra ventana da otro resultado.",
        Integer.toString(size()), Curve.minutes(first), Curve.minutes(last()));
  }

  private static double largest(double[] values) {
    double largest = values[0];
    for (double value : values) largest = Math.max(largest, value);
    return largest;
  }
}
