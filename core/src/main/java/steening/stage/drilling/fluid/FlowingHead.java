package steening.stage.drilling.fluid;

import java.util.List;
import java.util.Optional;
import steening.quantity.Length;
import steening.reckoning.Outcome;
import steening.stage.drilling.Drilling;
import steening.well.Flowing;
import steening.well.GroundLog;
import steening.well.Stratum;
import steening.well.Well;

/** The head above ground as last known, and what it asks of the mud. */
final class FlowingHead {
  private FlowingHead() {}

  /** The head as last said; nothing where none was, or where it is not above ground. */
  static Optional<Length> head(Well well) {
    return well.get(Flowing.PART).head().filter(h -> h.isMoreThan(Length.ZERO));
  }

  /** What balances it where the aquifer that was reached is logged. */
  static Optional<Outcome> balance(Well well, Drilling.Mud mud) {
    return head(well).flatMap(h -> aquifer(well, mud.depth()).flatMap(top -> balance(top, h)));
  }

  /** The same, with the bottom of the hole for an aquifer that is not logged yet. */
  static Optional<Outcome> balanceAtLeast(Well well, Drilling.Mud mud) {
    Length top = aquifer(well, mud.depth()).orElse(mud.depth());
    return head(well).flatMap(h -> balance(top, h));
  }

  private static Optional<Outcome> balance(Length top, Length head) {
    return Outcome.ifReckonable(() -> ArtesianBalance.of(top, head));
  }

  /** Top of the lowest water-bearing ground reached; strata that touch are one aquifer. */
  private static Optional<Length> aquifer(Well well, Length depth) {
    List<Stratum> strata = well.get(GroundLog.PART).strata();
    Optional<Length> top = Optional.empty();
    Length bottom = Length.ZERO;
    for (Stratum stratum : strata) {
      if (!stratum.waterBearing() || !stratum.from().isLessThan(depth)) continue;
      boolean touches = top.isPresent() && !stratum.from().isMoreThan(bottom);
      if (!touches) top = Optional.of(stratum.from());
      bottom = bottom.max(stratum.to());
    }
    return top;
  }
}
