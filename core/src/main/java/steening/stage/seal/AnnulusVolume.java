package steening.stage.seal;

import java.util.List;
import steening.bore.Annulus;
import steening.bore.Bore;
import steening.bore.BoreField;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.reckoning.Answer;
import steening.reckoning.Coefficient;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Term;
import steening.well.Plan;

/**
 * The volume between hole and pipe.
 *
 * <p>V = π/4 (D² − d²) h, summed over the reaches of the hole; D hole diameter, d outside diameter of the pipe, h
 * length. Source: geometry. Range: a round hole, D at least d. Accuracy: rounding only; the real hole is seldom the
 * bit's size.
 */
public final class AnnulusVolume {
  public static final BoreField HOLE = BoreField.of("hole", Plan.HOLE, Plan.DEPTH);
  public static final QuantityField CASING = Plan.CASING_OUTSIDE.named("casing");
  public static final QuantityField FROM =
      QuantityField.of("from", Scale.DEPTH, Phrase.of("upper end", "extremo superior"), "0 ft", "0 m")
          .between("0 ft", "6000 ft").usually("0 ft", "600 ft");
  public static final QuantityField TO = Plan.DEPTH.named("to").labelled("lower end", "extremo inferior");

  public static final Reckoning RECKONING = new Reckoning(
      "annulus-volume",
      "seal",
      Phrase.of("Annulus volume", "Volumen del espacio anular"),
      List.of(HOLE, CASING, FROM, TO),
      List.of(
          new Answer("volume", Phrase.of("annulus volume", "volumen anular"), Scale.VOLUME),
          new Answer("liquid", Phrase.of("in liquid measure", "en medida de líquidos"), Scale.LIQUID),
          new Answer("per-length", Phrase.of("per length", "por longitud"), Scale.LIQUID_CAPACITY)),
      Source.derived(
          "Geometry. Inches, feet and cubic feet give the handbook factor 1/183.35 = 0.005454.",
          "Geometría. Con pulgadas, pies y pies cúbicos, el factor de los manuales: 1/183.35 = 0.005454."),
      List.of(Phrase.of(
          "A round hole; what the diameters do not say of washouts is not in the volume.",
          "Un barreno redondo; las socavaciones que los diámetros no digan no están en el volumen.")),
      AnnulusVolume::reckon);

  private AnnulusVolume() {}

  private static Outcome reckon(Inputs inputs) {
    Length from = inputs.length(FROM);
    Length to = inputs.length(TO);
    Annulus annulus = new Annulus(inputs.value(HOLE), Bore.even(inputs.length(CASING)));
    Term volume = annulus.volume("V", RECKONING.answers().get(0).label(), from, to);
    Term liquid = volume.times(Coefficient.giving(Scale.LIQUID, 1).of(Scale.VOLUME).term())
        .named("G", RECKONING.answers().get(1).label(), Scale.LIQUID);
    Term length = Term.given("h", Phrase.of("length", "longitud"), Scale.DEPTH, to.minus(from));
    Term perLength = liquid
        .times(Coefficient.giving(Scale.LIQUID_CAPACITY, 1).of(Scale.LIQUID).of(Scale.DEPTH, -1).term())
        .over(length)
        .named("g", RECKONING.answers().get(2).label(), Scale.LIQUID_CAPACITY);
    return Outcome.empty().with("volume", volume).with("liquid", liquid).with("per-length", perLength);
  }
}
