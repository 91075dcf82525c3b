package steening.drawing;

import java.util.Optional;
import steening.bore.Reach;
import steening.quantity.Length;
import steening.well.Levels;

/** The water in the well with its levels, and the pump in the water. */
final class WaterDrawing {
  private static final double LINE = 1.4;
  static final double PUMP_HALF = 6;

  private WaterDrawing() {}

  /** Water at rest between the walls of the pipe. */
  static void inPipe(Svg svg, Frame frame, AsBuilt well, double half) {
    Optional<Length> level = well.levels().atRest().map(Levels.Level::depth);
    Reach pipe = well.pipe().reaches().get(0);
    if (level.isEmpty() || !level.get().isLessThan(pipe.to())) return;
    double top = frame.y(level.get().max(pipe.from()));
    svg.rect(frame.middle() - half, top, 2 * half, frame.y(pipe.to()) - top).with("fill", Ink.WATER_TINT).close();
  }

  static void draw(Svg svg, Frame frame, AsBuilt well) {
    String prefix = frame.style().prefix();
    well.intake().ifPresent(intake -> pump(svg, frame, well, intake));
    well.levels().atRest().ifPresent(level -> level(svg, frame, well, prefix + "static-level", level.depth(), true));
    well.levels().pumping().ifPresent(level -> level(svg, frame, well, prefix + "pumping-level", level.depth(), false));
  }

  private static void level(Svg svg, Frame frame, AsBuilt well, String id, Length depth, boolean atRest) {
    double y = frame.y(depth);
    double half = halfAt(frame, well);
    svg.open("g").with("id", id);
    svg.line(Path.at(frame.middle() - half, y).across(frame.middle() + half), Ink.WATER, LINE);
    if (!atRest) svg.with("stroke-dasharray", Ink.DASHES);
    svg.close();
    // Beside the drop pipe, which hangs in the middle.
    WaterMarks.level(svg, frame.middle() - Math.max(0, half / 2 - 1), y, atRest);
    svg.close();
  }

  private static double halfAt(Frame frame, AsBuilt well) {
    if (!well.pipe().isEmpty()) return frame.half(well.pipe().reaches().get(0)) - 1;
    return frame.half(well.hole().isEmpty() ? frame.extent().widest() : well.hole().reaches().get(0).diameter());
  }

  private static void pump(Svg svg, Frame frame, AsBuilt well, Length intake) {
    double y = frame.y(intake);
    double x = frame.middle();
    double half = Math.min(PUMP_HALF, halfAt(frame, well) * 0.45);
    double top = well.pipe().isEmpty() ? frame.surface() : frame.y(well.pipe().reaches().get(0).from());
    svg.open("g").with("id", frame.style().prefix() + "pump");
    svg.line(Path.at(x, top).down(y - 9), Ink.INK, 2).close();
    svg.rect(x - half, y - 11, 2 * half, 23).with("rx", 2).with("fill", Ink.PAPER).with("stroke", Ink.INK)
        .with("stroke-width", 1.2).close();
    svg.rect(x - half, y + 3, 2 * half, 9).with("rx", 2).with("fill", Ink.INK).close();
    Path inlet = Path.at(x - half, y - 1.5).across(x + half).move(x - half, y + 0.5).across(x + half);
    svg.line(inlet, Ink.INK, 1).close();
    svg.close();
  }
}
