package steening.stage.decommissioning;

import java.util.List;
import steening.language.Phrase;
import steening.mix.Mixture;
import steening.quantity.Mass;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.quantity.Volume;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.reckoning.Term;
import steening.well.PlugMaterial;

/**
 * What one bag of a material fills of a hole.
 *
 * <p>Neat cement: 94 lb and 5.2 gal; bentonite slurry: 50 lb and 24 gal, 20 % solids (published mixes, seen); both by
 * absolute volumes. Chips: 0.69 ft³ of 50 lb, from 71 to 74 lb/ft³ (supplier bulletin, seen). Concrete: 5.4 ft³ a sack,
 * from five sacks a cubic yard (COMAR 26.04.04.35, seen). Sand and gravel: 0.5 ft³ of 50 lb (supplier bulletin, seen).
 * Drilling mud comes in no bag.
 */
final class Filler {
  private static final Mass CEMENT_SACK = Mass.of(94, Unit.POUND);
  private static final Mass BENTONITE_BAG = Mass.of(50, Unit.POUND);
  private static final Volume CEMENT_WATER = Volume.of(5.2, Unit.GALLON);
  private static final Volume BENTONITE_WATER = Volume.of(24, Unit.GALLON);
  private static final Volume CHIPS_BAG = Volume.of(0.69, Unit.CUBIC_FOOT);
  private static final Volume CONCRETE_SACK = Volume.of(27.0 / 5, Unit.CUBIC_FOOT);
  private static final Volume SAND_BAG = Volume.of(0.5, Unit.CUBIC_FOOT);
  private static final Phrase BAG = Phrase.of("what a bag fills", "lo que llena un saco");
  private static final Phrase WATER = Phrase.of("water for a bag", "agua por saco");

  private Filler() {}

  /** Whether it is dry grout and water, so that the water tells what it makes. */
  static boolean isMixed(PlugMaterial material) {
    return material == PlugMaterial.NEAT_CEMENT || material == PlugMaterial.BENTONITE_SLURRY;
  }

  /** The usual water for a bag of something mixed. */
  static Quantity usualWater(PlugMaterial material) {
    return material == PlugMaterial.NEAT_CEMENT ? CEMENT_WATER : BENTONITE_WATER;
  }

  static Quantity usualSolids(PlugMaterial material) {
    return material == PlugMaterial.NEAT_CEMENT ? CEMENT_SACK : BENTONITE_BAG;
  }

  /** A bag of so much dry grout, mixed with so much water. */
  static Outcome mixed(PlugMaterial material, Quantity solids, Quantity water) {
    double gravity =
        material == PlugMaterial.NEAT_CEMENT ? Mixture.CEMENT_GRAVITY : Mixture.BENTONITE_GRAVITY;
    return Mixture.of(
        List.of(Mixture.Part.of("B", material.label(), solids, gravity)),
        water(water));
  }

  static Term water(Quantity forABag) {
    return Term.given("W", WATER, Scale.LIQUID, forABag);
  }

  /** A bag as it usually is, as a term of a formula. */
  static Term bag(PlugMaterial material) {
    if (isMixed(material)) {
      return mixed(material, usualSolids(material), usualWater(material)).term(Mixture.YIELD_VOLUME.name());
    }
    return switch (material) {
      case CHIPS -> bag(CHIPS_BAG);
      case CONCRETE -> bag(CONCRETE_SACK);
      case SAND, GRAVEL -> bag(SAND_BAG);
      default -> throw new NotReckonable("Say what a bag of it fills.", "Diga cuánto llena un saco.");
    };
  }

  /** A bag that was measured. */
  static Term bag(Quantity volume) {
    return Term.given("b", BAG, Scale.VOLUME, volume);
  }
}
