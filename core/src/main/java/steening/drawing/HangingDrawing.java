package steening.drawing;

import steening.bore.Reach;
import steening.quantity.Length;
import steening.well.Screen;

/** The string while it is lowered: in dashes, since it may still go down, come up or be turned. */
final class HangingDrawing {
  private static final double LINE = 1.2;

  private HangingDrawing() {}

  static void draw(Svg svg, Frame frame, AsBuilt well) {
    for (Reach pipe : well.hanging().reaches()) {
      double half = frame.half(pipe);
      double x = frame.middle() - half;
      double top = frame.y(pipe.from());
      double bottom = frame.y(pipe.to());
      svg.open("g").with("id", frame.style().prefix() + "hanging");
      svg.rect(x, top, 2 * half, bottom - top).with("fill", Ink.PAPER).close();
      svg.line(Path.at(x, top).down(bottom).across(x + 2 * half).down(top), Ink.INK, LINE)
          .with("stroke-dasharray", Ink.DASHES).close();
      for (Screen screen : well.string().set(Length.ZERO).screens()) {
        svg.line(PipeDrawing.slots(frame.middle(), half, frame.y(screen.top()), frame.y(screen.bottom())), Ink.INK, 1)
            .close();
      }
      svg.close();
    }
  }
}
