package steening.stage.seal;

import java.util.List;
import java.util.Optional;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.pipe.Buoyancy;
import steening.quantity.Density;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.reckoning.Answer;
import steening.reckoning.Coefficient;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Term;

/**
 * How much water too much is in grout that the balance finds too light: x = (δ − m) / (m − ρ), for each gallon of the
 * grout as it should be. δ weight it should have, m weight found, ρ that of water. Source: mass balance. Range: m
 * between water and δ. Accuracy: coarse. A balance reads to 0.1 lb/gal, which at 9.5 lb/gal is 9 % of water.
 */
public final class GroutDilution {
  public static final QuantityField MIXED = QuantityField.of(
          "mixed", Scale.DENSITY, Phrase.of("weight it should have", "densidad que debería tener"),
          "9.5 lb/gal", "1140 kg/m3")
      .between("5 lb/gal", "25 lb/gal").usually("8.4 lb/gal", "18 lb/gal");
  public static final QuantityField WEIGHED = QuantityField.of(
          "weighed", Scale.DENSITY, Phrase.of("weight found", "densidad hallada"), "9.3 lb/gal", "1115 kg/m3")
      .between("5 lb/gal", "25 lb/gal").usually("8.4 lb/gal", "18 lb/gal");
  public static final QuantityField VOLUME = QuantityField.of(
          "volume", Scale.LIQUID, Phrase.of("grout as it should be", "lechada como debería ser"), "26 gal", "100 L")
      .between("0 gal", "1000000 gal").usually("1 gal", "3000 gal").optional();

  static final Answer SHARE =
      new Answer("extra-share", Phrase.of("water too much, of the volume", "agua de más, del volumen"), Scale.SHARE);
  static final Answer EXTRA = new Answer("extra-water", Phrase.of("water too much", "agua de más"), Scale.LIQUID);

  public static final Reckoning RECKONING = new Reckoning(
      "grout-dilution",
      SealStage.NAME,
      Phrase.of("Water too much in the grout", "Agua de más en la lechada"),
      List.of(MIXED, WEIGHED, VOLUME),
      List.of(SHARE, EXTRA),
      Source.derived("Mass balance.", "Balance de masas."),
      List.of(Phrase.of(
          "Coarse: a balance reads to 0.1 lb/gal, which at 9.5 lb/gal is 9 % of water.",
          "Aproximado: la balanza lee a 12 kg/m³, que a 1140 kg/m³ es 9 % de agua.")),
      GroutDilution::reckon);

  private GroutDilution() {}

  private static Outcome reckon(Inputs inputs) {
    return of(inputs.amount(MIXED), inputs.amount(WEIGHED), inputs.find(VOLUME));
  }

  static Outcome of(Quantity mixed, Quantity weighed, Optional<Quantity> volume) {
    if (!(weighed.coherent() > Buoyancy.WATER.coherent())) {
      throw new NotReckonable("Grout cannot weigh less than water.", "La lechada no puede pesar menos que el agua.");
    }
    Term should = Term.given("δ", MIXED.label(), Scale.DENSITY, mixed);
    Term found = Term.given("m", WEIGHED.label(), Scale.DENSITY, weighed);
    Term water = Term.given("ρ", Phrase.of("density of water", "densidad del agua"), Scale.DENSITY, Buoyancy.WATER);
    Term share = Coefficient.giving(Scale.SHARE, 1).term().times(should.minus(found)).over(found.minus(water))
        .named("x", SHARE.label(), SHARE.scale());
    Outcome outcome = Outcome.empty().with(SHARE.name(), share);
    if (volume.isEmpty()) return outcome;
    Term part = Coefficient.giving(Scale.NUMBER, 1).of(Scale.SHARE).term().times(share);
    return outcome.with(EXTRA.name(), part
        .times(Term.given("G", VOLUME.label(), Scale.LIQUID, volume.get())).named("X", EXTRA.label(), EXTRA.scale()));
  }

  /** Whether a weight is so far below the other that the balance can tell. */
  static boolean isLight(Density weighed, Density mixed, Density readTo) {
    return weighed.coherent() < mixed.coherent() - readTo.coherent();
  }
}
