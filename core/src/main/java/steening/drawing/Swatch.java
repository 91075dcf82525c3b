package steening.drawing;

import steening.well.Material;

/** A little piece of ground or a little piece of colour, to know a word by. */
public final class Swatch {
  private static final int WIDTH = 44;
  private static final int HEIGHT = 28;
  private static final double EDGE = 1.2;

  private Swatch() {}

  /** The pattern that the section draws a material with. */
  public static String of(Material material) {
    Svg svg = begun();
    Tile tile = GroundPatterns.of(material);
    String id = "swatch-" + material.code();
    tile.define(svg, id, Ink.INK, 0, 0);
    svg.rect(0, 0, WIDTH, HEIGHT).with("fill", tile.tint()).close();
    svg.rect(0, 0, WIDTH, HEIGHT).with("fill", "url(#" + id + ")").with("stroke", Ink.INK).with("stroke-width", EDGE)
        .close();
    return svg.close().toString();
  }

  /** A colour as a screen shows it, which is near enough to tell brown from grey. */
  public static String of(String colour) {
    Svg svg = begun();
    svg.rect(0, 0, WIDTH, HEIGHT).with("fill", colour).with("stroke", Ink.INK).with("stroke-width", EDGE).close();
    return svg.close().toString();
  }

  private static Svg begun() {
    return new Svg().open("svg").with("xmlns", "http://www.w3.org/2000/svg").with("width", WIDTH).with("height", HEIGHT)
        .with("viewBox", "0 0 " + WIDTH + " " + HEIGHT).with("aria-hidden", "true").with("class", "swatch");
  }
}
