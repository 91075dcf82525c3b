package steening.stage.development;

import java.util.List;
import steening.field.QuantityField;
import steening.field.SeriesField;
import steening.language.Phrase;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;

/**
 * Sand against pumped time.
 *
 * @param minutes of pumping when it was taken, rising
 * @param content of sand, in mg/L
 */
record SandSeries(List<Quantity> minutes, List<Quantity> content) {
  static final SeriesField TIMES = SeriesField.of(
      QuantityField.of("times", Scale.MINUTES, Phrase.of("minutes pumped", "minutos bombeados"), "30 min", "30 min")
          .between("0 min", "100000 min"),
      3, "0; 30; 60; 90; 120 min", "0; 30; 60; 90; 120 min");
  static final SeriesField CONTENTS = SeriesField.of(
      QuantityField.of("sand", Scale.CONCENTRATION, SandContent.CONTENT.label(), "12 mg/L", "12 mg/L")
          .between("0 mg/L", "1000000 mg/L"),
      3, "82; 41; 21.5; 11.2; 6.1 mg/L", "82; 41; 21.5; 11.2; 6.1 mg/L");

  SandSeries {
    minutes = List.copyOf(minutes);
    content = List.copyOf(content);
  }

  static SandSeries in(Inputs inputs) {
    SandSeries series = new SandSeries(inputs.value(TIMES), inputs.value(CONTENTS));
    series.check();
    return series;
  }

  private void check() {
    if (minutes.size() != content.size()) {
      throw new NotReckonable(
          "{0} times and {1} readings of sand do not pair.", "{0} tiempos y {1} lecturas de arena no forman pares.",
          Integer.toString(minutes.size()), Integer.toString(content.size()));
    }
    if (size() < 3) {
      throw new NotReckonable(
          "Three readings of sand are needed to see a course; there are {0}.",
          "Se necesitan tres lecturas de arena para ver un curso; hay {0}.", Integer.toString(size()));
    }
    for (int i = 1; i < size(); i++) {
      if (minutes(i) > minutes(i - 1)) continue;
      throw new NotReckonable(
          "Pumped time must grow from reading to reading; reading {0} does not.",
          "El tiempo bombeado debe crecer de lectura en lectura; la {0} no crece.", Integer.toString(i + 1));
    }
  }

  int size() {
    return minutes.size();
  }

  double minutes(int reading) {
    return minutes.get(reading).in(Scale.MINUTES.us());
  }

  double content(int reading) {
    return content.get(reading).in(Scale.CONCENTRATION.us());
  }

  double[] contents() {
    double[] all = new double[size()];
    for (int i = 0; i < all.length; i++) all[i] = content(i);
    return all;
  }

  double most() {
    double most = 0;
    for (double one : contents()) most = Math.max(most, one);
    return most;
  }
}
