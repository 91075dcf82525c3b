package steening.drawing;

import java.util.ArrayDeque;
import java.util.Deque;
import steening.number.Decimal;

/**
 * SVG text being written: elements are opened, given attributes, filled and closed. Text and attributes are escaped,
 * what XML cannot hold becomes a replacement character, and numbers have at most two decimals, so the same drawing is
 * the same text everywhere.
 */
public final class Svg {
  private static final char REPLACEMENT = '\uFFFD';

  private final StringBuilder out = new StringBuilder(8192);
  private final Deque<String> open = new ArrayDeque<>();
  private boolean inTag;

  /** Begins an element; attributes may follow. */
  public Svg open(String element) {
    endTag();
    out.append('<').append(element);
    open.push(element);
    inTag = true;
    return this;
  }

  /** An attribute of the element just opened. */
  public Svg with(String attribute, String value) {
    if (!inTag) throw new IllegalStateException("no element to give " + attribute + " to");
    out.append(' ').append(attribute).append("=\"");
    escape(value);
    out.append('"');
    return this;
  }

  /**
   * An attribute that is a number.
   *
   * @throws IllegalArgumentException when it is not finite
   */
  public Svg with(String attribute, double value) {
    return with(attribute, number(value));
  }

  /** What stands between the tags. */
  public Svg text(String text) {
    endTag();
    escape(text);
    return this;
  }

  /** Ends the innermost open element. */
  public Svg close() {
    String element = open.pop();
    if (inTag) out.append("/>");
    else out.append("</").append(element).append('>');
    inTag = false;
    return this;
  }

  public Svg rect(double x, double y, double width, double height) {
    return open("rect").with("x", x).with("y", y).with("width", width).with("height", height);
  }

  public Svg circle(double x, double y, double radius) {
    return open("circle").with("cx", x).with("cy", y).with("r", radius);
  }

  /** A path that is drawn as a line and not filled. */
  public Svg line(Path path, String colour, double width) {
    open("path").with("d", path.toString()).with("fill", "none");
    return with("stroke", colour).with("stroke-width", width);
  }

  /** At most two decimals. */
  public static String number(double value) {
    return Decimal.upTo(value, 2);
  }

  /**
   * The whole text.
   *
   * @throws IllegalStateException when an element is still open
   */
  @Override
  public String toString() {
    if (!open.isEmpty()) throw new IllegalStateException("still open: " + open.peek());
    return out.toString();
  }

  private void endTag() {
    if (inTag) out.append('>');
    inTag = false;
  }

  private void escape(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '&') out.append("&amp;");
      else if (c == '<') out.append("&lt;");
      else if (c == '>') out.append("&gt;");
      else if (c == '"') out.append("&quot;");
      else if (c == '\'') out.append("&#39;");
      else if (Character.isHighSurrogate(c) && i + 1 < text.length() && Character.isLowSurrogate(text.charAt(i + 1))) {
        out.append(c).append(text.charAt(++i));
      } else {
        out.append(inXml(c) ? c : REPLACEMENT);
      }
    }
  }

  /** XML 1.0, 2.2 (from memory): no control characters but tab and line ends, no half ones, no U+FFFE or U+FFFF. */
  private static boolean inXml(char c) {
    if (c < ' ') return c == '\t' || c == '\n' || c == '\r';
    return !Character.isSurrogate(c) && c < '\uFFFE';
  }
}
