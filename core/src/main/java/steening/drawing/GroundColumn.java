package steening.drawing;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import steening.language.Phrase;
import steening.language.Reader;
import steening.quantity.Length;
import steening.well.Material;
import steening.well.Plan;
import steening.well.Stratum;

/** The ground on both sides of the well, as the driller logged it, under a line of grass. */
final class GroundColumn {
  private static final String PATTERN = "pattern-";
  private static final double CONTACT = 0.9;
  private static final double SURFACE = 1.8;
  private static final double TUFTS_APART = 13;
  private static final Phrase GIVES_WATER = Phrase.of("gives water", "da agua");

  private final Svg svg;
  private final Frame frame;
  private final AsBuilt well;
  private final String prefix;

  GroundColumn(Svg svg, Frame frame, AsBuilt well) {
    this.svg = svg;
    this.frame = frame;
    this.well = well;
    this.prefix = frame.style().prefix();
  }

  /** The patterns of what is in the log. */
  void patterns() {
    Set<Material> materials = EnumSet.noneOf(Material.class);
    for (Stratum stratum : well.log().strata()) materials.add(stratum.material());
    for (Material material : materials) {
      String id = prefix + PATTERN + material.code();
      GroundPatterns.of(material).define(svg, id, Ink.INK, frame.left(), frame.surface());
    }
  }

  void draw(Reader reader) {
    svg.open("g").with("id", prefix + "log");
    List<Stratum> strata = well.log().strata();
    for (int i = 0; i < strata.size(); i++) stratum(strata.get(i), i + 1, reader);
    svg.close();
  }

  private void stratum(Stratum stratum, int number, Reader reader) {
    double top = frame.y(stratum.from().min(stratum.to()));
    double bottom = frame.y(stratum.to().max(stratum.from()));
    double width = frame.right() - frame.left();
    String fill = "url(#" + prefix + PATTERN + stratum.material().code() + ")";
    svg.open("g").with("id", prefix + "stratum-" + number);
    svg.open("title").text(words(stratum, reader)).close();
    svg.rect(frame.left(), top, width, bottom - top).with("fill", GroundPatterns.of(stratum.material()).tint()).close();
    svg.rect(frame.left(), top, width, bottom - top).with("fill", fill).close();
    for (Length depth : List.of(stratum.from(), stratum.to())) {
      double y = frame.y(depth);
      Path contact = Path.at(frame.left(), y).across(frame.right());
      if (depth.isMoreThan(Length.ZERO)) svg.line(contact, Ink.INK, CONTACT).close();
    }
    if (stratum.waterBearing()) WaterMarks.drop(svg, frame.left() + 8, (top + bottom) / 2);
    svg.close();
  }

  /** One interval in a sentence. */
  static String words(Stratum stratum, Reader reader) {
    String words = Depths.range(stratum.from(), stratum.to(), reader) + " " + Depths.unit(reader) + ": "
        + stratum.material().label().shownTo(reader);
    if (!stratum.looks().isEmpty()) words += ", " + stratum.looks().shownTo(reader);
    return stratum.waterBearing() ? words + ", " + GIVES_WATER.shownTo(reader) : words;
  }

  /** The line of the ground, open where the hole is. */
  void surface() {
    double y = frame.surface();
    Optional<Length> hole = well.hole().diameterBelow(Length.ZERO).or(() -> well.plan().length(Plan.HOLE));
    double half = hole.map(frame::half).orElse(0.0);
    svg.open("g").with("id", prefix + "ground");
    Path line = Path.at(Frame.AXIS, y).across(frame.middle() - half);
    line.move(frame.middle() + half, y).across(frame.right());
    svg.line(line, Ink.INK, SURFACE).close();
    Path grass = Path.at(Frame.AXIS + 4, y);
    boolean tall = false;
    for (double x = Frame.AXIS + 6; x < frame.right() - 4; x += TUFTS_APART) {
      if (Math.abs(x - frame.middle()) > half + (half > 0 ? 5 : 0)) tuft(grass, x, y, tall ? 6 : 4.5);
      tall = !tall;
    }
    svg.line(grass, Ink.INK, 0.9).with("stroke-linecap", "round").close();
    svg.close();
  }

  private static void tuft(Path grass, double x, double y, double height) {
    grass.move(x, y).bend(x - 0.5, y - height * 0.6, x - 2.5, y - height * 0.8);
    grass.move(x + 0.6, y).bend(x + 0.6, y - height * 0.6, x + 1, y - height);
    grass.move(x + 1.2, y).bend(x + 2, y - height * 0.5, x + 4, y - height * 0.7);
  }
}
