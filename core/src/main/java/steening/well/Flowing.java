package steening.well;

import java.util.List;
import java.util.Optional;
import steening.quantity.FlowRate;
import steening.quantity.Length;
import steening.quantity.Unit;

/**
 * What is known of an aquifer whose head stands above ground.
 *
 * @param rate of the flow at the surface
 * @param head above ground
 * @param entries that say so
 */
public record Flowing(Optional<FlowRate> rate, Optional<Length> head, List<String> entries) {
  public static final Part<Flowing> PART =
      Part.ofHole("flowing", new Flowing(Optional.empty(), Optional.empty(), List.of()));

  /** Up to so much, and a head of 10 psi, a flowing well is grouted simply: Minnesota Rules 4725.3450 (seen). */
  public static final FlowRate SIMPLE_RATE = FlowRate.of(70, Unit.GALLON_PER_MINUTE);

  /** 10 psi of water; the same rule. */
  public static final Length SIMPLE_HEAD = Length.feet(23);

  public Flowing {
    entries = List.copyOf(entries);
  }

  public boolean isFlowing() {
    return rate.isPresent() || head.filter(h -> h.isMoreThan(Length.ZERO)).isPresent();
  }

  /** Whether simple grouting is enough, by what is known. */
  public boolean isSimple() {
    boolean gentle = rate.filter(r -> r.coherent() > SIMPLE_RATE.coherent()).isEmpty();
    return gentle && head.filter(h -> h.isMoreThan(SIMPLE_HEAD)).isEmpty();
  }
}
