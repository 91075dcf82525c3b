package steening.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.bore.Bore;
import steening.bore.Reach;
import steening.language.Phrase;
import steening.language.Reader;
import steening.quantity.Length;
import steening.well.Levels;
import steening.well.Plan;
import steening.well.Screen;

/** The labels of the well: what is built with its depth, what is planned in light ink, the plan under what differs. */
final class PartLabels {
  private static final Phrase STICK_UP = Phrase.of("stick-up", "sobre el terreno");
  private static final Phrase AT_REST = Phrase.of("static level", "nivel estático");
  private static final Phrase FLOWING = Phrase.of("above ground: static level", "sobre el terreno: nivel estático");
  private static final Phrase PUMPING = Phrase.of("pumping level", "nivel de bombeo");
  private static final Phrase INTAKE = Phrase.of("pump intake", "toma de la bomba");
  private static final Phrase SCREEN = Phrase.of("screen", "rejilla");
  private static final Phrase BOTTOM_CAP = Phrase.of("bottom cap", "tapón de fondo");
  private static final Phrase CASING_CUT = Phrase.of("casing cut", "ademe cortado");
  private static final Phrase HOLE_BOTTOM = Phrase.of("hole bottom", "fondo del barreno");
  private static final Phrase PLAN = Phrase.of("plan {0}", "plan {0}");
  static final Phrase EXPECTED = Phrase.of("expected, not sounded", "esperado, sin sondear");

  private final Frame frame;
  private final AsBuilt well;
  private final Plan plan;
  private final Reader reader;
  private final List<Label> labels = new ArrayList<>();

  private PartLabels(Frame frame, AsBuilt well, Reader reader) {
    this.frame = frame;
    this.well = well;
    this.plan = well.plan();
    this.reader = reader;
  }

  /** All labels in order of depth. */
  static List<Label> of(Frame frame, AsBuilt well, Reader reader) {
    PartLabels parts = new PartLabels(frame, well, reader);
    parts.water();
    if (well.pipe().isEmpty()) parts.plannedPipe();
    else parts.pipe();
    for (Filling filling : Filling.values()) parts.fill(filling);
    for (PlugReach plug : well.plugs()) parts.plug(plug);
    parts.hole();
    parts.labels.sort((a, b) -> a.at().compareTo(b.at()));
    return parts.labels;
  }

  private void water() {
    double half = well.pipe().isEmpty() ? frame.half(frame.extent().widest()) : half(well.pipe());
    well.levels().atRest().map(Levels.Level::depth).ifPresent(at -> labels.add(level(at, half)));
    well.levels().pumping().map(Levels.Level::depth).ifPresent(at -> labels.add(label(at, half, PUMPING, Ink.WATER)));
    well.intake().ifPresent(at -> labels.add(label(at, WaterDrawing.PUMP_HALF, INTAKE, Ink.INK)));
  }

  private void plannedPipe() {
    double half = half(well.plannedPipe());
    plan.length(Plan.STICK_UP).ifPresent(up -> labels.add(stickUp(up, half).asPlan()));
    well.plannedScreen().ifPresent(screen -> labels.add(screen(screen, half).asPlan()));
    plan.stringBottom().ifPresent(at -> labels.add(label(at, half, BOTTOM_CAP, Ink.LIGHT).asPlan()));
  }

  private void pipe() {
    double half = half(well.pipe());
    Optional<Length> planned = plan.length(Plan.STICK_UP);
    Optional<Length> stickUp = well.cut().isPresent() ? Optional.empty() : well.string().stickUp();
    well.cut().ifPresent(at -> labels.add(label(at, half, CASING_CUT, Ink.INK)));
    stickUp.ifPresent(up -> labels.add(against(planned, up, stickUp(up, half))));
    List<Screen> screens = well.string().screens();
    for (Screen screen : screens) {
      Label label = screen(screen, half);
      Optional<Screen> other = well.plannedScreen().filter(p -> screens.size() == 1)
          .filter(p -> Depths.differ(p.top(), screen.top()) || Depths.differ(p.bottom(), screen.bottom()));
      labels.add(other.map(p -> withPlan(label, Depths.range(p.top(), p.bottom(), reader))).orElse(label));
    }
    Length bottom = well.pipe().bottom();
    labels.add(against(plan.stringBottom(), bottom, label(bottom, half, BOTTOM_CAP, Ink.INK)));
  }

  private void plug(PlugReach plug) {
    Length middle = Depths.middle(plug.top(), plug.bottom());
    String range = Depths.range(plug.top(), plug.bottom(), reader);
    labels.add(label(middle, halfAt(middle), range, plug.label(), Ink.INK));
  }

  private void fill(Filling filling) {
    Optional<Label> planned = filling.plannedTop(plan)
        .map(at -> label(at, halfAt(at), filling.label(), Ink.LIGHT).asPlan());
    Optional<FillReach> fill = well.fill(filling);
    if (fill.isEmpty()) {
      if (!well.isCovered(filling)) planned.ifPresent(labels::add);
      return;
    }
    Length top = fill.get().top();
    boolean sounded = fill.get().sounded();
    String number = sounded ? Depths.number(top, reader) : Depths.expected(top, reader);
    Label label = label(top, halfAt(top), number, filling.label(), Ink.INK);
    if (!sounded) label = label.aside(EXPECTED.shownTo(reader), width());
    boolean more = planned.isPresent() && planned.get().at().isLessThan(top.minus(Depths.READ_TO))
        && !well.isCovered(filling);
    if (more) labels.add(planned.get());
    labels.add(more ? label : against(planned.map(Label::at), top, label));
  }

  private void hole() {
    Optional<Reach> rest = well.restToDrill();
    rest.ifPresent(r -> labels.add(label(r.to(), frame.half(r), HOLE_BOTTOM, Ink.LIGHT).asPlan()));
    if (well.hole().isEmpty()) return;
    Length bottom = well.hole().bottom();
    Optional<Length> planned = rest.isPresent() ? Optional.empty() : plan.length(Plan.DEPTH);
    double half = frame.half(well.hole().reaches().get(well.hole().reaches().size() - 1));
    labels.add(against(planned, bottom, label(bottom, half, HOLE_BOTTOM, Ink.INK)));
  }

  /** With the plan under it where that is something else. */
  private Label against(Optional<Length> planned, Length built, Label label) {
    if (planned.isEmpty() || !Depths.differ(planned.get(), built)) return label;
    return withPlan(label, Depths.number(planned.get(), reader));
  }

  private Label withPlan(Label label, String planned) {
    return label.aside(PLAN.about(planned).shownTo(reader), width());
  }

  private Label label(Length at, double half, Phrase words, String colour) {
    return label(at, half, Depths.number(at, reader), words, colour);
  }

  private Label stickUp(Length up, double half) {
    return label(Length.ZERO.minus(up), half, Depths.number(up, reader), STICK_UP, Ink.INK);
  }

  /** A flowing well's water stands above ground. */
  private Label level(Length at, double half) {
    if (!at.isLessThan(Length.ZERO)) return label(at, half, AT_REST, Ink.WATER);
    return label(at, half, Depths.number(Length.ZERO.minus(at), reader), FLOWING, Ink.WATER);
  }

  private Label screen(Screen screen, double half) {
    String range = Depths.range(screen.top(), screen.bottom(), reader);
    return label(Depths.middle(screen.top(), screen.bottom()), half, range, SCREEN, Ink.INK);
  }

  private Label label(Length at, double half, String number, Phrase words, String colour) {
    return Label.of(at, frame.middle() + half, number, words.shownTo(reader), colour, width());
  }

  private double half(Bore pipe) {
    return frame.half(pipe.reaches().stream().findFirst().map(r -> r.diameter()).orElse(Length.ZERO));
  }

  private double halfAt(Length depth) {
    return frame.half(well.holeBetween(depth, depth.plus(Depths.READ_TO)).get(0));
  }

  private double width() {
    return frame.style().labels();
  }
}
