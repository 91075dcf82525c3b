package steening.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * How wide text is, before anyone has set it. Widths are those of DejaVu Sans, in thousandths of the letter's size:
 * the widest of the usual sans serif faces, so text in another takes less. Measured from the font, not from its
 * maker's table.
 */
final class Lettering {
  /** Letter size of all text but titles, and the distance from one line to the next. */
  static final double SIZE = 11;

  static final double LINE = 13;

  /** From the middle of a line down to the line the letters stand on. */
  static final double BASE = 4;

  static final double BOLDER = 1.12;
  private static final int FIRST = ' ';
  private static final int OTHER = 680;
  private static final int IDEOGRAPH = 1000;
  private static final int[] WIDTHS = {
    318, 401, 460, 838, 636, 950, 780, 275, 390, 390, 500, 838, 318, 361, 318, 337, // space to /
    636, 636, 636, 636, 636, 636, 636, 636, 636, 636, 337, 337, 838, 838, 838, 531, // 0 to ?
    1000, 684, 686, 698, 770, 632, 575, 775, 752, 295, 295, 656, 557, 863, 748, 787, // @ to O
    603, 787, 695, 635, 611, 732, 684, 989, 685, 611, 685, 390, 337, 390, 838, 500, // P to _
    500, 613, 635, 550, 635, 615, 352, 635, 634, 278, 278, 579, 278, 974, 634, 612, // ` to o
    635, 635, 411, 521, 392, 634, 592, 818, 592, 592, 525, 636, 337, 636, 838, // p to ~
  };

  private Lettering() {}

  static double width(String text) {
    return width(text, SIZE);
  }

  static double width(String text, double size) {
    int sum = 0;
    for (int i = 0; i < text.length(); i++) sum += width(text.charAt(i));
    return sum * size / 1000;
  }

  static double boldWidth(String text) {
    return width(text) * BOLDER;
  }

  /** Broken between words into lines of at most a width; a word that is wider alone is cut, and dots show it. */
  static List<String> wrap(String text, double width) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : words(text)) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (!line.isEmpty() && width(longer) > width) {
        lines.add(line);
        longer = word;
      }
      line = cut(longer, width);
    }
    lines.add(line);
    return lines;
  }

  private static List<String> words(String text) {
    List<String> words = new ArrayList<>();
    int begun = 0;
    for (int i = 0; i <= text.length(); i++) {
      if (i < text.length() && text.charAt(i) > ' ') continue;
      if (i > begun) words.add(text.substring(begun, i));
      begun = i + 1;
    }
    return words;
  }

  /** As much of a text as goes on one line. */
  static String cut(String text, double width) {
    if (width(text) <= width) return text;
    int end = text.length();
    while (end > 0 && width(text.substring(0, end) + "…") > width) end--;
    if (end > 0 && Character.isHighSurrogate(text.charAt(end - 1))) end--;
    return text.substring(0, end).trim() + "…";
  }

  private static int width(char c) {
    int index = c - FIRST;
    if (index >= 0 && index < WIDTHS.length) return WIDTHS[index];
    if (c == '–') return 500;
    return c >= '\u2E80' ? IDEOGRAPH : OTHER;
  }
}
