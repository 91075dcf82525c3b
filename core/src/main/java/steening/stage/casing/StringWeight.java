package steening.stage.casing;

import java.util.List;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.pipe.Buoyancy;
import steening.quantity.Density;
import steening.quantity.Scale;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;

/** {@link Buoyancy} as it is asked for: for any pipe and any two fluids. */
final class StringWeight {
  static final QuantityField OUTSIDE = CollapseMargin.OUTSIDE;
  static final QuantityField INSIDE = CasingVolume.INSIDE;
  static final QuantityField PER_LENGTH = QuantityField.of(
          "pipe-weight", Scale.PIPE_WEIGHT,
          Phrase.of("pipe weight per length, as printed", "peso del tubo por longitud, impreso"), "1.85 lb/ft",
          "2.75 kg/m")
      .between("0.05 lb/ft", "200 lb/ft").usually("0.5 lb/ft", "20 lb/ft").optional();
  static final QuantityField LENGTH = CasingVolume.LENGTH;
  static final QuantityField AROUND = CollapseMargin.AROUND;
  static final QuantityField WITHIN = CollapseMargin.WITHIN;

  static final Reckoning RECKONING = new Reckoning(
      "string-weight",
      CasingStage.NAME,
      Phrase.of("Weight of the string", "Peso de la columna"),
      List.of(OUTSIDE, INSIDE, PER_LENGTH, LENGTH, AROUND, WITHIN),
      Buoyancy.ANSWERS,
      Buoyancy.SOURCE,
      List.of(Phrase.of(
          "PVC. Printed pipe weights differ by 8 %: near zero, take it that the string floats, and hold it down.",
          "PVC. Los pesos impresos difieren en 8 %: cerca de cero, suponga que la columna flota y sujétela.")),
      StringWeight::reckon);

  private StringWeight() {}

  private static Outcome reckon(Inputs inputs) {
    return Buoyancy.of(
        inputs.length(OUTSIDE),
        inputs.length(INSIDE),
        inputs.find(PER_LENGTH),
        inputs.length(LENGTH),
        (Density) inputs.amount(AROUND),
        inputs.find(WITHIN).map(q -> (Density) q).orElse(Buoyancy.WATER));
  }
}
