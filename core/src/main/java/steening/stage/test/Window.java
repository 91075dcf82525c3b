package steening.stage.test;

import java.util.List;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Dimension;
import steening.quantity.Figure;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;

/**
 * The stretch of time whose readings a line is fitted to. Which one is chosen decides the answer more than anything
 * else.
 *
 * @param from first minute, included
 * @param to last minute, included
 */
record Window(double from, double to) {
  static final QuantityField FROM = minute("from-minute", "first minute used", "primer minuto usado");

  static final QuantityField TO = minute("to-minute", "last minute used", "último minuto usado");

  private static final double ENDLESS = 1e18;

  static Window in(Inputs inputs) {
    double from = inputs.find(FROM).map(q -> q.in(Unit.MINUTE)).orElse(0.0);
    double to = inputs.find(TO).map(q -> q.in(Unit.MINUTE)).orElse(ENDLESS);
    if (to < from) {
      throw new NotReckonable(
          "The window ends at {0}, before it begins at {1}.", "La ventana termina a {0}, antes de empezar a {1}.",
          minutes(to), minutes(from));
    }
    return new Window(from, to);
  }

  List<StraightLine.Point> of(List<StraightLine.Point> points) {
    return StraightLine.within(points, from, to);
  }

  /** What the line rests on. */
  Phrase told(List<StraightLine.Point> used) {
    double first = used.get(0).minutes();
    double last = first;
    for (StraightLine.Point point : used) {
      first = Math.min(first, point.minutes());
      last = Math.max(last, point.minutes());
    }
    return Phrase.of(
        "The line rests on {0} readings from {1} to {2}; another window gives another answer.",
        "La recta se apoya en {0} lecturas de {1} a {2}; otra ventana da otro resultado.",
        Integer.toString(used.size()), minutes(first), minutes(last));
  }

  static Figure minutes(double minutes) {
    return new Figure(quantity(minutes), Scale.MINUTES);
  }

  static Quantity quantity(double minutes) {
    return new Measure(Dimension.TIME, Unit.MINUTE.toCoherent(minutes));
  }

  private static QuantityField minute(String name, String english, String spanish) {
    return QuantityField.of(name, Scale.MINUTES, Phrase.of(english, spanish), "10 min", "10 min")
        .between("0 min", "1000000 min").optional();
  }
}
