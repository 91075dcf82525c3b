package steening.stage.development;

import java.util.List;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.quantity.Volume;
import steening.reckoning.Answer;
import steening.reckoning.Coefficient;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Term;

/**
 * The sand that the water carries, from what settled in a bucket.
 *
 * <p>c = 1600 v / V; c in mg/L, v settled sand in mL, V water in L. The 1600 is the bulk density of settled sand,
 * 1.6 g/mL. Source: unit arithmetic; the bulk density from memory. Range: sand that has settled out; silt and clay stay
 * afloat and are not counted. Accuracy: the bulk density is good to about 10 %, and a cone is read to about 0.02 mL.
 */
public final class SandContent {
  /** Settled sand, in bulk: 1.6 g/mL; from memory. */
  private static final double BULK_DENSITY = Unit.GRAM_PER_CUBIC_CENTIMETRE.toCoherent(1.6);

  /** A pail: what a crew has at hand. */
  static final Quantity PAIL = Volume.of(5, Unit.GALLON);

  public static final QuantityField SAND = QuantityField.of(
          "sand", Scale.SETTLED_SAND, Phrase.of("sand settled", "arena sedimentada"), "0.05 mL", "0.05 mL")
      .between("0 mL", "5000 mL").usually("0 mL", "50 mL");

  public static final QuantityField WATER = QuantityField.of(
          "water", Scale.LIQUID, Phrase.of("water it settled from", "agua de la que sedimentó"), "5 gal", "20 L")
      .between("0.1 L", "10000 gal").usually("0.5 L", "60 gal").optional();

  static final Answer CONTENT =
      new Answer("sand-content", Phrase.of("sand content", "contenido de arena"), Scale.CONCENTRATION);

  public static final Reckoning RECKONING = new Reckoning(
      "sand-content",
      "development",
      Phrase.of("Sand content", "Contenido de arena"),
      List.of(SAND, WATER),
      List.of(CONTENT),
      Source.memory(
          "Unit arithmetic; settled sand taken as 1.6 g/mL in bulk.",
          "Aritmética de unidades; arena sedimentada a 1.6 g/mL en volumen."),
      List.of(
          Phrase.of(
              "Sand only: silt and clay do not settle while one waits.",
              "Solo arena: el limo y la arcilla no sedimentan mientras se espera."),
          Phrase.of("Without another volume, a pail of 5 gal (18.9 L).",
              "Sin otro volumen, una cubeta de 18.9 L (5 gal).")),
      SandContent::reckon);

  private SandContent() {}

  private static Outcome reckon(Inputs inputs) {
    Term water = inputs.given("V", WATER, PAIL);
    if (!(water.quantity().coherent() > 0)) {
      throw new NotReckonable("The water it settled from must be more than nothing.",
          "El agua de la que sedimentó debe ser más que nada.");
    }
    return Outcome.empty().with(CONTENT.name(),
        of(inputs.given("v", SAND), water).named("c", CONTENT.label(), CONTENT.scale()));
  }

  /** 1600 v / V. */
  static Term of(Term sand, Term water) {
    return Coefficient.giving(Scale.CONCENTRATION, BULK_DENSITY).of(Scale.SETTLED_SAND).of(Scale.LIQUID, -1).term()
        .times(sand).over(water);
  }

  /** The other way round: the sand that makes a content, c V / 1600. */
  static Term sand(Term content, Term water) {
    return Coefficient.giving(Scale.SETTLED_SAND, 1 / BULK_DENSITY).of(Scale.CONCENTRATION).of(Scale.LIQUID).term()
        .times(content).times(water);
  }
}
