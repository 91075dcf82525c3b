package steening.stage.casing;

import java.util.List;
import java.util.Optional;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.pipe.Buoyancy;
import steening.pipe.Collapse;
import steening.quantity.Density;
import steening.quantity.Dimension;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.well.Plan;

/** {@link Collapse} as it is asked for: for any pipe, any two fluids, any column. */
final class CollapseMargin {
  static final QuantityField OUTSIDE = Plan.CASING_OUTSIDE.named("outside");
  static final QuantityField WALL = Plan.CASING_WALL.named("wall");
  static final QuantityField TEMPERATURE = QuantityField.of(
          "temperature", Scale.TEMPERATURE,
          Phrase.of("temperature of the casing wall", "temperatura de la pared del ademe"), "73 °F", "23 °C")
      .between("20 °F", "300 °F").usually("32 °F", "140 °F").optional();
  static final QuantityField AROUND = density("around", "density of what is outside", "densidad de lo que está afuera")
      .usually("8 lb/gal", "20 lb/gal");
  static final QuantityField WITHIN =
      density("within", "density of what is inside (0 when empty)", "densidad de lo que está adentro (0 si está vacío)")
          .optional();
  static final QuantityField COLUMN = QuantityField.of(
          "column", Scale.DEPTH, Phrase.of("height of the column", "altura de la columna"), "110 ft", "33 m")
      .between("0 ft", "6000 ft").usually("1 ft", "600 ft");
  static final QuantityField SAFETY = QuantityField.of(
          "safety", Scale.NUMBER, Phrase.of("safety wanted", "seguridad deseada"), "2", "2")
      .between("1", "10").usually("1.5", "4").optional();

  static final Reckoning RECKONING = new Reckoning(
      "collapse-margin",
      CasingStage.NAME,
      Phrase.of("Collapse margin of PVC casing", "Margen contra el colapso del ademe de PVC"),
      List.of(OUTSIDE, WALL, TEMPERATURE, AROUND, WITHIN, COLUMN, SAFETY),
      Collapse.ANSWERS,
      Collapse.SOURCE,
      List.of(
          Phrase.of(
              "Round PVC pipe, loaded for a short time; not slotted, not driven, up to 140 °F.",
              "Tubo de PVC redondo, carga breve; sin ranuras, sin hincar, hasta 60 °C."),
          Phrase.of(
              "Stiffness: a straight line between figures 10 °F apart, from memory, 5 %; whole below 73 °F.",
              "Rigidez: línea recta entre valores cada 5.6 °C, de memoria, 5 %; entera bajo 23 °C."),
          Phrase.of(
              "Setting cement warms the casing: keep it full of water. Maker's rating and local code come first.",
              "El cemento al fraguar calienta el ademe: manténgalo lleno. Fabricante y norma local van primero.")),
      CollapseMargin::reckon);

  private static final Quantity TWO = new Measure(Dimension.NUMBER, Collapse.USUAL_SAFETY);

  private CollapseMargin() {}

  private static Outcome reckon(Inputs inputs) {
    Optional<Quantity> within = inputs.find(WITHIN);
    return Collapse.margin(
        inputs.length(OUTSIDE),
        inputs.length(WALL),
        inputs.find(TEMPERATURE).orElse(Collapse.COOL),
        (Density) inputs.amount(AROUND),
        within.map(q -> (Density) q).orElse(Buoyancy.WATER),
        inputs.length(COLUMN),
        inputs.find(SAFETY).orElse(TWO).coherent());
  }

  static QuantityField density(String name, String english, String spanish) {
    return QuantityField.of(name, Scale.DENSITY, Phrase.of(english, spanish), "9.5 lb/gal", "1140 kg/m3")
        .between("0 lb/gal", "25 lb/gal");
  }
}
