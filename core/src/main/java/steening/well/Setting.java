package steening.well;

import java.util.Optional;
import steening.journal.Moment;
import steening.quantity.Quantity;

/**
 * Cement grout in the annulus, until it has set enough for the next work: development, a test, the pump.
 *
 * @param placed when the last of it was pumped
 * @param time that it is left alone
 * @param until when that is over
 * @param entry the batch
 */
public record Setting(Moment placed, Quantity time, Moment until, String entry) {
  /** None where no cement was pumped: bentonite grout stiffens, and no rule met gives it hours. */
  public static final Part<Optional<Setting>> PART = Part.ofHole("setting", Optional.empty());

  /** Whether work at this moment comes between the grout and its set. */
  public boolean isDisturbedAt(Moment work) {
    return work.isAfter(placed) && until.isAfter(work);
  }
}
