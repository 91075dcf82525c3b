package steening.reckoning;

import steening.language.Phrase;

/**
 * Where a formula or a figure comes from.
 *
 * @param publication its title, section and page, or {@code geometry}, or {@code common practice, no source}
 * @param read whether the publication was read, or the figure is remembered, or follows from the others
 */
public record Source(Phrase publication, Read read) {
  /** How the figure was come by. */
  public enum Read {
    SEEN,
    MEMORY,
    DERIVED
  }

  public static Source seen(String english, String spanish) {
    return new Source(Phrase.of(english, spanish), Read.SEEN);
  }

  public static Source memory(String english, String spanish) {
    return new Source(Phrase.of(english, spanish), Read.MEMORY);
  }

  public static Source derived(String english, String spanish) {
    return new Source(Phrase.of(english, spanish), Read.DERIVED);
  }
}
