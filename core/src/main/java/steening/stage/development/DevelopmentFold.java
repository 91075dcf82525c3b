package steening.stage.development;

import java.util.Optional;
import steening.journal.Body;
import steening.journal.Entry;
import steening.quantity.FlowRate;
import steening.quantity.Length;
import steening.well.CasingString;
import steening.well.DepthFrom;
import steening.well.Sounding;
import steening.well.Well;

/** What each entry of this room adds to the well. */
final class DevelopmentFold {
  private DevelopmentFold() {}

  static Well with(Well well, Entry entry) {
    boolean cycle = entry.kind().equals(DevelopmentEntries.CYCLE.name());
    return well.with(Development.PART, cycle ? worked(well, entry) : sounded(well, entry));
  }

  private static Development worked(Well well, Entry entry) {
    Development so = well.get(Development.PART);
    Optional<Length> reading = DevelopmentEntries.LEVEL.length(entry.body());
    DepthFrom from = DevelopmentEntries.FROM.text(entry.body()).map(DepthFrom::of).orElse(DepthFrom.GROUND);
    Optional<Length> level = reading.flatMap(r -> well.get(CasingString.PART).belowGround(r, from));
    boolean lost = reading.isPresent() && level.isEmpty();
    return (lost ? so.adrift(entry.id()) : so).with(cycle(entry, level));
  }

  private static Development sounded(Well well, Entry entry) {
    Development so = well.get(Development.PART);
    Optional<Sounding> sounding = Sounding.in(entry, well);
    if (sounding.isEmpty()) return so;
    return sounding.get().depth().isPresent() ? so.with(sounding.get()) : so.adrift(entry.id());
  }

  private static Development.Cycle cycle(Entry entry, Optional<Length> level) {
    Body body = entry.body();
    return new Development.Cycle(
        DevelopmentEntries.METHOD.in(body),
        DevelopmentEntries.MINUTES.in(body),
        DevelopmentEntries.RATE.in(body).map(q -> (FlowRate) q),
        level,
        DevelopmentEntries.TURBIDITY.in(body),
        DevelopmentEntries.SAND.in(body),
        DevelopmentEntries.WATER.in(body).orElse(SandContent.PAIL),
        entry.happenedAt(),
        entry.id());
  }
}
