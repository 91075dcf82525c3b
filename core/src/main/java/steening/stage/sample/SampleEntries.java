package steening.stage.sample;

import java.util.List;
import java.util.stream.Stream;
import steening.field.ChoiceField;
import steening.field.Field;
import steening.field.Kind;
import steening.field.QuantityField;
import steening.field.TextField;
import steening.language.Phrase;
import steening.quantity.Scale;

/** A bottle of water: filled, handed over, and what the laboratory found in it. */
final class SampleEntries {
  static final TextField BOTTLE = TextField.of("bottle", Phrase.of("bottle number", "número de frasco"), "B-2217");
  static final TextField LABORATORY =
      TextField.of("laboratory", Phrase.of("laboratory", "laboratorio"), "Example County Laboratory").optional();
  static final QuantityField TEMPERATURE = QuantityField.of(
          "temperature", Scale.TEMPERATURE,
          Phrase.of("temperature in the ice box", "temperatura en la hielera"), "39 °F", "4 °C")
      .between("30 °F", "212 °F").usually("34 °F", "90 °F").optional();
  static final Kind SAMPLE =
      Kind.of("sample", Phrase.of("Sample taken", "Muestra tomada"), BOTTLE, LABORATORY, TEMPERATURE);

  /** Which bottle; the one filled last where it is left empty. */
  static final TextField WHICH = TextField.of(
      "bottle", Phrase.of("bottle, if not the last one", "frasco, si no es el último"), "B-2217").optional();
  static final Kind RECEIVED =
      Kind.of("sample-received", Phrase.of("Sample received", "Muestra recibida en el laboratorio"), WHICH);

  static final ChoiceField.Option ABSENT = ChoiceField.option("absent", "absent", "ausentes");
  static final ChoiceField.Option PRESENT = ChoiceField.option("present", "present", "presentes");
  static final ChoiceField COLIFORM =
      ChoiceField.of("coliform", Phrase.of("coliform bacteria", "coliformes"), ABSENT, PRESENT);
  static final QuantityField NITRATE = QuantityField.of(
          "nitrate", Scale.CONCENTRATION,
          Phrase.of("nitrate as nitrogen", "nitrato como nitrógeno"), "1.2 mg/L", "1.2 mg/L")
      .between("0 mg/L", "5000 mg/L").usually("0 mg/L", "40 mg/L").optional();

  /** What a paper of the laboratory may list beside them. */
  private static final List<Field> ALSO = Stream.concat(
          Stream.of(Constituent.fields()),
          Stream.of(
              Hardness.CALCIUM, Hardness.MAGNESIUM, Hardness.TOTAL, LangelierIndex.ALKALINITY.optional(),
              LangelierIndex.TEMPERATURE.optional()))
      .toList();

  static final Kind RESULT = Kind.of(
          "sample-result", Phrase.of("Laboratory result", "Resultado del laboratorio"),
          Stream.of(List.of(COLIFORM, NITRATE), ALSO, List.of(WHICH)).flatMap(List::stream).toArray(Field[]::new))
      .seldom(ALSO.toArray(Field[]::new));

  private SampleEntries() {}
}
