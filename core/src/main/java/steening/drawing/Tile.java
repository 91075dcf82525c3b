package steening.drawing;

/**
 * One tile of a pattern: lines, pebbles and grains on a ground. Grains are given by pairs of numbers in half units from
 * the tile's upper left corner.
 *
 * @param tint the colour under the pattern
 */
record Tile(double width, double height, String tint, double grain, String lines, String grains) {
  private static final double LINE = 0.9;

  static Tile of(double width, double height) {
    return new Tile(width, height, Ink.PAPER, 0, "", "");
  }

  /** For ground that holds water back. */
  Tile onEarth() {
    return new Tile(width, height, Ink.EARTH_TINT, grain, lines, grains);
  }

  Tile lines(String path) {
    return new Tile(width, height, tint, grain, lines + path, grains);
  }

  Tile grains(double size, int... halves) {
    StringBuilder path = new StringBuilder(grains);
    // A round line end makes the grain; a line of no length at all would be left out by some renderers.
    for (int i = 0; i + 1 < halves.length; i += 2) {
      path.append(Path.at(halves[i] / 2.0, halves[i + 1] / 2.0)).append("h.01");
    }
    return new Tile(width, height, tint, size, lines, path.toString());
  }

  /** A stone with its middle, half its width and half its height. */
  Tile pebble(double x, double y, double across, double up) {
    String arc = "a" + Svg.number(across) + " " + Svg.number(up) + " 0 1 0 ";
    String width = Svg.number(2 * across);
    return lines("M" + Svg.number(x - across) + " " + Svg.number(y) + arc + width + " 0" + arc + "-" + width + " 0Z");
  }

  /** Writes the pattern, without its ground, under an id; the first tile has its upper left corner at a point. */
  void define(Svg svg, String id, String colour, double x, double y) {
    svg.open("pattern").with("id", id).with("patternUnits", "userSpaceOnUse").with("width", width)
        .with("height", height);
    // Moved by a transform: with x and y the pattern comes out empty in a PDF.
    svg.with("patternTransform", "translate(" + Svg.number(x) + " " + Svg.number(y) + ")");
    if (!lines.isEmpty()) {
      svg.open("path").with("d", lines).with("fill", "none").with("stroke", colour).with("stroke-width", LINE).close();
    }
    if (!grains.isEmpty()) {
      svg.open("path").with("d", grains).with("fill", "none").with("stroke", colour).with("stroke-width", grain)
          .with("stroke-linecap", "round").close();
    }
    svg.close();
  }
}
