package steening.well;

import java.time.LocalDate;
import java.util.Optional;
import steening.journal.Moment;

/**
 * The well declared complete.
 *
 * @param date the day that the report gives
 * @param driller who answers for it
 * @param licence the number of the driller's licence
 * @param written when it was typed
 */
public record Completion(
    LocalDate date, Optional<String> driller, Optional<String> licence, Moment written, String entry) {
  public static final Part<Optional<Completion>> PART = Part.ofHole("completion", Optional.empty());

  /** Somebody with a licence stands for it. */
  public boolean isSigned() {
    return driller.isPresent() && licence.isPresent();
  }
}
