package steening.well;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.quantity.FlowRate;
import steening.quantity.Length;
import steening.quantity.Quantity;

/** Where drilling mud was lost, in order of time: what goes in there later may be lost or held up there too. */
public record Losses(List<Zone> zones) {
  public static final Part<Losses> PART = Part.ofHole("losses", new Losses(List.of()));

  public Losses {
    zones = List.copyOf(zones);
  }

  /**
   * One stretch that took mud.
   *
   * @param rate of the loss, where it was measured
   * @param share of what the pump gave, where that was told
   * @param tried what was tried against it, by its code; may be empty
   * @param cameBack whether the mud returned in the end; nothing where it was not said
   */
  public record Zone(
      Length from, Length to, Optional<FlowRate> rate, Optional<Quantity> share, String tried,
      Optional<Boolean> cameBack, String entry) {}

  public Losses with(Zone zone) {
    List<Zone> more = new ArrayList<>(zones);
    more.add(zone);
    return new Losses(more);
  }

  /** The zones that share some depth with a stretch, ends included. */
  public List<Zone> between(Length from, Length to) {
    return zones.stream().filter(z -> !z.from().isMoreThan(to) && !z.to().isLessThan(from)).toList();
  }
}
