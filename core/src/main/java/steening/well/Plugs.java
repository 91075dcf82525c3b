package steening.well;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.quantity.Length;

/**
 * How a hole was closed for good.
 *
 * @param plugs in the order they were begun
 * @param misfits entries that cannot be true, kept to be asked about
 */
public record Plugs(Optional<Closing> closing, List<Plug> plugs, List<Misfit> misfits) {
  public static final Part<Plugs> PART =
      Part.ofHole("plugs", new Plugs(Optional.empty(), List.of(), List.of()));

  public Plugs {
    plugs = List.copyOf(plugs);
    misfits = List.copyOf(misfits);
  }

  /** A plug upside down, or for a hole that this job has not. */
  public record Misfit(Length from, Length to, int hole, String entry) {
    public boolean isUpsideDown() {
      return !to.isMoreThan(from);
    }
  }

  public Plugs with(Closing decided) {
    return new Plugs(Optional.of(decided), plugs, misfits);
  }

  public Plugs with(Misfit misfit) {
    List<Misfit> more = new ArrayList<>(misfits);
    more.add(misfit);
    return new Plugs(closing, plugs, more);
  }

  /** One plug more, or a later state of the one at this place. */
  public Plugs with(int place, Plug plug) {
    List<Plug> more = new ArrayList<>(plugs);
    if (place < more.size()) more.set(place, plug);
    else more.add(plug);
    return new Plugs(closing, more, misfits);
  }

  /** Somebody decided to close the hole, or began to. */
  public boolean isBegun() {
    return closing.isPresent() || !plugs.isEmpty();
  }

  /** The plugs from the bottom up. */
  public List<Plug> upward() {
    List<Plug> sorted = new ArrayList<>(plugs);
    sorted.sort((a, b) -> b.to().compareTo(a.to()));
    return sorted;
  }
}
