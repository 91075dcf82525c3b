package steening.drawing;

/**
 * The colours. Ink on paper; a water blue and an earth tint, each always doubled by a pattern, a shape or a word, so
 * that nothing is lost in black and white. Lines and letters have a contrast of at least 4.5 to 1 on paper and on both
 * tints.
 */
final class Ink {
  static final String PAPER = "#ffffff";
  static final String INK = "#1c1a17";
  static final String LIGHT = "#5d5a54";

  /** Patterns of what is planned; their outline is in light ink. */
  static final String FAINT = "#a29e96";

  static final String WATER = "#1b5a85";
  static final String WATER_TINT = "#dcebf3";
  static final String EARTH_TINT = "#f1e7d8";

  /** Dashes of whatever is planned and not built. */
  static final String DASHES = "4 3";

  private Ink() {}
}
