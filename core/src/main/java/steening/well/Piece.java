package steening.well;

import steening.quantity.Length;

/**
 * One piece of the casing string, in the order it was lowered.
 *
 * @param sort what it is
 * @param laying what it adds to the string: overall length less the bell that the next spigot fills
 * @param entry the id of the entry that measured it
 */
public record Piece(Sort sort, Length laying, String entry) {
  /** The pieces of a string. */
  public enum Sort {
    /** Bottom cap or tail pipe below the screen. */
    SUMP,
    SCREEN,
    JOINT,
    CUT_PIECE
  }
}
