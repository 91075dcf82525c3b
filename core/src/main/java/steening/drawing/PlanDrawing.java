package steening.drawing;

import java.util.Optional;
import steening.bore.Reach;
import steening.language.Phrase;
import steening.language.Reader;
import steening.quantity.Length;
import steening.well.Plan;
import steening.well.Screen;

/** What is planned: in dashes where it is not built yet, and as a staff beside the well for comparison. */
final class PlanDrawing {
  private static final double LINE = 1;
  private static final double STAFF = 4;
  private static final Phrase PLAN = Phrase.of("plan", "plan");

  private final Svg svg;
  private final Frame frame;
  private final AsBuilt well;
  private final Plan plan;
  private final String prefix;

  PlanDrawing(Svg svg, Frame frame, AsBuilt well) {
    this.svg = svg;
    this.frame = frame;
    this.well = well;
    this.plan = well.plan();
    this.prefix = frame.style().prefix();
  }

  /** What is left to drill and to fill. */
  void around() {
    if (!plan.isMade()) return;
    svg.open("g").with("id", prefix + "plan");
    for (Filling filling : Filling.values()) toFill(filling);
    well.restToDrill().ifPresent(this::toDrill);
    svg.close();
  }

  private void toDrill(Reach rest) {
    double half = frame.half(rest);
    double middle = frame.middle();
    double top = frame.y(rest.from());
    dashed(Path.at(middle - half, top).down(frame.y(rest.to())).across(middle + half).down(top));
  }

  private void toFill(Filling filling) {
    well.restToFill(filling).ifPresent(rest -> {
      double half = frame.half(rest);
      WellColumn.fill(svg, frame, well.holeBetween(rest.from(), rest.to()), WellColumn.PLANNED + filling.id());
      dashed(Path.at(frame.middle() - half, frame.y(rest.from())).across(frame.middle() + half));
    });
  }

  /** The string, until one is set. */
  void pipe() {
    for (Reach pipe : well.plannedPipe().reaches()) {
      double half = frame.half(pipe);
      double x = frame.middle() - half;
      double top = frame.y(pipe.from());
      double bottom = frame.y(pipe.to());
      svg.open("g").with("id", prefix + "plan-casing");
      svg.rect(x, top, 2 * half, bottom - top).with("fill", Ink.PAPER).close();
      dashed(Path.at(x, top).down(bottom).across(x + 2 * half).down(top).shut());
      well.plannedScreen().ifPresent(screen -> slots(screen, frame.middle(), half));
      svg.close();
    }
  }

  /** The whole plan on a narrow staff, so that it can be compared with what stands beside it. */
  void staff(Reader reader) {
    Optional<Length> depth = plan.length(Plan.DEPTH);
    if (depth.isEmpty()) return;
    double x = frame.lane();
    double top = well.plannedPipe().isEmpty() ? frame.surface() : frame.y(well.plannedPipe().reaches().get(0).from());
    svg.open("g").with("id", prefix + "plan-staff");
    dashed(Path.at(x, top).down(frame.y(depth.get())));
    Path ticks = Path.at(x - STAFF, frame.y(depth.get())).across(x + STAFF).move(x - STAFF, top).across(x + STAFF);
    for (Filling filling : Filling.values()) {
      filling.plannedTop(plan).ifPresent(at -> ticks.move(x - STAFF, frame.y(at)).across(x + STAFF));
    }
    svg.line(ticks, Ink.LIGHT, LINE).close();
    well.plannedScreen().ifPresent(screen -> {
      double from = frame.y(screen.top());
      svg.rect(x - STAFF, from, 2 * STAFF, frame.y(screen.bottom()) - from).with("fill", Ink.PAPER)
          .with("stroke", Ink.LIGHT).with("stroke-width", LINE).close();
      slots(screen, x, STAFF);
    });
    svg.open("text").with("x", x).with("y", top - 5).with("text-anchor", "middle").with("font-style", "italic")
        .with("fill", Ink.LIGHT).text(PLAN.shownTo(reader)).close();
    svg.close();
  }

  private void slots(Screen screen, double x, double half) {
    svg.line(PipeDrawing.slots(x, half, frame.y(screen.top()), frame.y(screen.bottom())), Ink.LIGHT, 0.9).close();
  }

  private void dashed(Path path) {
    svg.line(path, Ink.LIGHT, LINE).with("stroke-dasharray", Ink.DASHES).close();
  }
}
