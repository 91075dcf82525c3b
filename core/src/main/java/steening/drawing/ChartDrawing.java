package steening.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import steening.language.Phrase;
import steening.language.Reader;

/**
 * A chart as SVG text: even or logarithmic axes, round numbers, the lines of 2 to 9 in every decade; points that the
 * fitted line rests on are filled, the others open; without a line all are filled. A point that an axis has no place
 * for, a time of zero on a logarithmic axis, is left out and said to be.
 */
public final class ChartDrawing {
  private static final double WIDTH = 360;
  private static final double HEIGHT = 300;
  private static final double MARGIN = 4;
  private static final double TICK = 5;
  private static final double POINT = 3.1;
  private static final double LEAST_APART_ACROSS = 46;
  private static final double LEAST_APART_DOWN = 30;
  private static final Phrase USED = Phrase.of("used by the line", "usado por la recta");
  private static final Phrase UNUSED = Phrase.of("not used", "no usado");
  private static final Phrase LEFT_OUT = Phrase.of("{0} not shown (≤ 0)", "{0} sin mostrar (≤ 0)");

  private final Svg svg = new Svg();
  private final Chart chart;
  private final Reader reader;
  private final double width;
  private final double height;
  private final List<String> heading;
  private final List<Chart.Point> points = new ArrayList<>();
  private final ChartScale across;
  private final ChartScale down;

  private ChartDrawing(Chart chart, Reader reader, double width, double height) {
    this.chart = chart.inUnitsOf(reader);
    this.reader = reader;
    this.width = width;
    this.height = height;
    this.heading = Lettering.wrap(chart.title().shownTo(reader), (width - 2 * MARGIN) / Lettering.BOLDER);
    List<Double> xs = new ArrayList<>();
    List<Double> ys = new ArrayList<>();
    for (Chart.Point point : this.chart.points()) if (hasPlace(point)) points.add(point);
    for (List<Chart.Point> all : List.of(points, line())) {
      for (Chart.Point point : all) {
        xs.add(point.x());
        ys.add(point.y());
      }
    }
    double top = (heading.size() + 1) * Lettering.LINE + 12;
    double bottom = height - 2 * Lettering.LINE - 10 - (hasFoot() ? Lettering.LINE + 3 : 0);
    ChartScale upright = ChartScale.of(chart.down().logarithmic(), ys, (int) ((bottom - top) / LEAST_APART_DOWN));
    down = chart.down().downward() ? upright.along(top, bottom) : upright.along(bottom, top);
    double left = upright.widest() + TICK + 5 + MARGIN;
    int most = (int) ((width - left) / LEAST_APART_ACROSS);
    double widest = ChartScale.of(chart.across().logarithmic(), xs, most).widest();
    int fitting = (int) ((width - left) / (widest + 14));
    ChartScale level = ChartScale.of(chart.across().logarithmic(), xs, Math.min(most, fitting));
    double half = level.widest() / 2;
    across = level.along(Math.max(left, half + MARGIN), width - MARGIN - Math.max(8, half));
  }

  /** For a telephone held upright. */
  public static String draw(Chart chart, Reader reader) {
    return draw(chart, reader, WIDTH, HEIGHT);
  }

  /** On a sheet of a width and height of at least 200 units. */
  public static String draw(Chart chart, Reader reader, double width, double height) {
    if (!(width >= 200) || !(height >= 200)) throw new IllegalArgumentException("too small a sheet for a chart");
    return new ChartDrawing(chart, reader, width, height).write();
  }

  private String write() {
    svg.open("svg").with("xmlns", Section.SPACE).with("viewBox", "0 0 " + Svg.number(width) + " " + Svg.number(height));
    svg.with("width", width).with("height", height).with("role", "img")
        .with("aria-label", chart.title().shownTo(reader));
    svg.with("font-family", "sans-serif").with("font-size", Lettering.SIZE).with("fill", Ink.INK);
    svg.open("title").text(chart.title().shownTo(reader)).close();
    svg.open("desc").text(ChartWords.of(chart, reader)).close();
    svg.rect(0, 0, width, height).with("fill", Ink.PAPER).close();
    grid();
    numbers();
    captions();
    fitted();
    marks();
    foot();
    svg.close();
    return svg.toString();
  }

  private void grid() {
    lines(across.minors(), down.minors(), 0.3);
    lines(across.majors(), down.majors(), 0.7);
    double top = Math.min(down.start(), down.end());
    svg.rect(across.start(), top, across.end() - across.start(), Math.abs(down.end() - down.start()))
        .with("fill", "none").with("stroke", Ink.INK).with("stroke-width", 1.2).close();
  }

  private void lines(List<Double> xs, List<Double> ys, double weight) {
    Path path = Path.at(across.start(), down.start());
    for (double x : xs) path.move(across.place(x), down.start()).down(down.end());
    for (double y : ys) path.move(across.start(), down.place(y)).across(across.end());
    svg.line(path, Ink.LIGHT, weight).close();
  }

  private void numbers() {
    double bottom = Math.max(down.start(), down.end());
    for (double x : across.majors()) {
      text(across.place(x), bottom + Lettering.LINE + 3, "middle", across.number(x));
    }
    for (double y : down.majors()) {
      svg.line(Path.at(across.start(), down.place(y)).across(across.start() - TICK), Ink.INK, 1).close();
      text(across.start() - TICK - 3, down.place(y) + Lettering.BASE, "end", down.number(y));
    }
  }

  private void captions() {
    double y = Lettering.LINE;
    for (String line : heading) {
      svg.open("text").with("x", MARGIN).with("y", y).with("font-weight", "bold").text(line).close();
      y += Lettering.LINE;
    }
    text(MARGIN, y + 3, "start", ChartWords.caption(chart.down(), reader));
    double bottom = Math.max(down.start(), down.end());
    text(across.end(), bottom + 2 * Lettering.LINE + 5, "end", ChartWords.caption(chart.across(), reader));
  }

  private void fitted() {
    List<Chart.Point> line = line();
    if (line.size() < 2) return;
    Path path = Path.at(across.place(line.get(0).x()), down.place(line.get(0).y()));
    for (Chart.Point point : line.subList(1, line.size())) path.to(across.place(point.x()), down.place(point.y()));
    svg.line(path, Ink.WATER, 1.8).with("stroke-linecap", "round").close();
  }

  /** Of points that would lie within one unit of the sheet a single one is drawn: nobody could tell them apart. */
  private void marks() {
    boolean alone = line().isEmpty();
    Set<String> taken = new TreeSet<>();
    for (Chart.Point point : points) {
      double x = across.place(point.x());
      double y = down.place(point.y());
      boolean used = point.used() || alone;
      if (taken.add((int) x + " " + (int) y + used)) mark(x, y, used);
    }
  }

  private void mark(double x, double y, boolean used) {
    svg.circle(x, y, POINT).with("fill", used ? Ink.INK : Ink.PAPER).with("stroke", Ink.INK).with("stroke-width", 1.1)
        .close();
  }

  private void foot() {
    if (!hasFoot()) return;
    double y = height - 5;
    double x = MARGIN + POINT;
    int gone = chart.points().size() - points.size();
    if (hasBoth()) {
      for (boolean used : new boolean[] {true, false}) {
        String words = (used ? USED : UNUSED).shownTo(reader);
        mark(x, y - Lettering.BASE, used);
        text(x + 8, y, "start", words);
        x += Lettering.width(words) + 26;
      }
    }
    if (gone > 0) text(x, y, "start", LEFT_OUT.about(Integer.toString(gone)).shownTo(reader));
  }

  private boolean hasFoot() {
    return hasBoth() || points.size() < chart.points().size();
  }

  private boolean hasBoth() {
    return !line().isEmpty() && points.stream().anyMatch(Chart.Point::used) && points.stream().anyMatch(p -> !p.used());
  }

  private List<Chart.Point> line() {
    return chart.line().filter(line -> line.stream().allMatch(this::hasPlace)).orElse(List.of());
  }

  private boolean hasPlace(Chart.Point point) {
    return ChartScale.holds(chart.across().logarithmic(), point.x())
        && ChartScale.holds(chart.down().logarithmic(), point.y());
  }

  private void text(double x, double y, String anchor, String words) {
    svg.open("text").with("x", x).with("y", y).with("text-anchor", anchor).text(words).close();
  }
}
