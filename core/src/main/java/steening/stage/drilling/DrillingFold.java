package steening.stage.drilling;

import java.util.Optional;
import steening.bore.Reach;
import steening.field.ChoiceField;
import steening.journal.Body;
import steening.journal.Entry;
import steening.quantity.Density;
import steening.quantity.FlowRate;
import steening.quantity.Length;
import steening.quantity.Measure;
import steening.stage.drilling.fluid.FlowEntry;
import steening.stage.drilling.hole.MovingOver;
import steening.stage.drilling.log.LogEntries;
import steening.stage.drilling.start.Start;
import steening.stage.drilling.trouble.TroubleFold;
import steening.well.GroundLog;
import steening.well.Hole;
import steening.well.Material;
import steening.well.MudSeen;
import steening.well.Sieved;
import steening.well.Stratum;
import steening.well.Well;

/** The well after one more entry of this stage. */
public final class DrillingFold {
  private DrillingFold() {}

  static Well fold(Well well, Entry entry) {
    Body body = entry.body();
    return switch (entry.kind()) {
      case "drilling" -> and(well, rig(body, entry.id()));
      case "rod" -> and(well, rod(entry));
      case "hole" -> hole(well, entry);
      case "mud" -> mudChecked(well, entry);
      case "flow" -> FlowEntry.fold(well, entry);
      case "cuttings" -> and(well, cuttings(well.get(Drilling.PART), body, entry.id()));
      case "log" -> log(well, entry);
      case "sieve" -> sieve(well, entry);
      case "moved-over" -> MovingOver.fold(well, entry);
      default -> TroubleFold.fold(Start.fold(well, entry), entry);
    };
  }

  private static Well and(Well well, Drilling.Rig rig) {
    return well.with(Drilling.PART, well.get(Drilling.PART).with(rig));
  }

  private static Well and(Well well, Drilling.Rod rod) {
    return well.with(Drilling.PART, well.get(Drilling.PART).with(rod));
  }

  private static Well and(Well well, Drilling.Mud mud) {
    return well.with(Drilling.PART, well.get(Drilling.PART).with(mud));
  }

  private static Well and(Well well, Drilling.Cuttings caught) {
    return well.with(Drilling.PART, well.get(Drilling.PART).with(caught));
  }

  private static Drilling.Rig rig(Body body, String id) {
    return new Drilling.Rig(
        DrillingEntries.BIT.length(body).orElseThrow(),
        DrillingEntries.ROD.length(body).orElseThrow(),
        (FlowRate) DrillingEntries.PUMP_RATE.in(body).orElseThrow(),
        DrillingEntries.PIT_AREA.in(body),
        DrillingEntries.PIT_DEPTH.length(body),
        DrillingEntries.BIT_LENGTH.length(body)
            .map(bit -> bit.plus(DrillingEntries.SUBS.length(body).orElse(Length.ZERO))),
        id);
  }

  private static Drilling.Rod rod(Entry entry) {
    Body body = entry.body();
    return new Drilling.Rod(
        DrillingEntries.ROD_NUMBER.in(body).orElseThrow(),
        DrillingEntries.ROD_LENGTH.length(body).orElseThrow(),
        DrillingEntries.ROD_DEPTH.length(body).orElseThrow(),
        entry.happenedAt(),
        entry.id());
  }

  private static Well hole(Well well, Entry entry) {
    Length from = DrillingEntries.HOLE_FROM.length(entry.body()).orElseThrow();
    Length to = DrillingEntries.HOLE_TO.length(entry.body()).orElseThrow();
    Length diameter = DrillingEntries.HOLE_DIAMETER.length(entry.body()).orElseThrow();
    if (!to.isMoreThan(from)) return upsideDown(well, from, to, entry);
    Drilling.Stretch stretch = new Drilling.Stretch(new Reach(from, to, diameter), depthSoFar(well), entry.id());
    return well.with(Hole.PART, well.get(Hole.PART).drilled(from, to, diameter, entry.happenedAt()))
        .with(Drilling.PART, well.get(Drilling.PART).with(stretch));
  }

  private static Drilling.Cuttings cuttings(Drilling drilling, Body body, String id) {
    return new Drilling.Cuttings(
        DrillingEntries.BIT_DEPTH.length(body).orElseThrow(),
        DrillingEntries.PENETRATION.in(body),
        DrillingEntries.CUTTINGS_SIZE.in(body),
        drilling.rig(),
        drilling.muds().stream().reduce((a, b) -> b),
        DrillingEntries.CUTTINGS_DESCRIPTION.text(body).orElse(""),
        id);
  }

  /** A head that was read with it is the well's to know: the seal asks for it. */
  private static Well mudChecked(Well well, Entry entry) {
    Drilling.Mud mud = mud(well, entry);
    Well checked = and(well, mud)
        .with(MudSeen.PART, Optional.of(new MudSeen(mud.weight(), mud.at(), mud.entry())));
    return mud.head().map(head -> FlowEntry.head(checked, head, entry)).orElse(checked);
  }

  private static Drilling.Mud mud(Well well, Entry entry) {
    Body body = entry.body();
    return new Drilling.Mud(
        (Density) DrillingEntries.MUD_WEIGHT.in(body).orElseThrow(),
        DrillingEntries.MUD_FUNNEL.in(body).map(q -> (Measure) q),
        DrillingEntries.MUD_SAND.in(body).map(q -> (Measure) q),
        DrillingEntries.PIT_DROP.length(body),
        DrillingEntries.PIT_RISE.length(body),
        DrillingEntries.FLOWS.in(body).map(answer -> answer.code().equals("yes")),
        DrillingEntries.MUD_HEAD.length(body),
        depthSoFar(well),
        entry.happenedAt(),
        entry.id());
  }

  private static Well log(Well well, Entry entry) {
    Body body = entry.body();
    Length from = LogEntries.FROM.length(body).orElseThrow();
    Length to = LogEntries.TO.length(body).orElseThrow();
    if (!to.isMoreThan(from)) return upsideDown(well, from, to, entry);
    Stratum stratum = new Stratum(
        from,
        to,
        Material.of(LogEntries.MATERIAL.in(body).orElseThrow().code()),
        LogEntries.looks(body),
        LogEntries.WATER.in(body).map(ChoiceField.Option::code).orElse("no").equals("yes"),
        entry.id());
    return well.with(GroundLog.PART, well.get(GroundLog.PART).with(stratum));
  }

  private static Well sieve(Well well, Entry entry) {
    Body body = entry.body();
    Length from = DrillingEntries.HOLE_FROM.length(body).orElseThrow();
    Length to = DrillingEntries.HOLE_TO.length(body).orElseThrow();
    if (!to.isMoreThan(from)) return upsideDown(well, from, to, entry);
    Sieved.Sample sample = new Sieved.Sample(from, to, body, entry.id());
    return well.with(Sieved.PART, well.get(Sieved.PART).with(sample));
  }

  private static Well upsideDown(Well well, Length from, Length to, Entry entry) {
    return well.with(Drilling.PART, well.get(Drilling.PART).with(new Drilling.UpsideDown(from, to, entry.id())));
  }

  /** How deep the hole is by the deepest thing that was said about it. */
  public static Length depthSoFar(Well well) {
    return well.get(Hole.PART).depth().max(well.get(GroundLog.PART).bottom()).max(well.get(Drilling.PART).rodDepth());
  }
}
