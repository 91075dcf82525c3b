package steening.stage.seal;

import java.util.Optional;
import steening.journal.Moment;
import steening.quantity.Density;
import steening.quantity.Quantity;
import steening.quantity.Volume;

/**
 * Grout mixed and pumped at one go.
 *
 * @param water in all of it, by the meter
 * @param weighed by the balance
 * @param returned whether it came back at the surface, where somebody said so
 * @param temperature of the mix
 * @param returnWeight of what came back, by the balance
 */
record Batch(
    Recipe recipe, int bags, Volume water, Optional<Density> weighed, Optional<Boolean> returned,
    Optional<Density> returnWeight, Optional<Quantity> temperature, Moment at, String entry) {
  Volume volume() {
    return recipe.grains(bags).plus(water);
  }
}
