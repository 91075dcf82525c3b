package steening.drawing;

import java.util.ArrayList;
import java.util.List;

/** Labels one under the other, pushed apart, each with a line to what it speaks of. */
final class LabelColumn {
  private static final double LEADER = 0.8;
  private static final double HALO = 2.6;
  private static final double BEFORE_TEXT = 3;

  private final Svg svg;
  private final Frame frame;

  /** Where the words begin or, on the left, end. */
  private final double edge;

  /** Where the leader turns towards them. */
  private final double bend;

  private final boolean onTheLeft;

  /** Outside of the pipe, where patterns begin that a leader must stand out from. */
  private final double pipe;

  private LabelColumn(Svg svg, Frame frame, double edge, double bend, boolean onTheLeft, double pipe) {
    this.svg = svg;
    this.frame = frame;
    this.edge = edge;
    this.bend = bend;
    this.onTheLeft = onTheLeft;
    this.pipe = pipe;
  }

  static LabelColumn left(Svg svg, Frame frame) {
    return new LabelColumn(svg, frame, frame.wordsEnd(), frame.left(), true, 0);
  }

  static LabelColumn right(Svg svg, Frame frame, AsBuilt well) {
    return new LabelColumn(svg, frame, frame.labels(), frame.leaders(), false, pipeEdge(frame, well));
  }

  private static double pipeEdge(Frame frame, AsBuilt well) {
    return well.pipe().reaches().stream().findFirst().map(frame::half).orElse(0.0) + frame.middle();
  }

  /** Labels in order of depth. */
  void draw(String id, List<Label> labels) {
    if (labels.isEmpty()) return;
    List<Double> wanted = new ArrayList<>();
    List<Double> heights = new ArrayList<>();
    for (Label label : labels) {
      wanted.add(frame.y(label.at()));
      heights.add(label.height());
    }
    double top = onTheLeft ? frame.surface() : Frame.MARGIN;
    List<Double> middles = Spread.middles(wanted, heights, top, frame.floor());
    svg.open("g").with("id", frame.style().prefix() + id);
    for (int i = 0; i < labels.size(); i++) leader(labels.get(i), middles.get(i));
    for (int i = 0; i < labels.size(); i++) words(labels.get(i), middles.get(i));
    svg.close();
  }

  private void leader(Label label, double middle) {
    double y = frame.y(label.at());
    double end = onTheLeft ? edge + BEFORE_TEXT : edge - BEFORE_TEXT;
    if (!onTheLeft) svg.line(Path.at(Math.max(label.anchor(), pipe), y).across(frame.right()), Ink.PAPER, HALO).close();
    svg.line(Path.at(label.anchor(), y).across(bend).to(end, middle), label.colour(), LEADER);
    if (label.planned()) svg.with("stroke-dasharray", "2 2");
    svg.close();
  }

  private void words(Label label, double middle) {
    int count = label.lines().size() + label.asides().size();
    double y = middle - (count - 1) * Lettering.LINE / 2 + Lettering.BASE;
    for (int i = 0; i < label.lines().size(); i++) {
      begin(y, label.colour());
      if (label.planned()) svg.with("font-style", "italic");
      String line = label.lines().get(i);
      int bold = i == 0 ? label.bold() : 0;
      if (bold > 0) svg.open("tspan").with("font-weight", "bold").text(line.substring(0, bold)).close();
      svg.text(line.substring(bold)).close();
      y += Lettering.LINE;
    }
    for (String aside : label.asides()) {
      begin(y, Ink.LIGHT);
      svg.with("font-style", "italic").text(aside).close();
      y += Lettering.LINE;
    }
  }

  private void begin(double y, String colour) {
    svg.open("text").with("x", edge).with("y", y).with("fill", colour);
    if (onTheLeft) svg.with("text-anchor", "end");
  }
}
