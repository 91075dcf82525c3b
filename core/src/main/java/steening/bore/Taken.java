package steening.bore;

import steening.quantity.Length;
import steening.reckoning.Term;

/**
 * A stretch of the annulus that was filled and sounded.
 *
 * @param top where the tape found what went in
 * @param bottom where it was put in from
 * @param sounded whether the bottom was found by a tape too
 * @param placed what went in
 */
public record Taken(Annulus annulus, Length top, Length bottom, boolean sounded, Term placed) {}
