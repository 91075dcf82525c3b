package steening.well;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.journal.Moment;
import steening.quantity.Length;
import steening.quantity.Volume;

/**
 * What was put into the annulus from the bottom up: filter pack, chips or grout; poured in lots and sounded in between.
 *
 * @param pours in order of time
 * @param tags soundings of its top, in order of time
 * @param aside soundings whose depth below ground is not known
 */
public record Fill(List<Pour> pours, List<Tag> tags, List<Sounding> aside) {
  /** Before the first lot. */
  public static final Fill NOTHING = new Fill(List.of(), List.of(), List.of());

  /** The sand around the screen. */
  public static final Part<Fill> PACK = Part.ofHole("pack", NOTHING);

  /** The seal of chips or pellets on the pack. */
  public static final Part<Fill> CHIPS = Part.ofHole("chips", NOTHING);

  /** The grout up to the surface. */
  public static final Part<Fill> GROUT = Part.ofHole("grout", NOTHING);

  public Fill {
    pours = List.copyOf(pours);
    tags = List.copyOf(tags);
    aside = List.copyOf(aside);
  }

  /** One lot: so many bags, at least one, which fill so much. */
  public record Pour(int bags, Volume volume, Moment at, String entry) {
    /** What one of them fills. */
    public Volume bag() {
      return volume.times(1.0 / bags);
    }
  }

  /**
   * One sounding.
   *
   * @param depth of the top, below ground
   * @param from the point it was read from
   * @param poured what had been put in before it
   * @param bags how many bags that was
   */
  public record Tag(Length depth, DepthFrom from, Volume poured, int bags, Moment at, String entry) {}

  public Fill with(Pour pour) {
    List<Pour> more = new ArrayList<>(pours);
    more.add(pour);
    return new Fill(more, tags, aside);
  }

  /** Sounded now, after all that was poured so far. */
  public Fill with(Sounding sounding) {
    if (sounding.depth().isPresent()) {
      return tagged(sounding.depth().get(), sounding.from(), sounding.at(), sounding.entry());
    }
    List<Sounding> more = new ArrayList<>(aside);
    more.add(sounding);
    return new Fill(pours, tags, more);
  }

  /** The same with a depth below ground at hand. */
  public Fill tagged(Length depth, DepthFrom from, Moment at, String entry) {
    List<Tag> more = new ArrayList<>(tags);
    more.add(new Tag(depth, from, volume(), bags(), at, entry));
    return new Fill(pours, more, aside);
  }

  public Volume volume() {
    return pours.stream().map(Pour::volume).reduce(Volume.NONE, Volume::plus);
  }

  public int bags() {
    return pours.stream().mapToInt(Pour::bags).sum();
  }

  public boolean isBegun() {
    return !pours.isEmpty();
  }

  public Optional<Tag> lastTag() {
    return tags.isEmpty() ? Optional.empty() : Optional.of(tags.get(tags.size() - 1));
  }

  /** The top as last sounded. */
  public Optional<Length> top() {
    return lastTag().map(Tag::depth);
  }

  /** How many bags went in since the top was last sounded. */
  public int bagsSinceTag() {
    return bags() - lastTag().map(Tag::bags).orElse(0);
  }
}
