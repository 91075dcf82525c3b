package steening.drawing;

import steening.language.Reader;
import steening.well.Well;

/**
 * The section of a well to scale, as SVG text: the ground as logged, the well in it as far as it is built, the plan as
 * thin dashes. Every part of it appears when something is known of it; of a well of which nothing is known there is the
 * ground line and the depth axis.
 *
 * <p>Parts have ids that stay: {@code stratum-1} from the top down, {@code screen-1} in the order lowered, {@code
 * hole}, {@code plug-1} from the bottom up, {@code casing}, {@code pack}, {@code chips}, {@code
 * grout}, {@code static-level}, {@code pumping-level}, {@code pump}, {@code plan}. The text needs no style sheet, script
 * or font of its own.
 */
public final class Section {
  static final String SPACE = "http://www.w3.org/2000/svg";

  private Section() {}

  /** For a telephone. */
  public static String draw(Well well, Reader reader) {
    return draw(well, reader, Style.PHONE);
  }

  public static String draw(Well well, Reader reader, Style style) {
    AsBuilt built = AsBuilt.of(well);
    Frame usual = Frame.of(style, style.height(), Extent.of(built));
    LogWords all = LogWords.of(built, reader, usual);
    Frame frame = usual.grown(all.height(), Label.heights(PartLabels.of(usual, built, reader)));
    LogWords words = all.within(frame.depthRoom());
    Svg svg = new Svg();
    begin(svg, style, frame.height());
    new Spoken(built, reader).write(svg, style);
    GroundColumn ground = new GroundColumn(svg, frame, built);
    WellColumn column = new WellColumn(svg, frame, built);
    svg.open("defs");
    ground.patterns();
    column.patterns();
    svg.close();
    svg.rect(0, 0, style.width(), frame.height()).with("fill", Ink.PAPER).close();
    ground.draw(reader);
    column.draw(reader);
    DepthAxis.draw(svg, frame, reader);
    words.draw(svg, frame);
    LabelColumn.right(svg, frame, built).draw("labels", PartLabels.of(frame, built, reader));
    ground.surface();
    Legend.draw(svg, frame, built, words, reader);
    svg.close();
    return svg.toString();
  }

  private static void begin(Svg svg, Style style, double height) {
    svg.open("svg").with("xmlns", SPACE).with("viewBox", "0 0 " + Svg.number(style.width()) + " " + Svg.number(height));
    svg.with("width", style.width()).with("height", height).with("role", "img");
    svg.with("aria-labelledby", style.prefix() + "section-title")
        .with("aria-describedby", style.prefix() + "section-words");
    svg.with("font-family", "sans-serif").with("font-size", Lettering.SIZE).with("fill", Ink.INK);
  }
}
