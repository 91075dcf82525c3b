package steening.stage.casing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.quantity.Length;
import steening.quantity.Quantity;
import steening.well.Part;

/**
 * What only this stage needs of the string: the joints by number, the screens' openings, the count on the truck, the
 * cuts.
 *
 * @param joints in the order they were lowered
 * @param openings of the screens, in the order they were lowered
 * @param setting how the string was set, once it is
 * @param late ids of pieces that were entered after the string was set
 * @param cuts stick-ups after each cut of the top, with the entry
 */
public record Tally(
    List<Joint> joints, List<Opening> openings, Optional<Setting> setting, List<String> late, List<Cut> cuts) {
  public static final Part<Tally> PART =
      Part.ofHole("tally", new Tally(List.of(), List.of(), Optional.empty(), List.of(), List.of()));

  public Tally {
    joints = List.copyOf(joints);
    openings = List.copyOf(openings);
    late = List.copyOf(late);
    cuts = List.copyOf(cuts);
  }

  /** One joint as measured. */
  public record Joint(int number, Length overall, Length bell, String entry) {}

  /** How one screen lets water in. */
  public record Opening(Length slot, Optional<Quantity> openArea, String entry) {}

  /** The stick-up it was set with, and the two counts of the truck. */
  public record Setting(Length stickUp, Optional<Integer> loaded, Optional<Integer> left, String entry) {}

  /** A cut of the top. */
  public record Cut(Length stickUp, String entry) {}

  Tally with(Joint joint) {
    return new Tally(and(joints, joint), openings, setting, late, cuts);
  }

  Tally with(Opening opening) {
    return new Tally(joints, and(openings, opening), setting, late, cuts);
  }

  Tally with(Setting setting) {
    return new Tally(joints, openings, Optional.of(setting), late, cuts);
  }

  Tally with(Cut cut) {
    return new Tally(joints, openings, setting, late, and(cuts, cut));
  }

  Tally late(String entry) {
    return new Tally(joints, openings, setting, and(late, entry), cuts);
  }

  private static <T> List<T> and(List<T> list, T one) {
    List<T> more = new ArrayList<>(list);
    more.add(one);
    return more;
  }
}
