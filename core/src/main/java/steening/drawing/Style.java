package steening.drawing;

/**
 * The sheet a section is drawn on, in units that are pixels on a screen.
 *
 * @param prefix before every id of the drawing, so that several can stand on one page
 * @param width of the whole
 * @param height of the whole, as long as all labels fit
 * @param tallest how far it may grow so that they do
 * @param words width left for the words beside the log
 * @param labels width left for the labels of the well
 */
public record Style(String prefix, double width, double height, double tallest, double words, double labels) {
  /** A telephone held upright. It may be scrolled, so it may grow. */
  public static final Style PHONE = new Style("", 360, 600, 3000, 78, 100);

  /** The width of a printed page. */
  public static final Style PAGE = new Style("", 540, 690, 690, 142, 142);

  public Style {
    if (!(width >= words + labels + 120) || !(height >= 300) || !(tallest >= height)) {
      throw new IllegalArgumentException("too small a sheet for a section");
    }
  }

  /** The same with other ids. */
  public Style named(String other) {
    return new Style(other, width, height, tallest, words, labels);
  }
}
