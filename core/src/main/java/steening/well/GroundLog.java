package steening.well;

import java.util.ArrayList;
import java.util.List;
import steening.quantity.Length;

/** The driller's log: intervals from the top down. Gaps and overlaps are kept as they were logged. */
public record GroundLog(List<Stratum> strata) {
  public static final Part<GroundLog> PART = Part.ofHole("log", new GroundLog(List.of()));

  public GroundLog {
    List<Stratum> sorted = new ArrayList<>(strata);
    sorted.sort((a, b) -> a.from().equals(b.from()) ? a.to().compareTo(b.to()) : a.from().compareTo(b.from()));
    strata = List.copyOf(sorted);
  }

  public GroundLog with(Stratum stratum) {
    List<Stratum> more = new ArrayList<>(strata);
    more.add(stratum);
    return new GroundLog(more);
  }

  public Length bottom() {
    return strata.stream().map(Stratum::to).max(Length::compareTo).orElse(Length.ZERO);
  }

  /** The intervals that share some depth with a stretch. */
  public List<Stratum> between(Length from, Length to) {
    return strata.stream().filter(s -> s.from().isLessThan(to) && s.to().isMoreThan(from)).toList();
  }
}
