package steening.stage.drilling;

import java.util.Optional;
import org.pcollections.PVector;
import org.pcollections.TreePVector;
import steening.bore.Reach;
import steening.journal.Moment;
import steening.quantity.Density;
import steening.quantity.FlowRate;
import steening.quantity.Length;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.well.Part;

/**
 * What only this stage needs of the well: the rig as set up, the rods, the stretches with the entries that say so, the
 * mud, the cuttings.
 *
 * @param rig as last set up
 * @param rods in order of time
 * @param stretches of hole in order of time
 * @param muds readings in order of time
 * @param cuttings caught, in order of time
 * @param upsideDown hole and log entries whose lower end is not below the upper one: kept, and asked about
 */
public record Drilling(
    Optional<Rig> rig, PVector<Rod> rods, PVector<Stretch> stretches, PVector<Mud> muds, PVector<Cuttings> cuttings,
    PVector<UpsideDown> upsideDown) {
  public static final Part<Drilling> PART =
      Part.ofHole("drilling", new Drilling(
          Optional.empty(), TreePVector.empty(), TreePVector.empty(), TreePVector.empty(), TreePVector.empty(),
          TreePVector.empty()));

  /**
   * Bit, rods and pump.
   *
   * @param below length of bit and subs, where the bit was measured
   */
  public record Rig(
      Length bit, Length rod, FlowRate pumpRate, Optional<Quantity> pitArea, Optional<Length> pitDepth,
      Optional<Length> below, String entry) {}

  /** One rod drilled down, and how deep the hole was then. */
  public record Rod(int number, Length length, Length depth, Moment at, String entry) {}

  /**
   * A stretch of hole as one entry gave it.
   *
   * @param known how deep the hole was known to be before this was said
   */
  public record Stretch(Reach reach, Length known, String entry) {}

  /**
   * One look at the mud.
   *
   * @param flows whether the well flows with the pump off, where somebody looked
   * @param head of the aquifer, above ground
   * @param depth how deep the hole was, as far as anything said so
   */
  public record Mud(
      Density weight, Optional<Measure> funnel, Optional<Measure> sand, Optional<Length> pitDrop,
      Optional<Length> pitRise, Optional<Boolean> flows, Optional<Length> head, Length depth, Moment at, String entry) {

    /** How far the pit rose; a fall below nothing is a rise. */
    public Length rise() {
      return pitRise.orElse(Length.ZERO).max(Length.ZERO.minus(pitDrop.orElse(Length.ZERO)));
    }
  }

  /**
   * Cuttings caught at the surface.
   *
   * @param size of the coarsest of them
   * @param rig that drilled then
   * @param mud as last read before
   */
  public record Cuttings(
      Length bitDepth, Optional<Quantity> penetration, Optional<Quantity> size, Optional<Rig> rig, Optional<Mud> mud,
      String description, String entry) {}

  /** From and to the wrong way round. */
  public record UpsideDown(Length from, Length to, String entry) {}

  public Drilling with(Rig rig) {
    return new Drilling(Optional.of(rig), rods, stretches, muds, cuttings, upsideDown);
  }

  public Drilling with(Rod rod) {
    return new Drilling(rig, rods.plus(rod), stretches, muds, cuttings, upsideDown);
  }

  public Drilling with(Stretch stretch) {
    return new Drilling(rig, rods, stretches.plus(stretch), muds, cuttings, upsideDown);
  }

  public Drilling with(Mud mud) {
    return new Drilling(rig, rods, stretches, muds.plus(mud), cuttings, upsideDown);
  }

  public Drilling with(Cuttings caught) {
    return new Drilling(rig, rods, stretches, muds, cuttings.plus(caught), upsideDown);
  }

  public Drilling with(UpsideDown mistake) {
    return new Drilling(rig, rods, stretches, muds, cuttings, upsideDown.plus(mistake));
  }

  /** How deep the rods went. */
  public Length rodDepth() {
    return rods.stream().map(Rod::depth).max(Length::compareTo).orElse(Length.ZERO);
  }

  /** The stretch entered last; there is one whenever there is a hole. */
  public Stretch lastStretch() {
    return stretches.get(stretches.size() - 1);
  }
}
