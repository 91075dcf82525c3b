package steening.stage;

import java.util.Optional;
import steening.language.Phrase;
import steening.language.Shown;
import steening.reckoning.Outcome;

/**
 * One line of the load list.
 *
 * @param what the goods
 * @param howMany with its unit
 * @param working where the number comes from
 */
public record Load(Phrase what, Shown howMany, Optional<Outcome> working) {}
