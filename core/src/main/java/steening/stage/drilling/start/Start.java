package steening.stage.drilling.start;

import java.util.Optional;
import steening.journal.Body;
import steening.journal.Entry;
import steening.quantity.Length;
import steening.quantity.Quantity;
import steening.stage.drilling.Drilling;
import steening.well.GroundLog;
import steening.well.Hole;
import steening.well.Part;
import steening.well.Well;

/** What was looked at and asked before the first foot. */
public record Start(Optional<WalkRound> walk, Optional<Water> water) {
  static final Part<Start> PART = Part.ofHole("start", new Start(Optional.empty(), Optional.empty()));

  /** Overhead lines, as seen on a walk round the rig. */
  record WalkRound(boolean seen, Optional<Length> distance, Optional<Quantity> kilovolts, String entry) {}

  /** The water that the mud is made with. */
  record Water(String source, Optional<Quantity> chlorine, Optional<Quantity> turbidity, String entry) {}

  /** The well after one more entry; as it was, for any other kind. */
  public static Well fold(Well well, Entry entry) {
    Body body = entry.body();
    Start start = well.get(PART);
    return switch (entry.kind()) {
      case "walk-round" -> well.with(PART, new Start(Optional.of(walk(body, entry.id())), start.water()));
      case "make-up-water" -> well.with(PART, new Start(start.walk(), Optional.of(water(body, entry.id()))));
      default -> well;
    };
  }

  /** Whether the first foot is still to be drilled. */
  static boolean isBeforeTheFirstFoot(Well well) {
    Drilling drilling = well.get(Drilling.PART);
    boolean drilled = !drilling.rods().isEmpty() || !drilling.cuttings().isEmpty();
    return !drilled && !well.get(Hole.PART).isBegun() && well.get(GroundLog.PART).strata().isEmpty();
  }

  private static WalkRound walk(Body body, String entry) {
    return new WalkRound(
        StartEntries.LINES.in(body).map(o -> o.code().equals("seen")).orElse(true),
        StartEntries.DISTANCE.length(body), LineClearance.KILOVOLTS.in(body), entry);
  }

  private static Water water(Body body, String entry) {
    return new Water(
        StartEntries.SOURCE.in(body).map(o -> o.code()).orElse(""), StartEntries.CHLORINE.in(body),
        StartEntries.TURBIDITY.in(body), entry);
  }
}
