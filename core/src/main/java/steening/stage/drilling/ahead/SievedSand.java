package steening.stage.drilling.ahead;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.ground.GrainSizeConductivity;
import steening.ground.Outlook;
import steening.ground.RoughYield;
import steening.ground.SieveCurve;
import steening.language.Phrase;
import steening.quantity.Length;
import steening.quantity.Quantity;
import steening.reckoning.Outcome;
import steening.well.GroundLog;
import steening.well.Levels;
import steening.well.Sieved;
import steening.well.Stratum;
import steening.well.Well;

/**
 * A sand as it was logged, with one of its sieved samples.
 *
 * @param top of the sand, above all strata of sand that lie on each other
 * @param conductivity by the sample's grains
 */
record SievedSand(Sieved.Sample sample, Length top, Length bottom, Outcome conductivity) {
  /** One for each sample that comes from a logged sand and has a curve that reaches far enough. */
  static List<SievedSand> all(Well well) {
    List<SievedSand> sands = new ArrayList<>();
    for (Sieved.Sample sample : well.get(Sieved.PART).samples()) {
      for (Run run : runs(well.get(GroundLog.PART))) {
        if (!run.holds(sample)) continue;
        Outcome.ifReckonable(() -> SieveCurve.of(sample.body()))
            .flatMap(curve -> GrainSizeConductivity.of(curve, run.bottom().minus(run.top())))
            .ifPresent(conductivity -> sands.add(new SievedSand(sample, run.top(), run.bottom(), conductivity)));
      }
    }
    return sands;
  }

  /** What it gives by the mean of the formulas. */
  Optional<Outcome> gives(Well well) {
    return gives(well, conductivity.quantity("conductivity"));
  }

  /** With the level at rest as known; where nobody knows it, at the ground, which is the most there is to draw down. */
  Optional<Outcome> gives(Well well, Quantity conductivity) {
    Optional<Length> atRest = well.get(Levels.PART).atRest().map(Levels.Level::depth)
        .or(() -> Outlook.atRest(well, Outlook.WANTED));
    return RoughYield.of(conductivity, bottom.minus(top), top, atRest.orElse(Length.ZERO))
        .map(gives -> atRest.isPresent() ? gives : gives.remarking(Phrase.of(
            "The level at rest is not known: taken at the ground.",
            "No se conoce el nivel estático: se toma en el terreno.")));
  }

  /** Strata of sand that lie on each other. */
  private record Run(Length top, Length bottom) {
    boolean holds(Sieved.Sample sample) {
      return sample.from().isLessThan(bottom) && sample.to().isMoreThan(top);
    }
  }

  private static List<Run> runs(GroundLog log) {
    List<Run> runs = new ArrayList<>();
    for (Stratum stratum : log.strata()) {
      if (!Ahead.isSand(stratum)) continue;
      Run last = runs.isEmpty() ? new Run(Length.ZERO, Length.ZERO) : runs.get(runs.size() - 1);
      boolean goesOn = !runs.isEmpty() && !stratum.from().isMoreThan(last.bottom());
      if (goesOn) runs.set(runs.size() - 1, new Run(last.top(), last.bottom().max(stratum.to())));
      else runs.add(new Run(stratum.from(), stratum.to()));
    }
    return runs;
  }
}
