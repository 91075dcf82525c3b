package steening.stage.seal;

import java.util.List;
import java.util.Optional;
import steening.pipe.Buoyancy;
import steening.quantity.Mass;
import steening.quantity.Volume;
import steening.well.Plan;

/**
 * What goes into one bag's worth of grout.
 *
 * @param solids dry grout in the bag
 * @param water for the bag
 * @param entry the id of the entry that says so; empty where it is the plan's
 */
record Recipe(DryGrout material, Mass solids, Volume water, Optional<String> entry) {
  /** The plan's recipe, which is of bentonite. */
  static Recipe of(Plan plan) {
    return new Recipe(DryGrout.BENTONITE, plan.groutSolids(), plan.groutWater(), Optional.empty());
  }

  /** The room that the grains of so many bags take up. */
  Volume grains(int bags) {
    double density = material.specificGravity() * Buoyancy.WATER.kilogramsPerCubicMetre();
    return new Volume(solids.times(bags).kilograms() / density);
  }

  List<String> entries() {
    return entry.map(List::of).orElse(List.of());
  }
}
