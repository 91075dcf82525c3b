package steening.well;

import java.util.Optional;
import steening.journal.Dates;
import steening.journal.Moment;
import steening.quantity.Quantity;

/**
 * The cemented joints of the casing, until they may be loaded: by blows, air or grout.
 *
 * @param joined when the last of them was made
 * @param time that they take to cure
 * @param until when they are cured
 */
public record Cure(Moment joined, Quantity time, Moment until) {
  /** None where nothing is cemented, or it is not known how long it takes. */
  public static final Part<Optional<Cure>> PART = Part.ofHole("cure", Optional.empty());

  /** The clock when they are cured; with the date, where that is another day. */
  public String clock() {
    boolean sameDay = until.date().equals(joined.date());
    return (sameDay ? "" : Dates.format(until.date()) + " ") + until.clock();
  }
}
