/**
 * The strength and the weight of plastic well casing: what it bears before it collapses, and whether it floats. Both
 * the room that lowers the casing and the room that grouts it ask this, and rooms do not know each other, so it lives
 * here.
 */
package steening.pipe;
