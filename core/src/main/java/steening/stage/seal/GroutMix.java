package steening.stage.seal;

import java.util.ArrayList;
import java.util.List;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.mix.Mixture;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.reckoning.Answer;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Term;

/**
 * What a mix of grout comes to; see {@link Mixture} for the formulas and their sources. Makers who reckon bentonite
 * grout at 26.4 gal to 50 lb and 24 gal say 0.4 % more.
 */
public final class GroutMix {
  public static final QuantityField BENTONITE = dry("bentonite", "bentonite", "bentonita", "50 lb", "22.7 kg");
  public static final QuantityField CEMENT = dry("cement", "cement", "cemento", "94 lb", "42.6 kg");
  public static final QuantityField SAND = dry("sand", "sand", "arena", "94 lb", "42.6 kg");
  public static final QuantityField WATER = GroutEntries.WATER.labelled("water", "agua");

  static final Answer YIELD = Mixture.YIELD;
  static final Answer YIELD_VOLUME = Mixture.YIELD_VOLUME;
  static final Answer DENSITY = Mixture.DENSITY;
  static final Answer SOLIDS = Mixture.SOLIDS;

  public static final Reckoning RECKONING = new Reckoning(
      "grout-mix",
      SealStage.NAME,
      Phrase.of("Grout mix", "Mezcla de lechada"),
      List.of(BENTONITE, CEMENT, SAND, WATER),
      List.of(YIELD, YIELD_VOLUME, DENSITY, SOLIDS),
      Mixture.SOURCE,
      List.of(
          Phrase.of(
              "Yield good to 2 %: air, bags not full, a maker's own figure.",
              "Rendimiento bueno al 2 %: aire, sacos incompletos, dato propio del fabricante."),
          Phrase.of(
              "For 50 lb of bentonite to 24 gal, 26.4 gal is also printed; absolute volumes give 26.3: within the 2 %.",
              "Para 22.7 kg de bentonita con 90.8 L se imprime también 99.9 L; los volúmenes absolutos dan 99.6:"
                  + " dentro del 2 %."),
          Phrase.of("A mud balance reads to 0.1 lb/gal.", "La balanza de lodos lee a 12 kg/m³.")),
      GroutMix::reckon);

  private GroutMix() {}

  private static QuantityField dry(String name, String english, String spanish, String us, String metric) {
    return QuantityField.of(name, Scale.WEIGHT, Phrase.of(english, spanish), us, metric)
        .between("0 lb", "100000 lb").usually("1 lb", "1000 lb").optional();
  }

  private static Outcome reckon(Inputs inputs) {
    List<Mixture.Part> parts = new ArrayList<>();
    inputs.find(BENTONITE).ifPresent(m -> parts.add(part("B", DryGrout.BENTONITE, m)));
    inputs.find(CEMENT).ifPresent(m -> parts.add(part("C", DryGrout.CEMENT, m)));
    inputs.find(SAND).ifPresent(m -> parts.add(Mixture.Part.of("S", SAND.label(), m, Mixture.SAND_GRAVITY)));
    if (parts.isEmpty()) {
      throw new NotReckonable(
          "Say how much bentonite, cement or sand goes in.", "Diga cuánta bentonita, cemento o arena lleva.");
    }
    return Mixture.of(parts, inputs.given("W", WATER));
  }

  /** For one bag and its water. */
  static Outcome of(Recipe recipe) {
    return of(recipe.material(), recipe.solids(), recipe.water());
  }

  /** For one dry part and its water. */
  static Outcome of(DryGrout material, Quantity solids, Quantity water) {
    Term mixed = Term.given("W", WATER.label(), Scale.LIQUID, water);
    return Mixture.of(List.of(part("B", material, solids)), mixed);
  }

  private static Mixture.Part part(String symbol, DryGrout material, Quantity weight) {
    return Mixture.Part.of(symbol, material.label(), weight, material.specificGravity());
  }
}
