package steening.drawing;

/** The marks that mean water: the triangle that stands on a level, with ripples under it, and the drop. */
final class WaterMarks {
  private static final double HALF = 5.5;
  private static final double TALL = 9;

  private WaterMarks() {}

  /**
   * A level mark with its tip on a level.
   *
   * @param filled for the level at rest; the pumping level is left open
   */
  static void level(Svg svg, double x, double y, boolean filled) {
    String d = Path.at(x, y).to(x - HALF, y - TALL).across(x + HALF).shut().toString();
    svg.open("path").with("d", d).with("fill", filled ? Ink.WATER : Ink.PAPER);
    svg.with("stroke", Ink.WATER).with("stroke-width", 1.2).with("stroke-linejoin", "round").close();
    Path ripples = Path.at(x - 5, y + 3.2).bend(x - 2.5, y + 1.8, x, y + 3.2).bend(x + 2.5, y + 4.6, x + 5, y + 3.2);
    ripples.move(x - 3, y + 6.2).bend(x - 1.5, y + 5, x, y + 6.2).bend(x + 1.5, y + 7.4, x + 3, y + 6.2);
    svg.line(ripples, Ink.WATER, 1).with("stroke-linecap", "round").close();
  }

  /** A drop with its middle at a point. */
  static void drop(Svg svg, double x, double y) {
    svg.circle(x, y, 5.6).with("fill", Ink.PAPER).close();
    String d = Path.at(x, y - 4.2).bend(x + 3.4, y - 0.2, x + 3, y + 1.6).bend(x + 2.4, y + 3.8, x, y + 3.8)
        .bend(x - 2.4, y + 3.8, x - 3, y + 1.6).bend(x - 3.4, y - 0.2, x, y - 4.2).shut().toString();
    svg.open("path").with("d", d).with("fill", Ink.WATER).close();
  }
}
