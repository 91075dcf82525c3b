package steening.stage.casing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Answer;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;

/**
 * How long a solvent-cemented joint of PVC takes: S = max(S₁; S₂) until it may be handled, C = max(C₁; C₂; C₃) until it
 * may be loaded; each table's time, and half of it again in air of more than 60 % humidity.
 *
 * <p>Source: {@link CureTables}, seen. Valid from 0 to 100 °F, nominal sizes to 24 in. Guide figures of makers, which
 * differ severalfold; the label of the cement goes before them.
 */
final class CementCure {
  static final QuantityField SIZE = QuantityField.of(
          "pipe-size", Scale.DIAMETER, Phrase.of("nominal pipe size", "diámetro nominal del tubo"), "4 in", "100 mm")
      .between("0.5 in", "24 in").usually("2 in", "12 in");
  static final QuantityField TEMPERATURE = QuantityField.of(
          "temperature", Scale.TEMPERATURE,
          Phrase.of("temperature of pipe and cement", "temperatura del tubo y del cemento"), "55 °F", "13 °C")
      .between("-30 °F", "140 °F").usually("20 °F", "100 °F");
  static final QuantityField HUMIDITY = QuantityField.of(
          "humidity", Scale.SHARE, Phrase.of("relative humidity", "humedad relativa"), "70 %", "70 %")
      .between("0 %", "100 %").usually("10 %", "100 %").optional();

  static final Answer SET =
      new Answer("initial-set", Phrase.of("set: may be handled", "fraguado: se puede mover"), Scale.MINUTES);
  static final Answer CURE =
      new Answer("cure", Phrase.of("cure: may be loaded", "curado: se puede cargar"), Scale.HOURS);

  /** Where the print begins and ends. */
  private static final Quantity COLDEST = Measure.of(0, Unit.FAHRENHEIT);

  private static final Quantity WARMEST = Measure.of(100, Unit.FAHRENHEIT);

  static final Reckoning RECKONING = new Reckoning(
      "cement-cure",
      CasingStage.NAME,
      Phrase.of("Set and cure of solvent cement", "Fraguado y curado del cemento solvente"),
      List.of(SIZE, TEMPERATURE, HUMIDITY),
      answers(),
      Source.seen(
          "three makers' tables for PVC: technical manual, application guide, cure chart",
          "tres tablas de fabricantes para PVC: manual técnico, guía de aplicación, tabla de curado"),
      List.of(
          Phrase.of(
              "Guide figures from {0} to {1}. The label of the cement in hand comes first.",
              "Cifras de guía de {0} a {1}. La etiqueta del cemento en uso va primero.",
              degrees(COLDEST), degrees(WARMEST)),
          Phrase.of(
              "Cured for water pressure, not for a blow: no source gives a time for impact.",
              "Curado para presión de agua, no para golpes: ninguna fuente da tiempo para impacto.")),
      CementCure::reckon);

  private CementCure() {}

  /** @throws NotReckonable where no table reaches so far */
  static Outcome of(Length size, Quantity temperature, Optional<Quantity> humidity) {
    boolean colder = temperature.in(Unit.FAHRENHEIT) < COLDEST.in(Unit.FAHRENHEIT) - CureTable.HAIR;
    CureTimes sets = CureTimes.of(CureTables.SETS, "s", "S", SET.scale(), size, temperature, humidity);
    CureTimes cures = CureTimes.of(CureTables.CURES, "c", "C", CURE.scale(), size, temperature, humidity);
    if (colder || sets.times().isEmpty() || cures.times().isEmpty()) {
      throw new NotReckonable(
          "No table tells of {0}: they go from {1} to {2}.", "Ninguna tabla habla de {0}: van de {1} a {2}.",
          degrees(temperature), degrees(COLDEST), degrees(WARMEST));
    }
    Outcome slowest = Outcome.empty()
        .with(SET.name(), sets.slowest().named("S", SET.label(), SET.scale()))
        .with(CURE.name(), cures.slowest().named("C", CURE.label(), CURE.scale()));
    Outcome outcome = cures.disagreeing(sets.disagreeing(cures.each(sets.each(slowest))));
    return humidity.isPresent() ? outcome : outcome.remarking(Phrase.of(
        "Humidity not given: above 60 %, or in damp weather, add half.",
        "Sin humedad: con más de 60 %, o tiempo húmedo, agregue la mitad."));
  }

  private static Outcome reckon(Inputs inputs) {
    return of(inputs.length(SIZE), inputs.amount(TEMPERATURE), inputs.find(HUMIDITY));
  }

  private static Figure degrees(Quantity temperature) {
    return new Figure(temperature, Scale.TEMPERATURE);
  }

  private static List<Answer> answers() {
    List<Answer> answers = new ArrayList<>(List.of(SET, CURE));
    for (CureTable table : CureTables.SETS) answers.add(new Answer(table.code(), table.name(), SET.scale()));
    for (CureTable table : CureTables.CURES) answers.add(new Answer(table.code(), table.name(), CURE.scale()));
    return answers;
  }
}
