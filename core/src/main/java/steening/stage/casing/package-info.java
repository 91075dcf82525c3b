/**
 * Lowering the casing: the tally, where the string and its screen will stand, whether it will bear what presses on it.
 */
package steening.stage.casing;
