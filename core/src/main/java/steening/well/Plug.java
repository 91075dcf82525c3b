package steening.well;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.quantity.Length;
import steening.quantity.Quantity;
import steening.quantity.Volume;

/**
 * A stretch of hole filled with one material, from the bottom up, in one lot or several.
 *
 * @param from the upper end as intended, below ground
 * @param to the lower end
 * @param fill the lots and the soundings between them
 * @param ways how each lot went in, lot by lot
 */
public record Plug(Length from, Length to, PlugMaterial material, Fill fill, List<Way> ways) {
  public Plug {
    ways = List.copyOf(ways);
  }

  /**
   * How one lot went in.
   *
   * @param water mixed in, in all of it
   * @param tremie whether it went through a pipe to the bottom; empty where nobody said
   * @param minutes that it took
   */
  public record Way(
      int bags, Optional<Volume> water, Optional<Boolean> tremie, Optional<Quantity> minutes, String entry) {}

  /** One lot more; the highest of the upper ends that were meant holds. */
  public Plug with(Length meant, Fill.Pour pour, Way way) {
    List<Way> more = new ArrayList<>(ways);
    more.add(way);
    return new Plug(from.min(meant), to, material, fill.with(pour), more);
  }

  public Plug with(Sounding sounding) {
    return new Plug(from, to, material, fill.with(sounding), ways);
  }

  /** Its top: as sounded after the last lot, else as it was meant. */
  public Length top() {
    return fill.bagsSinceTag() == 0 ? fill.top().orElse(from) : from;
  }

  /** Entries that it rests on. */
  public List<String> entries() {
    List<String> entries = new ArrayList<>();
    for (Way way : ways) entries.add(way.entry());
    fill.lastTag().ifPresent(tag -> entries.add(tag.entry()));
    return entries;
  }
}
