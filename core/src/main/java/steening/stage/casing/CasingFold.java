package steening.stage.casing;

import java.util.Optional;
import steening.journal.Body;
import steening.journal.Entry;
import steening.quantity.Length;
import steening.stage.casing.choice.PackChosen;
import steening.well.CasingString;
import steening.well.Piece;
import steening.well.Plan;
import steening.well.Well;

/** The well after one more entry of this stage. */
final class CasingFold {
  private CasingFold() {}

  static Well fold(Well well, Entry entry) {
    return Cementing.after(folded(well, entry), entry);
  }

  private static Well folded(Well well, Entry entry) {
    Body body = entry.body();
    return switch (entry.kind()) {
      case "sump" -> lowered(well, Piece.Sort.SUMP, CasingEntries.SUMP_LENGTH.length(body).orElseThrow(), entry);
      case "screen" -> screen(well, entry);
      case "joint" -> joint(well, entry);
      case "cut-piece" -> {
        Length length = CasingEntries.CUT_PIECE_LENGTH.length(body).orElseThrow();
        yield lowered(Offcut.fold(well, entry), Piece.Sort.CUT_PIECE, length, entry);
      }
      case "string-stopped" -> Stopped.fold(well, entry);
      case "string-set" -> set(well, entry);
      case "casing-cut" -> cut(well, entry);
      case "pack-chosen" -> PackChosen.fold(well, entry);
      case "centraliser" -> Centralisers.fold(well, entry);
      default -> well;
    };
  }

  private static Well screen(Well well, Entry entry) {
    Tally.Opening opening = new Tally.Opening(
        CasingEntries.SCREEN_SLOT.length(entry.body()).orElseThrow(),
        CasingEntries.SCREEN_OPEN_AREA.in(entry.body()),
        entry.id());
    Well with = well.with(Tally.PART, well.get(Tally.PART).with(opening));
    return lowered(with, Piece.Sort.SCREEN, CasingEntries.SCREEN_LENGTH.length(entry.body()).orElseThrow(), entry);
  }

  private static Well joint(Well well, Entry entry) {
    Length overall = CasingEntries.JOINT_OVERALL.length(entry.body()).orElseThrow();
    Length bell = CasingEntries.JOINT_BELL.length(entry.body()).orElse(Length.ZERO);
    Tally.Joint joint =
        new Tally.Joint(CasingEntries.JOINT_NUMBER.in(entry.body()).orElseThrow(), overall, bell, entry.id());
    Well with = well.with(Tally.PART, well.get(Tally.PART).with(joint));
    return lowered(with, Piece.Sort.JOINT, overall.minus(bell), entry);
  }

  /** A piece that is written down after the string was set still lengthens it, under the stick-up it was set with. */
  private static Well lowered(Well well, Piece.Sort sort, Length laying, Entry entry) {
    CasingString before = well.get(CasingString.PART);
    CasingString after = before.with(new Piece(sort, laying, entry.id()));
    Tally tally = well.get(Tally.PART);
    Optional<Tally.Setting> setting = tally.setting();
    if (setting.isEmpty()) return well.with(CasingString.PART, after);
    CasingString again = after.set(setting.get().stickUp()).cutTo(before.stickUp().orElse(setting.get().stickUp()));
    return well.with(CasingString.PART, again).with(Tally.PART, tally.late(entry.id()));
  }

  private static Well set(Well well, Entry entry) {
    Body body = entry.body();
    Plan plan = well.get(Plan.PART);
    Length stickUp = CasingEntries.SET_STICK_UP.length(body).orElseThrow();
    Optional<Length> outside = CasingEntries.OUTSIDE.length(body).or(() -> plan.length(Plan.CASING_OUTSIDE));
    Optional<Length> wall = CasingEntries.WALL.length(body).or(() -> plan.length(Plan.CASING_WALL));
    Optional<Length> inside = outside.flatMap(o -> wall.map(w -> o.minus(w.times(2))))
        .filter(i -> i.isMoreThan(Length.ZERO));
    CasingString set = well.get(CasingString.PART).set(stickUp);
    Tally.Setting setting =
        new Tally.Setting(stickUp, CasingEntries.LOADED.in(body), CasingEntries.LEFT.in(body), entry.id());
    return well.with(CasingString.PART, inside.map(i -> set.of(outside.get(), i)).orElse(set))
        .with(Tally.PART, well.get(Tally.PART).with(setting));
  }

  private static Well cut(Well well, Entry entry) {
    Length stickUp = CasingEntries.CUT_STICK_UP.length(entry.body()).orElseThrow();
    return well.with(CasingString.PART, well.get(CasingString.PART).cutTo(stickUp))
        .with(Tally.PART, well.get(Tally.PART).with(new Tally.Cut(stickUp, entry.id())));
  }
}
