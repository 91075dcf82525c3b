package steening.stage.drilling.fluid;

import static steening.stage.drilling.DrillingFindings.depth;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import steening.language.Phrase;
import steening.language.Shown;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.reckoning.Outcome;
import steening.stage.Sheet;
import steening.stage.drilling.Drilling;
import steening.stage.drilling.log.CuttingsFindings;
import steening.stage.drilling.log.CuttingsLag;
import steening.stage.drilling.log.Penetration;

/** What the mud and what it brings up have to show. */
public final class FluidSheet {
  private static final Phrase BLANK = Phrase.same("");

  private static final List<Column> MUD = List.of(
      new Column(Phrase.of("Depth", "Profundidad"), m -> depth(m.depth())),
      new Column(Phrase.of("Weight", "Densidad"), m -> new Figure(m.weight(), Scale.DENSITY)),
      new Column(Phrase.of("Funnel", "Embudo"), m -> figure(m.funnel(), Scale.FUNNEL)),
      new Column(Phrase.of("Sand", "Arena"), m -> figure(m.sand(), Scale.SHARE)),
      new Column(Phrase.of("Pit fell", "Bajó la fosa"), m -> figure(m.pitDrop(), Scale.DIAMETER)),
      new Column(Phrase.of("Pit rose", "Subió la fosa"), m -> figure(m.pitRise(), Scale.DIAMETER)),
      new Column(Phrase.of("Flow, pump off", "Fluye, bomba parada"), FluidSheet::flows),
      new Column(Phrase.of("Head above ground", "Carga sobre el terreno"), m -> figure(m.head(), Scale.DEPTH)));

  /** One column of the readings. */
  private record Column(Phrase head, Function<Drilling.Mud, Shown> reading) {
    Shown read(Drilling.Mud mud) {
      return reading.apply(mud);
    }
  }

  private FluidSheet() {}

  public static Sheet on(Sheet sheet, Drilling drilling) {
    return cuttings(muds(sheet, drilling), drilling);
  }

  /** Depth and weight always; the rest where somebody read it. */
  private static Sheet muds(Sheet sheet, Drilling drilling) {
    List<Column> columns =
        MUD.stream().filter(c -> drilling.muds().stream().anyMatch(m -> c.read(m) != BLANK)).toList();
    return sheet.table(
        Phrase.of("Mud", "Lodo"),
        columns.stream().map(Column::head).toList(),
        drilling.muds().stream().map(m -> columns.stream().map(c -> c.read(m)).toList()).toList());
  }

  /** Both depths: where the bit was, and where they come from; the working of the last ones stands above. */
  private static Sheet cuttings(Sheet sheet, Drilling drilling) {
    Sheet with = sheet;
    List<List<Shown>> rows = new ArrayList<>();
    for (Drilling.Cuttings caught : drilling.cuttings()) {
      Optional<Outcome> lag = CuttingsFindings.lag(drilling, caught);
      rows.add(List.of(
          depth(caught.bitDepth()),
          figure(caught.penetration().or(() -> Penetration.at(drilling.rods(), caught.bitDepth())), Scale.PENETRATION),
          lag.<Shown>map(o -> o.figure(CuttingsLag.LAG.name())).orElse(BLANK),
          cameFrom(lag).<Shown>map(d -> depth(d)).orElse(BLANK),
          Phrase.same(caught.description())));
    }
    if (!drilling.cuttings().isEmpty()) {
      Drilling.Cuttings last = drilling.cuttings().get(drilling.cuttings().size() - 1);
      Optional<Outcome> lag = CuttingsFindings.lag(drilling, last);
      Phrase label = Phrase.of(
          "cuttings caught with the bit at {0} come from", "los recortes tomados con la barrena a {0} vienen de",
          depth(last.bitDepth()));
      if (cameFrom(lag).isPresent()) with = with.line(label, depth(cameFrom(lag).get()), lag.get());
    }
    return with.table(
        Phrase.of("Cuttings", "Recortes"),
        List.of(
            Phrase.of("Bit at", "Barrena a"),
            Phrase.of("Penetration", "Avance"),
            Phrase.of("Lag", "Retardo"),
            Phrase.of("Cuttings from", "Recortes de"),
            Phrase.of("What they are", "Qué son")),
        rows);
  }

  private static Optional<Length> cameFrom(Optional<Outcome> lag) {
    return lag.filter(o -> o.answers().containsKey(CuttingsLag.CAME_FROM.name()))
        .map(o -> (Length) o.quantity(CuttingsLag.CAME_FROM.name()));
  }

  private static Shown flows(Drilling.Mud mud) {
    return mud.flows().<Shown>map(f -> f ? Phrase.of("yes", "sí") : Phrase.of("no", "no")).orElse(BLANK);
  }

  private static Shown figure(Optional<? extends Quantity> quantity, Scale scale) {
    return quantity.<Shown>map(q -> new Figure(q, scale)).orElse(BLANK);
  }
}
