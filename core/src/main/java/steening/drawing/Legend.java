package steening.drawing;

import java.util.ArrayList;
import java.util.List;
import steening.language.Phrase;
import steening.language.Reader;
import steening.number.Decimal;
import steening.well.Stratum;

/** The foot of the sheet: the scales and what the marks mean. */
final class Legend {
  private static final double FIRST = 16;
  private static final double APART = 16;
  private static final double SAMPLE = 22;
  private static final Phrase DEPTH = Phrase.of("depth in {0} below ground", "profundidad en {0}");
  private static final Phrase WIDTHS = Phrase.of("width × {0}", "ancho × {0}");
  private static final Phrase ABOVE = Phrase.of("above ground × {0}", "sobre el terreno × {0}");
  private static final Phrase PLANNED = Phrase.of("plan", "plan");
  private static final Phrase WATER = Phrase.of("gives water", "da agua");
  private static final Phrase UNSAID = Phrase.of("{0} thin layers without words", "{0} capas delgadas sin texto");

  private final Svg svg;
  private final double y;
  private double x = Frame.MARGIN;

  private Legend(Svg svg, double y) {
    this.svg = svg;
    this.y = y;
  }

  static void draw(Svg svg, Frame frame, AsBuilt well, LogWords words, Reader reader) {
    svg.open("g").with("id", frame.style().prefix() + "legend").with("fill", Ink.LIGHT);
    new Legend(svg, frame.floor() + FIRST).words(scales(frame, reader));
    Legend marks = new Legend(svg, frame.floor() + FIRST + Lettering.LINE);
    if (well.plan().isMade()) marks.plan(PLANNED.shownTo(reader));
    if (well.log().strata().stream().anyMatch(Stratum::waterBearing)) marks.drop(WATER.shownTo(reader));
    if (words.leftOut() > 0) marks.words(UNSAID.about(Integer.toString(words.leftOut())).shownTo(reader));
    svg.close();
  }

  private static String scales(Frame frame, Reader reader) {
    List<String> scales = new ArrayList<>();
    scales.add(DEPTH.about(Depths.unit(reader)).shownTo(reader));
    scales.add(WIDTHS.about(Decimal.significant(frame.widthTimes(), 2)).shownTo(reader));
    boolean stretched = frame.aboveTimes() > 1.05 && frame.extent().highest().nanometres() > 0;
    if (stretched) scales.add(ABOVE.about(Decimal.significant(frame.aboveTimes(), 2)).shownTo(reader));
    return String.join(" · ", scales);
  }

  private void plan(String words) {
    Path sample = Path.at(x, y - Lettering.BASE).across(x + SAMPLE);
    svg.line(sample, Ink.LIGHT, 1).with("stroke-dasharray", Ink.DASHES).close();
    x += SAMPLE + 5;
    words(words);
  }

  private void drop(String words) {
    WaterMarks.drop(svg, x + 4, y - Lettering.BASE);
    x += 13;
    words(words);
  }

  private void words(String words) {
    svg.open("text").with("x", x).with("y", y).text(words).close();
    x += Lettering.width(words) + APART;
  }
}
