/**
 * The idea of a reckoning: a named computation of the trade with declared inputs and answers, its source, the limits it
 * holds in, and its working.
 *
 * <p>A formula is written once, as {@link steening.reckoning.Term}s. From the terms come the value, the formula in
 * symbols and the formula with this well's numbers in it, in US and in metric units.
 */
package steening.reckoning;
