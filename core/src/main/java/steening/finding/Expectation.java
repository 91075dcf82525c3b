package steening.finding;

import java.util.Optional;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.reckoning.Outcome;

/**
 * The number to expect, before it is measured.
 *
 * @param what what will be measured: {@code tape after bag 9}
 * @param figure the expected number
 * @param band give or take; absent where no honest band is known
 * @param working the reckoning it comes from
 */
public record Expectation(Phrase what, Figure figure, Optional<Figure> band, Outcome working) {}
