package steening.stage.drilling.start;

import java.util.List;
import steening.field.ChoiceField;
import steening.field.Kind;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Scale;

/** What is written down while the rig is set up. */
public final class StartEntries {
  static final ChoiceField LINES = ChoiceField.of(
      "lines", Phrase.of("overhead lines", "líneas aéreas"),
      ChoiceField.option("none", "none near", "ninguna cerca"), ChoiceField.option("seen", "seen", "hay"));
  static final QuantityField DISTANCE = QuantityField.of(
          "distance", Scale.DISTANCE,
          Phrase.of("nearest line, on the level from the raised mast",
          "línea más cercana, en horizontal desde el mástil"),
          "64 ft", "20 m")
      .between("0 ft", "3000 ft").usually("3 ft", "500 ft").optional();
  static final QuantityField HEIGHT = QuantityField.of(
          "height", Scale.DISTANCE, Phrase.of("lowest line above ground", "línea más baja sobre el terreno"), "22 ft",
          "6.7 m")
      .between("3 ft", "500 ft").usually("8 ft", "120 ft").optional();
  static final Kind WALK_ROUND = Kind.of(
      "walk-round", Phrase.of("Walked round the rig", "Recorrido alrededor del equipo"), LINES, DISTANCE, HEIGHT,
      LineClearance.KILOVOLTS);

  static final ChoiceField SOURCE = ChoiceField.of(
      "source", Phrase.of("water from", "agua de"),
      ChoiceField.option("public", "public supply", "red pública"),
      ChoiceField.option("potable", "other drinking water", "otra agua potable"),
      ChoiceField.option("surface", "stream, pond or ditch", "arroyo, estanque o zanja"));
  static final QuantityField CHLORINE = QuantityField.of(
          "chlorine", Scale.CONCENTRATION, Phrase.of("chlorine residual", "cloro residual"), "1.5 mg/L", "1.5 mg/L")
      .between("0 mg/L", "500 mg/L").usually("0 mg/L", "50 mg/L").optional();
  static final QuantityField TURBIDITY = QuantityField.of(
          "turbidity", Scale.TURBIDITY, Phrase.of("turbidity", "turbiedad"), "2 NTU", "2 UNT")
      .between("0 NTU", "10000 NTU").usually("0 NTU", "100 NTU").optional();
  static final Kind MAKE_UP_WATER = Kind.of(
      "make-up-water", Phrase.of("Water for the mud", "Agua para el lodo"), SOURCE, CHLORINE, TURBIDITY);

  public static final List<Kind> ALL = List.of(WALK_ROUND, MAKE_UP_WATER);

  private StartEntries() {}
}
