package steening.stage.drilling;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.bore.Reach;
import steening.quantity.Density;
import steening.quantity.FlowRate;
import steening.quantity.Length;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.well.Part;

/**
 * What only this stage needs of the well: the rig as set up, the rods, the stretches with the entries that say so, the
 * mud.
 *
 * @param rig as last set up
 * @param rods in order of time
 * @param stretches of hole in order of time
 * @param muds readings in order of time
 * @param upsideDown hole and log entries whose lower end is not below the upper one: kept, and asked about
 */
record Drilling(
    Optional<Rig> rig, List<Rod> rods, List<Stretch> stretches, List<Mud> muds, List<UpsideDown> upsideDown) {
  static final Part<Drilling> PART =
      new Part<>("drilling", new Drilling(Optional.empty(), List.of(), List.of(), List.of(), List.of()));

  Drilling {
    rods = List.copyOf(rods);
    stretches = List.copyOf(stretches);
    muds = List.copyOf(muds);
    upsideDown = List.copyOf(upsideDown);
  }

  /** Bit, rods and pump. */
  record Rig(Length bit, Length rod, FlowRate pumpRate, Optional<Quantity> pitArea, String entry) {}

  /** One rod drilled down, and how deep the hole was then. */
  record Rod(int number, Length length, Length depth, String entry) {}

  /**
   * A stretch of hole as one entry gave it.
   *
   * @param known how deep the hole was known to be before this was said
   */
  record Stretch(Reach reach, Length known, String entry) {}

  /**
   * One look at the mud.
   *
   * @param depth how deep the hole was, as far as anything said so
   */
  record Mud(
      Density weight, Optional<Measure> funnel, Optional<Measure> sand, Optional<Length> pitDrop, Length depth,
      String entry) {}

  /** From and to the wrong way round. */
  record UpsideDown(Length from, Length to, String entry) {}

  Drilling with(Rig rig) {
    return new Drilling(Optional.of(rig), rods, stretches, muds, upsideDown);
  }

  Drilling with(Rod rod) {
    return new Drilling(rig, and(rods, rod), stretches, muds, upsideDown);
  }

  Drilling with(Stretch stretch) {
    return new Drilling(rig, rods, and(stretches, stretch), muds, upsideDown);
  }

  Drilling with(Mud mud) {
    return new Drilling(rig, rods, stretches, and(muds, mud), upsideDown);
  }

  Drilling with(UpsideDown mistake) {
    return new Drilling(rig, rods, stretches, muds, and(upsideDown, mistake));
  }

  /** How deep the rods went. */
  Length rodDepth() {
    return rods.stream().map(Rod::depth).max(Length::compareTo).orElse(Length.ZERO);
  }

  /** The stretch entered last; there is one whenever there is a hole. */
  Stretch lastStretch() {
    return stretches.get(stretches.size() - 1);
  }

  private static <T> List<T> and(List<T> list, T one) {
    List<T> more = new ArrayList<>(list);
    more.add(one);
    return more;
  }
}
