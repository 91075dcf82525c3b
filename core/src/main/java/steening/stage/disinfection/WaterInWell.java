package steening.stage.disinfection;

import java.util.Optional;
import steening.bore.Annulus;
import steening.bore.Bore;
import steening.language.Phrase;
import steening.quantity.Dimension;
import steening.quantity.Length;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.quantity.Unit;
import steening.quantity.Volume;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.well.CasingString;
import steening.well.Fill;
import steening.well.Hole;
import steening.well.Levels;
import steening.well.Plan;
import steening.well.Well;

/**
 * The water of one well, from what was built and measured, else from the plan.
 *
 * @param column from the static level to the bottom of the string
 * @param pack below the static level, down to the bottom of the hole
 */
record WaterInWell(Optional<Length> inside, Optional<Length> column, Optional<Volume> pack) {
  /** Commonly aimed at in a new well, and asked for in places: COMAR 26.04.04.24, 15A NCAC 18C .1002 (seen). */
  static final Quantity USUAL_TARGET = new Measure(Dimension.CONCENTRATION, Unit.MILLIGRAM_PER_LITRE.toCoherent(100));

  static WaterInWell of(Well well) {
    return of(well, well.get(Levels.PART).atRest().map(Levels.Level::depth));
  }

  /** As if the water stood at the ground, before any level is known: more than it will take. */
  static WaterInWell atMost(Well well) {
    return of(well, Optional.of(Length.ZERO));
  }

  private static WaterInWell of(Well well, Optional<Length> rest) {
    CasingString string = well.get(CasingString.PART);
    Plan plan = well.get(Plan.PART);
    Optional<Length> bottom = string.bottom().isPresent() ? string.bottom() : plan.stringBottom();
    Optional<Length> column =
        rest.flatMap(r -> bottom.map(b -> b.minus(r.max(Length.ZERO)))).filter(c -> c.isMoreThan(Length.ZERO));
    Optional<Length> inside = string.inside().isPresent() ? string.inside() : plan.casingInside();
    return new WaterInWell(inside.filter(d -> d.isMoreThan(Length.ZERO)), column, rest.flatMap(r -> pack(well, r)));
  }

  private static Optional<Volume> pack(Well well, Length rest) {
    Plan plan = well.get(Plan.PART);
    Bore drilled = well.get(Hole.PART).bore();
    Bore built = well.get(CasingString.PART).pipe();
    Bore hole = drilled.isEmpty() ? plan.hole() : drilled;
    Annulus annulus = new Annulus(hole, built.isEmpty() ? plan.pipe() : built);
    Optional<Length> sounded = well.get(Fill.PACK).top();
    Optional<Length> top = sounded.isPresent() ? sounded : plan.length(Plan.PACK_TOP);
    if (top.isEmpty()) return Optional.empty();
    Length upper = top.get().max(rest);
    return Outcome.ifReckonable(() -> Outcome.empty().with(
            "volume", annulus.volume("V", Phrase.of("filter pack", "filtro de grava"), upper, hole.bottom())))
        .map(o -> (Volume) o.quantity("volume"));
  }

  /** A dose's inputs but strength and target; absent where the casing or the level is not known. */
  Optional<Inputs> inputs() {
    if (inside.isEmpty() || column.isEmpty()) return Optional.empty();
    Inputs inputs = Inputs.none().with(WaterToTreat.INSIDE, inside.get()).with(WaterToTreat.COLUMN, column.get());
    return Optional.of(pack.isEmpty() ? inputs : inputs.with(WaterToTreat.PACK, pack.get()));
  }

  Optional<Outcome> outcome() {
    return inputs().flatMap(i -> Outcome.ifReckonable(() -> WaterToTreat.of(i)));
  }

  /** Bleach of a strength. */
  Optional<Outcome> bleach(Quantity strength, Quantity target) {
    return inputs().flatMap(i -> Outcome.ifReckonable(() -> DisinfectionDose.RECKONING.of(
        i.with(DisinfectionEntries.STRENGTH, strength).with(DisinfectionEntries.TARGET, target))));
  }

  /** Dry product of a strength. */
  Optional<Outcome> dry(Quantity strength, Quantity target) {
    return inputs().flatMap(i -> Outcome.ifReckonable(() -> DryChlorineDose.RECKONING.of(
        i.with(DisinfectionEntries.DRY_STRENGTH, strength).with(DisinfectionEntries.TARGET, target))));
  }
}
