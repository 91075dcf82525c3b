package steening.stage.pack;

import java.util.List;
import steening.bore.Annulus;
import steening.bore.Bagged;
import steening.bore.Bore;
import steening.bore.BoreField;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Length;
import steening.quantity.Quantity;
import steening.quantity.Unit;
import steening.quantity.Volume;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.well.Plan;

/**
 * How much pack a well takes, and how many bags to load.
 *
 * <p>V = π/4 (D² − d²) h round the pipe and π/4 D² h below it; n = V / b; loaded: V (1 + o) / b, rounded up. V volume,
 * D hole, d pipe, h length, b volume of a bag, o overage. Source: geometry; 100 lb of pack sand to the cubic foot from
 * a supplier's technical bulletin (seen). Range: a round hole. Accuracy: 5 % in the bag; washouts are what overage is
 * for.
 */
public final class PackVolume {
  public static final BoreField HOLE = BoreField.of("hole", Plan.HOLE, Plan.DEPTH);
  public static final QuantityField CASING = Plan.CASING_OUTSIDE.named("casing");
  public static final QuantityField STRING_BOTTOM =
      Plan.DEPTH.named("string-bottom").labelled("bottom of the string", "fondo de la columna").optional();
  public static final QuantityField FROM = Plan.PACK_TOP.named("from");
  public static final QuantityField TO = Plan.DEPTH.named("to").labelled("bottom of the pack", "fondo del filtro");
  public static final QuantityField BAG_VOLUME = Plan.BAG_VOLUME;
  public static final QuantityField OVERAGE = Plan.OVERAGE;

  /** Half a cubic foot: 50 lb of sand at 100 lb/ft³ loose (supplier's technical bulletin on annular fill, seen). */
  static final Volume BAG = Volume.of(0.50, Unit.CUBIC_FOOT);

  public static final Reckoning RECKONING = new Reckoning(
      "pack-volume",
      PackStage.NAME,
      Phrase.of("Pack volume", "Volumen del filtro"),
      List.of(HOLE, CASING, STRING_BOTTOM, FROM, TO, BAG_VOLUME, OVERAGE),
      Bagged.ANSWERS,
      Source.seen(
          "Geometry. 100 lb of pack sand fill 1 ft³: a supplier's technical bulletin on annular fill.",
          "Geometría. 100 lb (45.4 kg) de arena llenan 0.0283 m³ (1 ft³): boletín técnico de un proveedor."),
      List.of(
          Phrase.of(
              "Without a bag volume, half a cubic foot: 50 lb; good to 5 %.",
              "Sin volumen de saco, 0.0142 m³: 22.7 kg; bueno al 5 %."),
          Phrase.of(
              "Without an overage, the hole as drilled takes it and nothing more.",
              "Sin excedente, lo que lleva el barreno perforado y nada más."),
          Phrase.of(
              "Without a string bottom, the pipe reaches the bottom of the pack.",
              "Sin fondo de columna, el tubo llega hasta el fondo del filtro.")),
      PackVolume::reckon);

  private PackVolume() {}

  private static Outcome reckon(Inputs inputs) {
    Length to = inputs.length(TO);
    Length stringBottom = inputs.find(STRING_BOTTOM).map(q -> (Length) q).orElse(to);
    Bore pipe = Bore.straight(inputs.length(CASING), Length.ZERO, stringBottom);
    Quantity overage = inputs.find(OVERAGE).orElse(Bagged.NO_OVERAGE);
    return Bagged.of(
        new Annulus(inputs.value(HOLE), pipe), inputs.length(FROM), to, inputs.find(BAG_VOLUME).orElse(BAG), overage);
  }
}
