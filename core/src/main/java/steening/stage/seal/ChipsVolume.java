package steening.stage.seal;

import java.util.List;
import steening.bore.Annulus;
import steening.bore.Bagged;
import steening.bore.Bore;
import steening.bore.BoreField;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Quantity;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.well.Plan;

/**
 * How many bags of chips a stretch of the annulus takes; see {@link Bagged} for the formula. Source: 50 lb of chips
 * fill 0.68 to 0.70 ft³ dry, 71 to 74 lb/ft³ (published mix tables, seen). Range: chips dry or just wetted; they swell
 * later. Accuracy: 3 % in the bag.
 */
public final class ChipsVolume {
  public static final BoreField HOLE = AnnulusVolume.HOLE;
  public static final QuantityField CASING = AnnulusVolume.CASING;
  public static final QuantityField FROM = Plan.PACK_TOP.named("from")
      .labelled("top of the chips", "tope de los pellets");
  public static final QuantityField TO = Plan.PACK_TOP.named("to")
      .labelled("bottom of the chips", "fondo de los pellets");
  public static final QuantityField BAG_VOLUME = Chips.BAG_VOLUME;
  public static final QuantityField OVERAGE = Plan.OVERAGE;

  public static final Reckoning RECKONING = new Reckoning(
      "chips-volume",
      SealStage.NAME,
      Phrase.of("Chips volume", "Volumen de pellets"),
      List.of(HOLE, CASING, FROM, TO, BAG_VOLUME, OVERAGE),
      Bagged.ANSWERS,
      Source.seen(
          "Geometry; 50 lb of chips fill 0.68 to 0.70 ft³: published tables.",
          "Geometría; 22.7 kg de pellets llenan 0.0193 a 0.0198 m³: tablas publicadas."),
      List.of(
          Phrase.of("Without a bag volume, 0.69 ft³ for 50 lb.", "Sin volumen de saco, 0.0195 m³ por 22.7 kg."),
          Phrase.of(
              "Pour slowly, 50 lb in 3 to 5 minutes (from memory), and sound often: chips bridge as sand does.",
              "Vierta despacio, 22.7 kg en 3 a 5 minutos (de memoria), y sondee seguido: también hacen puente.")),
      ChipsVolume::reckon);

  private ChipsVolume() {}

  private static Outcome reckon(Inputs inputs) {
    Annulus annulus = new Annulus(inputs.value(HOLE), Bore.even(inputs.length(CASING)));
    Quantity bag = inputs.find(BAG_VOLUME).orElseGet(Plan.PART.empty()::chipsBagVolume);
    Quantity overage = inputs.find(OVERAGE).orElse(Bagged.NO_OVERAGE);
    return Bagged.of(annulus, inputs.length(FROM), inputs.length(TO), bag, overage);
  }
}
