package steening.well;

import java.util.Optional;
import steening.journal.Moment;
import steening.language.Phrase;
import steening.quantity.Length;
import steening.quantity.Quantity;

/**
 * The decision to close a hole for good, and the state it was found in.
 *
 * @param pipe what was done with the casing
 * @param cut how far below ground the casing was cut
 * @param inside diameter of a casing that stays
 * @param level of the water at rest, below ground
 * @param obstruction depth below which nothing can be filled
 * @param chlorine in the water before the plugs
 */
public record Closing(
    Phrase why, Casing pipe, Optional<Length> cut, Optional<Length> inside, Optional<Length> level,
    Optional<Length> obstruction, Optional<Quantity> chlorine, Moment at, String entry) {

  /** What becomes of the casing. */
  public enum Casing {
    NONE("none", "there is none", "no hay"),
    REMOVED("removed", "pulled out", "extraído"),
    LEFT("left", "stays in the ground", "queda en el terreno");

    private final String code;
    private final Phrase label;

    Casing(String code, String english, String spanish) {
      this.code = code;
      this.label = Phrase.of(english, spanish);
    }

    public String code() {
      return code;
    }

    public Phrase label() {
      return label;
    }
  }
}
