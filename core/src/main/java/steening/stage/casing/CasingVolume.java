package steening.stage.casing;

import java.util.List;
import steening.bore.Annulus;
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
 * What the casing holds.
 *
 * <p>g = π/4 d²; G = g h; d inside diameter, h length.
 *
 * <p>Source: geometry; tables for a nominal 4 inches print 0.65 gal/ft (county health sheet, seen). Accuracy: the
 * inside diameter is printed on the least or on the average wall, which differ by 1.4 % in volume at 4 inches.
 */
final class CasingVolume {
  static final QuantityField INSIDE =
      Plan.CASING_OUTSIDE.named("inside").labelled("casing inside diameter", "diámetro interior del ademe");
  static final QuantityField LENGTH = QuantityField.of(
          "length", Scale.DEPTH, Phrase.of("length", "longitud"), "100 ft", "30 m")
      .between("0 ft", "6000 ft").usually("1 ft", "600 ft");

  static final Answer PER_LENGTH = new Answer(
      "per-length", Phrase.of("casing volume per length", "volumen del ademe por longitud"), Scale.LIQUID_CAPACITY);
  static final Answer LIQUID = new Answer("liquid", Phrase.of("casing volume", "volumen del ademe"), Scale.LIQUID);

  static final Reckoning RECKONING = new Reckoning(
      "casing-volume",
      CasingStage.NAME,
      Phrase.of("Casing volume", "Volumen del ademe"),
      List.of(INSIDE, LENGTH),
      List.of(PER_LENGTH, LIQUID),
      Source.derived("Geometry.", "Geometría."),
      List.of(Phrase.of(
          "The true inside diameter, not the nominal size.", "El diámetro interior verdadero, no el nominal.")),
      CasingVolume::reckon);

  private CasingVolume() {}

  static Outcome of(Length inside, Length length) {
    return RECKONING.of(Inputs.none().with(INSIDE, inside).with(LENGTH, length));
  }

  private static Outcome reckon(Inputs inputs) {
    Term perLength = Coefficient.giving(Scale.LIQUID_CAPACITY, Annulus.QUARTER_PI).of(Scale.DIAMETER, 2).term()
        .times(inputs.given("d", INSIDE).squared())
        .named("g", PER_LENGTH.label(), PER_LENGTH.scale());
    Term liquid = Coefficient.giving(Scale.LIQUID, 1).of(Scale.LIQUID_CAPACITY).of(Scale.DEPTH).term()
        .times(perLength)
        .times(inputs.given("h", LENGTH))
        .named("G", LIQUID.label(), LIQUID.scale());
    return Outcome.empty().with(PER_LENGTH.name(), perLength).with(LIQUID.name(), liquid);
  }
}
