package steening.drawing;

import java.util.List;
import steening.bore.Reach;
import steening.language.Reader;
import steening.quantity.Length;

/** The well in the middle of the ground: hole, what fills it, pipe, water, pump; what is planned of them in dashes. */
final class WellColumn {
  /** Before the id of a filling that is there, and of one that is planned: the ids of their patterns. */
  static final String BUILT = "pattern-";

  static final String PLANNED = "pattern-plan-";
  private static final double WALL = 1.4;
  static final double TOP = 1.2;

  private final Svg svg;
  private final Frame frame;
  private final AsBuilt well;
  private final String prefix;

  WellColumn(Svg svg, Frame frame, AsBuilt well) {
    this.svg = svg;
    this.frame = frame;
    this.well = well;
    this.prefix = frame.style().prefix();
  }

  void patterns() {
    for (Filling filling : Filling.values()) {
      if (well.fill(filling).isPresent()) pattern(filling, BUILT, Ink.INK);
      if (well.restToFill(filling).isPresent()) pattern(filling, PLANNED, Ink.FAINT);
    }
    new PlugDrawing(svg, frame, well).patterns();
  }

  private void pattern(Filling filling, String sort, String colour) {
    filling.tile().define(svg, prefix + sort + filling.id(), colour, frame.middle(), frame.surface());
  }

  void draw(Reader reader) {
    PlanDrawing plan = new PlanDrawing(svg, frame, well);
    hole();
    plan.around();
    fills();
    if (well.pipe().isEmpty() && well.hanging().isEmpty()) plan.pipe();
    walls();
    HangingDrawing.draw(svg, frame, well);
    if (!well.pipe().isEmpty()) new PipeDrawing(svg, frame, well).draw();
    new PlugDrawing(svg, frame, well).draw();
    WaterDrawing.draw(svg, frame, well);
    if (!well.hole().isEmpty() || !well.pipe().isEmpty()) plan.staff(reader);
  }

  private void hole() {
    svg.open("g").with("id", prefix + "hole");
    for (Reach reach : well.hole().reaches()) {
      double top = frame.y(reach.from());
      double half = frame.half(reach);
      svg.rect(frame.middle() - half, top, 2 * half, frame.y(reach.to()) - top).with("fill", Ink.PAPER).close();
    }
    svg.close();
  }

  private void walls() {
    List<Reach> reaches = well.hole().reaches();
    if (reaches.isEmpty()) return;
    svg.open("g").with("id", prefix + "hole-walls");
    svg.line(wall(reaches, -1), Ink.INK, WALL).close();
    svg.line(wall(reaches, 1), Ink.INK, WALL).close();
    svg.close();
  }

  /** Down one side, over every shoulder, and to the middle at the bottom. */
  private Path wall(List<Reach> reaches, int side) {
    double middle = frame.middle();
    Path path = null;
    Length end = null;
    for (Reach reach : reaches) {
      double x = middle + side * frame.half(reach);
      if (path == null) path = Path.at(x, frame.y(reach.from()));
      else if (reach.from().equals(end)) path.across(x);
      else path.across(middle).move(middle, frame.y(reach.from())).across(x);
      end = reach.to();
      path.down(frame.y(end));
    }
    return path.across(middle);
  }

  private void fills() {
    for (FillReach fill : well.fills()) {
      svg.open("g").with("id", prefix + fill.filling().id());
      fill(svg, frame, well.holeBetween(fill.top(), fill.bottom()), BUILT + fill.filling().id());
      double y = frame.y(fill.top());
      double half = frame.half(well.holeBetween(fill.top(), fill.bottom()).get(0));
      svg.line(Path.at(frame.middle() - half, y).across(frame.middle() + half), Ink.INK, TOP);
      if (!fill.sounded()) svg.with("stroke-dasharray", Ink.DASHES);
      svg.close().close();
    }
  }

  /** A pattern in a stretch of hole; the pipe is drawn over it later. */
  static void fill(Svg svg, Frame frame, List<Reach> reaches, String patternId) {
    String pattern = "url(#" + frame.style().prefix() + patternId + ")";
    for (Reach reach : reaches) {
      double top = frame.y(reach.from());
      double half = frame.half(reach);
      for (String paint : List.of(Ink.PAPER, pattern)) {
        svg.rect(frame.middle() - half, top, 2 * half, frame.y(reach.to()) - top).with("fill", paint).close();
      }
    }
  }
}
