package steening.stage.development;

import java.util.List;
import java.util.Optional;
import org.pcollections.PVector;
import org.pcollections.TreePVector;
import steening.field.ChoiceField;
import steening.journal.Moment;
import steening.quantity.FlowRate;
import steening.quantity.Length;
import steening.quantity.Quantity;
import steening.well.Part;
import steening.well.Sounding;

/**
 * The development of a well, in order of time.
 *
 * @param soundings of the top of the pack
 * @param adrift ids of entries with a reading from the top of casing, made before its stick-up was known
 */
record Development(PVector<Cycle> cycles, PVector<Sounding> soundings, PVector<String> adrift) {
  static final Part<Development> PART = Part.ofHole(
      "development", new Development(TreePVector.empty(), TreePVector.empty(), TreePVector.empty()));

  /**
   * One cycle.
   *
   * @param minutes how long it took
   * @param level pumping water level below ground
   * @param settled sand that settled from {@code water}
   */
  record Cycle(
      Optional<ChoiceField.Option> method,
      Optional<Quantity> minutes,
      Optional<FlowRate> rate,
      Optional<Length> level,
      Optional<Quantity> turbidity,
      Optional<Quantity> settled,
      Quantity water,
      Moment at,
      String entry) {}

  Development with(Cycle cycle) {
    return new Development(cycles.plus(cycle), soundings, adrift);
  }

  Development with(Sounding sounding) {
    return new Development(cycles, soundings.plus(sounding), adrift);
  }

  Development adrift(String entry) {
    return new Development(cycles, soundings, adrift.plus(entry));
  }

  boolean isBegun() {
    return !cycles.isEmpty() || !soundings.isEmpty() || !adrift.isEmpty();
  }

  /** The cycles that sand was measured in. */
  List<Cycle> withSand() {
    return cycles.stream().filter(c -> c.settled().isPresent()).toList();
  }
}
