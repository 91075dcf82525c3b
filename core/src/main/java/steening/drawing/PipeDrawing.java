package steening.drawing;

import java.util.ArrayList;
import java.util.List;
import steening.bore.Reach;
import steening.quantity.Length;
import steening.well.Piece;
import steening.well.Screen;

/** The string as set: walls, couplings, slotted screens, the closed bottom and the cap. */
final class PipeDrawing {
  private static final double THINNEST_WALL = 1.6;
  private static final double SLOTS_APART = 3.6;
  private static final double CAP = 3.5;

  private final Svg svg;
  private final Frame frame;
  private final AsBuilt well;
  private final String prefix;
  private final double top;
  private final double bottom;
  private final double half;
  private final double wall;

  PipeDrawing(Svg svg, Frame frame, AsBuilt well) {
    this.svg = svg;
    this.frame = frame;
    this.well = well;
    this.prefix = frame.style().prefix();
    Reach pipe = well.pipe().reaches().get(0);
    this.top = frame.y(pipe.from());
    this.bottom = frame.y(pipe.to());
    this.half = frame.half(pipe);
    Length inside = well.string().inside().or(() -> well.plan().casingInside()).orElse(pipe.diameter());
    this.wall = Math.min(half / 2, Math.max(THINNEST_WALL, half - frame.half(inside)));
  }

  void draw() {
    svg.open("g").with("id", prefix + "casing");
    svg.rect(frame.middle() - half, top, 2 * half, bottom - top).with("fill", Ink.PAPER).close();
    WaterDrawing.inPipe(svg, frame, well, half);
    double from = top;
    for (Screen screen : downward()) {
      walls(from, Math.max(top, frame.y(screen.top())));
      from = Math.max(from, frame.y(screen.bottom()));
    }
    walls(from, bottom);
    couplings();
    svg.rect(frame.middle() - half - 1, bottom - CAP, 2 * half + 2, CAP).with("fill", Ink.INK).close();
    svg.close();
    List<Screen> screens = well.string().screens();
    for (int i = 0; i < screens.size(); i++) screen(screens.get(i), i + 1);
    svg.rect(frame.middle() - half - 3, top - CAP, 2 * half + 6, CAP).with("id", prefix + "cap").with("rx", 1.2)
        .with("fill", Ink.INK).close();
  }

  private List<Screen> downward() {
    List<Screen> screens = new ArrayList<>(well.string().screens());
    screens.sort((a, b) -> a.top().compareTo(b.top()));
    return screens;
  }

  private void walls(double from, double to) {
    if (!(to > from)) return;
    for (double x : new double[] {frame.middle() - half, frame.middle() + half - wall}) {
      svg.rect(x, from, wall, to - from).with("fill", Ink.INK).close();
    }
  }

  /** A collar wherever one piece ends in the next. */
  private void couplings() {
    Length end = well.string().bottom().orElse(Length.ZERO);
    for (Piece piece : well.string().pieces()) {
      end = end.minus(piece.laying());
      double y = frame.y(end);
      if (y <= top + 3 || piece.laying().nanometres() <= 0) continue;
      for (double x : new double[] {frame.middle() - half - 1.5, frame.middle() + half - wall}) {
        svg.rect(x, y - 1.5, wall + 1.5, 3).with("fill", Ink.INK).close();
      }
    }
  }

  private void screen(Screen screen, int number) {
    double from = frame.y(screen.top());
    double to = frame.y(screen.bottom());
    svg.open("g").with("id", prefix + "screen-" + number);
    svg.rect(frame.middle() - half, from, 2 * half, to - from).with("fill", "none").with("stroke", Ink.INK)
        .with("stroke-width", 1).close();
    svg.line(slots(frame.middle(), half, from, to), Ink.INK, 1.3).close();
    svg.close();
  }

  /** Two rows of slots with a rib between them. */
  static Path slots(double middle, double half, double from, double to) {
    int count = (int) Math.max(1, Math.floor((to - from) / SLOTS_APART));
    double apart = (to - from) / count;
    double rib = half * 0.22;
    Path slots = Path.at(middle - half, (from + to) / 2);
    for (int i = 0; i < count; i++) {
      double y = from + (i + 0.5) * apart;
      slots.move(middle - half, y).across(middle - rib).move(middle + rib, y).across(middle + half);
    }
    return slots;
  }
}
