package steening.stage.development;

import java.util.List;
import steening.field.ChoiceField;
import steening.field.Kind;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Scale;
import steening.well.DepthFrom;
import steening.well.Plan;
import steening.well.Sounding;

/** What is taken down while a well is developed. */
final class DevelopmentEntries {
  static final ChoiceField METHOD = ChoiceField.of(
      "method",
      Phrase.of("method", "método"),
      ChoiceField.option("air-lift", "air-lift", "bombeo con aire"),
      ChoiceField.option("over-pumping", "over-pumping", "sobrebombeo"),
      ChoiceField.option("surging", "surging", "pistoneo"),
      ChoiceField.option("jetting", "jetting", "chorro a presión"),
      ChoiceField.option("bailing", "bailing", "achique con cuchara"));

  /** How long this cycle took. */
  static final QuantityField MINUTES = QuantityField.of(
          "minutes", Scale.MINUTES, Phrase.of("length of the cycle", "duración del ciclo"), "30 min", "30 min")
      .between("0 min", "10000 min").usually("1 min", "600 min");

  static final QuantityField RATE = Plan.RATE.labelled("discharge rate", "gasto").optional();

  static final QuantityField LEVEL = QuantityField.of(
          "level", Scale.DEPTH, Phrase.of("pumping water level", "nivel dinámico"), "41.5 ft", "12.6 m")
      .between("-50 ft", "6000 ft").usually("0 ft", "400 ft").optional();

  /** Below ground where it is left empty. */
  static final ChoiceField FROM = DepthFrom.FIELD.optional();

  static final QuantityField TURBIDITY = QuantityField.of(
          "turbidity", Scale.TURBIDITY, Phrase.of("turbidity", "turbiedad"), "4 NTU", "4 NTU")
      .between("0 NTU", "10000 NTU").usually("0 NTU", "4000 NTU").optional();

  static final QuantityField SAND = SandContent.SAND.optional();

  static final QuantityField WATER = SandContent.WATER.optional();

  static final QuantityField READING =
      Sounding.READING.labelled("top of filter pack, sounded", "tope del filtro de grava, sondeado");

  static final Kind CYCLE = Kind.of(
      "development", Phrase.of("Development cycle", "Ciclo de desarrollo"),
      METHOD, MINUTES, RATE, LEVEL, FROM, TURBIDITY, SAND, WATER)
      .carrying(METHOD, FROM, WATER);

  static final Kind TAPE = Kind.of(
      "development-tape", Phrase.of("Pack sounded again", "Filtro sondeado de nuevo"), READING, DepthFrom.FIELD)
      .carrying(DepthFrom.FIELD);

  static final List<Kind> ALL = List.of(CYCLE, TAPE);

  private DevelopmentEntries() {}
}
