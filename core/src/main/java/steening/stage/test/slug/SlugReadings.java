package steening.stage.test.slug;

import java.util.List;
import steening.field.QuantityField;
import steening.field.SeriesField;
import steening.language.Phrase;
import steening.quantity.Dimension;
import steening.quantity.Length;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;

/**
 * How far the level was off its rest, reading by reading; up or down alike.
 *
 * @param seconds since the slug
 * @param metres off the level at rest, above zero
 */
record SlugReadings(double[] seconds, double[] metres) {
  static final QuantityField CASING = QuantityField.of(
          "casing", Scale.DIAMETER,
          Phrase.of("inside diameter of the casing where the level moves", "diámetro interior donde se mueve el nivel"),
          "4.03 in", "102 mm")
      .between("0.25 in", "120 in");
  static final QuantityField SCREEN = QuantityField.of(
          "screen", Scale.DIAMETER,
          Phrase.of("diameter of the screen or of its pack", "diámetro de la rejilla o su filtro"), "6 in", "152 mm")
      .between("0.25 in", "120 in");
  static final SeriesField TIMES = SeriesField.of(
      QuantityField.of("times", Scale.MINUTES, Phrase.of("minutes since the slug", "minutos desde el golpe de agua"),
          "0.5 min", "0.5 min")
          .between("0 min", "1000000 min"),
      3, "0.1; 0.2; 0.4; 0.6; 0.8; 1 min", "0.1; 0.2; 0.4; 0.6; 0.8; 1 min");
  static final SeriesField HEADS = SeriesField.of(
      QuantityField.of("heads", Scale.DEPTH,
          Phrase.of("levels, off their rest", "niveles, respecto al reposo"), "1.1 ft", "0.33 m")
          .between("0.0001 ft", "1000 ft"),
      3, "1.27; 1.0; 0.68; 0.48; 0.35; 0.26 ft", "0.387; 0.305; 0.207; 0.146; 0.107; 0.079 m");

  static SlugReadings in(Inputs inputs) {
    List<Quantity> times = inputs.value(TIMES);
    List<Quantity> heads = inputs.value(HEADS);
    if (times.size() != heads.size()) {
      throw new NotReckonable(
          "{0} times and {1} levels do not pair.", "{0} tiempos y {1} niveles no forman pares.",
          Integer.toString(times.size()), Integer.toString(heads.size()));
    }
    double[] seconds = times.stream().mapToDouble(Quantity::coherent).toArray();
    double[] metres = heads.stream().mapToDouble(Quantity::coherent).toArray();
    SlugReadings readings = new SlugReadings(seconds, metres);
    for (double one : seconds) if (one != seconds[0]) return readings;
    throw new NotReckonable(
        "All readings are of one minute; a recovery needs several.",
        "Todas las lecturas son del mismo minuto; una recuperación necesita varios.");
  }

  double last() {
    double last = 0;
    for (double one : seconds) last = Math.max(last, one);
    return last;
  }

  static Quantity time(double seconds) {
    return new Measure(Dimension.TIME, seconds);
  }

  static Length half(Quantity diameter) {
    return Length.ofMetres(diameter.coherent() / 2);
  }
}
