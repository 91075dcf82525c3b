package steening.stage.drilling.trouble;

import java.util.List;
import java.util.Optional;
import steening.field.ChoiceField;
import steening.journal.Body;
import steening.journal.Entry;
import steening.quantity.FlowRate;
import steening.quantity.Length;
import steening.quantity.Unit;
import steening.stage.drilling.Drilling;
import steening.stage.drilling.DrillingFold;
import steening.well.Losses;
import steening.well.Well;

/** The well after one more trouble. */
public final class TroubleFold {
  private TroubleFold() {}

  /** The well as it was, for any other kind. */
  public static Well fold(Well well, Entry entry) {
    Body body = entry.body();
    Troubles troubles = well.get(Troubles.PART);
    return switch (entry.kind()) {
      case "circulation-lost" -> lost(well, entry);
      case "fill" -> well.with(Troubles.PART, troubles.with(fill(well, entry)));
      case "tools-lost" -> well.with(Troubles.PART, troubles.with(fish(well, entry)));
      case "fishing" -> well.with(Troubles.PART, tried(troubles, body));
      case "fishing-costs" -> well.with(Troubles.PART, troubles.with(costs(entry)));
      default -> well;
    };
  }

  private static Well lost(Well well, Entry entry) {
    Body body = entry.body();
    Length from = TroubleEntries.LOST_FROM.length(body).orElseThrow();
    Length to = TroubleEntries.LOST_TO.length(body).orElseThrow();
    if (to.isLessThan(from)) {
      return well.with(Drilling.PART, well.get(Drilling.PART).with(new Drilling.UpsideDown(from, to, entry.id())));
    }
    Losses.Zone zone = new Losses.Zone(
        from, to,
        TroubleEntries.LOSS_RATE.in(body).map(q -> (FlowRate) q),
        TroubleEntries.LOSS_SHARE.in(body),
        TroubleEntries.TRIED.in(body).map(ChoiceField.Option::code).orElse(""),
        TroubleEntries.CAME_BACK.in(body).map(TroubleFold::isYes),
        entry.id());
    return well.with(Losses.PART, well.get(Losses.PART).with(zone));
  }

  private static Troubles.Fill fill(Well well, Entry entry) {
    return new Troubles.Fill(
        TroubleEntries.TAGGED.length(entry.body()).orElseThrow(), DrillingFold.depthSoFar(well),
        TroubleEntries.SHOVELLED.in(entry.body()), entry.id());
  }

  private static Troubles.Fish fish(Well well, Entry entry) {
    Body body = entry.body();
    List<Drilling.Rod> rods = well.get(Drilling.PART).rods();
    return new Troubles.Fish(
        TroubleEntries.LENGTHS.in(body).orElseThrow(), DrillingFold.depthSoFar(well),
        TroubleEntries.FELT.length(body),
        TroubleEntries.RODS_OUT.in(body).filter(out -> !rods.isEmpty()).map(out -> rest(rods, out)),
        0, entry.id());
  }

  /** The rods that went down last come out first. */
  private static Troubles.Rest rest(List<Drilling.Rod> rods, int out) {
    Length left = rods.stream().limit(Math.max(0, rods.size() - out)).map(Drilling.Rod::length)
        .reduce(Length.ZERO, Length::plus);
    Length longest = rods.stream().map(Drilling.Rod::length).reduce(Length.ZERO, Length::max);
    return new Troubles.Rest(rods.size(), out, left, longest);
  }

  private static Troubles tried(Troubles troubles, Body body) {
    double hours = TroubleEntries.FISHED.in(body).orElseThrow().in(Unit.HOUR);
    return troubles.tried(hours, TroubleEntries.CAUGHT.in(body).map(TroubleFold::isYes).orElse(false));
  }

  private static Troubles.Costs costs(Entry entry) {
    Body body = entry.body();
    return new Troubles.Costs(
        TroubleEntries.HOUR_COST.in(body).orElseThrow(), TroubleEntries.CAVE_RISK.in(body),
        TroubleEntries.HOLE_VALUE.in(body).orElseThrow(), TroubleEntries.FISH_VALUE.in(body).orElseThrow(),
        TroubleEntries.REDRILL.in(body).orElseThrow(), TroubleEntries.SEALING.in(body).orElseThrow(), entry.id());
  }

  private static boolean isYes(ChoiceField.Option option) {
    return option.code().equals("yes");
  }

  /** Whether anything of a trouble is known. */
  static boolean isQuiet(Well well) {
    Troubles troubles = well.get(Troubles.PART);
    boolean empty = troubles.fills().isEmpty() && troubles.fish().isEmpty();
    return empty && well.get(Losses.PART).zones().isEmpty();
  }

  static Optional<Drilling.Rig> rig(Well well) {
    return well.get(Drilling.PART).rig();
  }
}
