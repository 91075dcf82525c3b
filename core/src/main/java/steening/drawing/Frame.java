package steening.drawing;

import steening.bore.Reach;
import steening.number.Elementary;
import steening.quantity.Length;

/**
 * Where things stand on the sheet. From left to right: the depth axis, the words of the log, the ground with the well
 * in its middle, the plan beside it, the labels. Depth is to scale; so is width, on a larger scale of its own; so is
 * height above ground, on a third where it would be too small to see.
 *
 * @param extent what has room on it
 * @param surface y of the ground
 * @param floor y where the ground ends
 * @param down units per metre of depth
 * @param up units per metre above ground
 * @param across units per metre of width
 */
record Frame(Style style, Extent extent, double surface, double floor, double down, double up, double across) {
  static final double AXIS = 36;
  static final double MARGIN = 3;
  private static final double WORDS = AXIS + 7;
  private static final double HEAD = 22;
  private static final double LEAST_ABOVE = 22;
  private static final double GRASS = 8;
  private static final double UNDER_WELL = 14;
  private static final double FOOT = 36;
  private static final double LEADERS = 10;
  private static final double LANE = 8;

  /** How much of the ground's breadth the widest hole may take. */
  private static final double BREADTH = 0.62;

  private static final double[] ROUND = {1, 1.2, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10};

  /** A frame of a given height in which all that is known has room. */
  static Frame of(Style style, double height, Extent extent) {
    double deepest = extent.deepest().coherent();
    double above = extent.highest().coherent();
    double room = height - HEAD - UNDER_WELL - FOOT;
    double even = room / (deepest + above);
    double times = even * above >= LEAST_ABOVE || above == 0 ? 1 : roundUp(LEAST_ABOVE / above / even);
    double grass = above > 0 ? 0 : GRASS;
    double down = (room - grass) / (above * times + deepest);
    double up = down * times;
    double surface = HEAD + grass + above * up;
    double widest = extent.widest().coherent();
    double ground = right(style) - left(style);
    double across = roundDown(ground * BREADTH / widest / down) * down;
    return new Frame(style, extent, surface, height - FOOT, down, up, across);
  }

  /** The largest round number that is not more: 1, 1.2, 1.5, 2 and so on times a power of ten. */
  private static double roundDown(double times) {
    double power = Elementary.pow(10, Math.floor(Elementary.log10(times)));
    double rounded = power;
    for (double step : ROUND) if (step * power <= times * (1 + 1e-9)) rounded = step * power;
    return rounded;
  }

  /** The smallest round number that is not less. */
  private static double roundUp(double times) {
    double power = Elementary.pow(10, Math.floor(Elementary.log10(times)));
    for (double step : ROUND) if (step * power >= times * (1 - 1e-9)) return step * power;
    return 10 * power;
  }

  /** The same, grown as far as the style lets it, so that the words of the log and the labels of the well have room. */
  Frame grown(double words, double labels) {
    Frame frame = this;
    double lack = frame.lack(words, labels);
    while (lack > 0 && frame.height() < style.tallest()) {
      frame = of(style, Math.min(style.tallest(), frame.height() + lack * 1.5 + 1), extent);
      lack = frame.lack(words, labels);
    }
    return frame;
  }

  private double lack(double words, double labels) {
    return Math.max(words - depthRoom(), labels - (floor - MARGIN));
  }

  /** From the ground surface down. */
  double depthRoom() {
    return floor - surface;
  }

  /** Of the whole sheet. */
  double height() {
    return floor + FOOT;
  }

  double y(Length depth) {
    double metres = depth.coherent();
    return metres * (metres < 0 ? up : down) + surface;
  }

  /** Half of a diameter. */
  double half(Length diameter) {
    return diameter.coherent() * across / 2;
  }

  double half(Reach reach) {
    return half(reach.diameter());
  }

  double left() {
    return left(style);
  }

  double right() {
    return right(style);
  }

  double middle() {
    return (left() + right()) / 2;
  }

  /** Right edge of the words beside the log. */
  double wordsEnd() {
    return left() - LEADERS;
  }

  /** Where leaders turn from the well towards their labels. */
  double leaders() {
    return labels() - LEADERS;
  }

  /** The plan beside the well: the middle of its lane. */
  double lane() {
    return right() + LANE;
  }

  /** Left edge of the labels. */
  double labels() {
    return labels(style);
  }

  /** Widths are drawn so many times as large as depths. */
  double widthTimes() {
    return across / down;
  }

  double aboveTimes() {
    return up / down;
  }

  /** Left edge of the ground. */
  static double left(Style style) {
    return WORDS + style.words() + LEADERS;
  }

  private static double right(Style style) {
    return labels(style) - LEADERS - 2 * LANE;
  }

  private static double labels(Style style) {
    return style.width() - style.labels() - MARGIN;
  }
}
