package steening.drawing;

import steening.language.Reader;
import steening.number.Decimal;
import steening.quantity.Scale;

/** The depths at the left, in the reader's unit. */
final class DepthAxis {
  private static final double LEAST_APART = 36;
  private static final double LEAST_MINOR = 6;

  private DepthAxis() {}

  static void draw(Svg svg, Frame frame, Reader reader) {
    double metre = Scale.DEPTH.of(reader).fromCoherent(1);
    double unit = frame.down() / metre;
    double room = frame.floor() - frame.surface();
    Ticks ticks = Ticks.of(room / unit, (int) Math.floor(room / LEAST_APART));
    double x = Frame.AXIS;
    svg.open("g").with("id", frame.style().prefix() + "depths");
    svg.line(Path.at(x, frame.surface()).down(frame.floor()), Ink.INK, 1).close();
    double minor = ticks.step() / ticks.minors() * unit;
    Path small = Path.at(x, frame.surface());
    for (int i = 1; i * minor <= room && minor >= LEAST_MINOR; i++) {
      small.move(x, frame.surface() + i * minor).across(x - 3);
    }
    svg.line(small, Ink.INK, 0.8).close();
    for (double depth : ticks.between(0, room / unit)) {
      double y = frame.surface() + depth * unit;
      svg.line(Path.at(x, y).across(x - 6), Ink.INK, 1).close();
      text(svg, x - 8, y + Lettering.BASE, Decimal.upTo(depth, 2));
    }
    text(svg, x - 8, frame.surface() - 10, Depths.unit(reader));
    svg.close();
  }

  private static void text(Svg svg, double x, double y, String words) {
    svg.open("text").with("x", x).with("y", y).with("text-anchor", "end").text(words).close();
  }
}
