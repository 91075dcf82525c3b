package steening.well;

import java.util.Optional;
import steening.journal.Moment;

/** The plate on the well: its number, the permit's number where that stands on it too, and when it was put on. */
public record Tag(String number, Optional<String> permit, Moment at, String entry) {
  public static final Part<Optional<Tag>> PART = Part.ofHole("tag", Optional.empty());
}
