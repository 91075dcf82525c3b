package steening.stage.seal;

import steening.quantity.Scale;
import steening.reckoning.Coefficient;
import steening.reckoning.Term;

/** One volume, as a hole is measured and as a pump is. */
final class Liquids {
  private Liquids() {}

  static Term asVolume(Term liquid) {
    return Coefficient.giving(Scale.VOLUME, 1).of(Scale.LIQUID).term().times(liquid);
  }

  static Term asLiquid(Term volume) {
    return Coefficient.giving(Scale.LIQUID, 1).of(Scale.VOLUME).term().times(volume);
  }
}
