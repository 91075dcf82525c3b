package steening.stage;

import java.util.Optional;
import steening.journal.Moment;
import steening.language.Phrase;
import steening.reckoning.Outcome;

/**
 * Something at the well that has its time: a page tells how much of it is left. The report has none of it.
 *
 * @param what runs: {@code the batch stays workable}
 * @param from when it began
 * @param until when it ends
 * @param working where the time comes from
 */
public record Clock(Phrase what, Moment from, Moment until, Optional<Outcome> working) {}
