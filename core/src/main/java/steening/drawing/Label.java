package steening.drawing;

import java.util.List;
import steening.quantity.Length;

/**
 * Words at a depth.
 *
 * @param at the depth they speak of
 * @param anchor x of what they speak of
 * @param lines what they say, broken to the width there is
 * @param bold how many letters of the first line stand out
 * @param asides lines under them, in light ink
 * @param colour of the lines
 * @param planned not built yet
 */
record Label(
    Length at, double anchor, List<String> lines, int bold, List<String> asides, String colour, boolean planned) {
  /** Between one label and the next. */
  private static final double GAP = 3;

  Label {
    lines = List.copyOf(lines);
    asides = List.copyOf(asides);
  }

  /** A number and words. */
  static Label of(Length at, double anchor, String number, String words, String colour, double width) {
    // The number is bold and takes more room; it is never broken.
    double heavier = Lettering.boldWidth(number) - Lettering.width(number);
    List<String> lines = Lettering.wrap(number + " " + words, width - heavier);
    return new Label(at, anchor, lines, Math.min(number.length(), lines.get(0).length()), List.of(), colour, false);
  }

  Label aside(String words, double width) {
    return new Label(at, anchor, lines, bold, Lettering.wrap(words, width), colour, planned);
  }

  /** The same as something that is yet to come. */
  Label asPlan() {
    return new Label(at, anchor, lines, 0, asides, Ink.LIGHT, true);
  }

  /** The height of labels one under the other. */
  static double heights(List<Label> labels) {
    double sum = 0;
    for (Label label : labels) sum += label.height();
    return sum;
  }

  double height() {
    return (lines.size() + asides.size()) * Lettering.LINE + GAP;
  }
}
