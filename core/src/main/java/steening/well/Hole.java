package steening.well;

import java.util.Optional;
import steening.bore.Bore;
import steening.bore.Reach;
import steening.journal.Moment;
import steening.quantity.Length;

/**
 * The hole as drilled.
 *
 * @param bore what is open, by depth below ground
 * @param begun when the first foot was drilled
 */
public record Hole(Bore bore, Optional<Moment> begun) {
  public static final Part<Hole> PART = Part.ofHole("hole", new Hole(Bore.NONE, Optional.empty()));

  public Hole drilled(Length from, Length to, Length diameter, Moment at) {
    return new Hole(bore.with(new Reach(from, to, diameter)), begun.isPresent() ? begun : Optional.of(at));
  }

  public Length depth() {
    return bore.bottom();
  }

  public boolean isBegun() {
    return !bore.isEmpty();
  }
}
