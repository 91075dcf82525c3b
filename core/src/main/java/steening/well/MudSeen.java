package steening.well;

import java.util.Optional;
import steening.journal.Moment;
import steening.quantity.Density;

/**
 * The mud in the hole as last weighed, for those who come after it.
 *
 * @param weight by the balance
 */
public record MudSeen(Density weight, Moment at, String entry) {
  /** None until mud was weighed. */
  public static final Part<Optional<MudSeen>> PART = Part.ofHole("mud-seen", Optional.empty());
}
