package steening.stage.development;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
record Development(List<Cycle> cycles, List<Sounding> soundings, List<String> adrift) {
  static final Part<Development> PART = Part.ofHole("development", new Development(List.of(), List.of(), List.of()));

  Development {
    cycles = List.copyOf(cycles);
    soundings = List.copyOf(soundings);
    adrift = List.copyOf(adrift);
  }

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
    List<Cycle> more = new ArrayList<>(cycles);
    more.add(cycle);
    return new Development(more, soundings, adrift);
  }

  Development with(Sounding sounding) {
    List<Sounding> more = new ArrayList<>(soundings);
    more.add(sounding);
    return new Development(cycles, more, adrift);
  }

  Development adrift(String entry) {
    List<String> more = new ArrayList<>(adrift);
    more.add(entry);
    return new Development(cycles, soundings, more);
  }

  boolean isBegun() {
    return !cycles.isEmpty() || !soundings.isEmpty() || !adrift.isEmpty();
  }

  /** The cycles that sand was measured in. */
  List<Cycle> withSand() {
    return cycles.stream().filter(c -> c.settled().isPresent()).toList();
  }
}
