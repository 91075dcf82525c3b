package steening.stage.casing;

import static steening.stage.casing.CasingFindings.across;
import static steening.stage.casing.CasingFindings.depth;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import steening.language.Phrase;
import steening.language.Shown;
import steening.pipe.Buoyancy;
import steening.pipe.Collapse;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.reckoning.Term;
import steening.stage.Sheet;
import steening.stage.casing.choice.ChoiceSheet;
import steening.well.CasingString;
import steening.well.Piece;
import steening.well.Plan;
import steening.well.Screen;
import steening.well.Well;

/** What the casing has to show: where the string and its screens stand, and the tally. */
final class CasingSheet {
  private static final Phrase BLANK = Phrase.same("");

  private CasingSheet() {}

  static Sheet of(Well well) {
    CasingString string = well.get(CasingString.PART);
    Sheet chosen = ChoiceSheet.on(Sheet.EMPTY, well);
    if (string.pieces().isEmpty()) return chosen;
    Sheet sheet = Offcut.on(pipe(Stopped.on(string(chosen, string), well), string), well);
    Optional<Outcome> entrance = EntranceVelocity.at(well);
    if (entrance.isPresent()) {
      sheet = sheet.line(EntranceVelocity.VELOCITY.label(), entrance.get().figure("velocity"), entrance.get());
    }
    sheet = Cementing.on(sheet, well);
    sheet = Centralisers.on(screens(sheet, well.get(Tally.PART), string), well);
    return tally(sheet, well.get(Tally.PART), string);
  }

  private static Sheet string(Sheet sheet, CasingString string) {
    if (!string.isSet()) return sheet.line(Phrase.of("lowered so far", "bajado hasta ahora"), depth(string.length()));
    Outcome outcome = StringLength.of(string, string.length().minus(string.bottom().orElseThrow()));
    return sheet
        .line(StringLength.STRING.label(), outcome.figure("string"), outcome)
        .line(StringLength.BOTTOM.label(), outcome.figure("bottom"), outcome)
        .line(Plan.STICK_UP.label(), depth(string.stickUp().orElseThrow()));
  }

  private static Sheet pipe(Sheet sheet, CasingString string) {
    if (string.outside().isEmpty() || string.inside().isEmpty() || string.bottom().isEmpty()) return sheet;
    Length outside = string.outside().get();
    Length inside = string.inside().get();
    Length wall = new Length((outside.nanometres() - inside.nanometres()) / 2);
    Outcome volume = CasingVolume.of(inside, string.length());
    Sheet with = sheet
        .line(Plan.CASING_OUTSIDE.label(), across(outside))
        .line(CasingVolume.INSIDE.label(), across(inside))
        .line(CasingVolume.PER_LENGTH.label(), volume.figure("per-length"), volume);
    try {
      Outcome weight = Buoyancy.of(outside, inside, Optional.empty(), string.length(), Buoyancy.WATER, Buoyancy.WATER);
      Term rating = Collapse
          .margin(outside, wall, Collapse.COOL, Buoyancy.WATER, Buoyancy.WATER, Length.ZERO, Collapse.USUAL_SAFETY)
          .term(Collapse.RATING_B.name());
      // The rating alone: what presses on it is for the room that grouts to say.
      Outcome bears = Outcome.empty().with(Collapse.RATING_B.name(), rating);
      return with
          .line(Buoyancy.IN_AIR.label(), weight.figure("in-air"), weight)
          .line(Collapse.RATING_B.label(), bears.figure("rating-b"), bears);
    } catch (NotReckonable noSuchPipe) {
      return with;
    }
  }

  private static Sheet screens(Sheet sheet, Tally tally, CasingString string) {
    Map<String, Tally.Opening> openings = new LinkedHashMap<>();
    for (Tally.Opening opening : tally.openings()) openings.put(opening.entry(), opening);
    List<List<Shown>> rows = new ArrayList<>();
    for (Screen screen : string.screens()) {
      Tally.Opening opening = openings.get(screen.entry());
      Shown slot = opening == null ? BLANK : new Figure(opening.slot(), Scale.SLOT);
      rows.add(List.of(depth(screen.top()), depth(screen.bottom()), depth(screen.length()), slot));
    }
    return sheet.table(
        Phrase.of("Screen", "Rejilla"),
        List.of(
            Phrase.of("Top", "Tope"),
            Phrase.of("Bottom", "Fondo"),
            Phrase.of("Length", "Longitud"),
            Phrase.of("Slot", "Ranura")),
        rows);
  }

  /** The lowest piece first, as it was lowered. */
  private static Sheet tally(Sheet sheet, Tally tally, CasingString string) {
    Map<String, Tally.Joint> joints = new LinkedHashMap<>();
    for (Tally.Joint joint : tally.joints()) joints.put(joint.entry(), joint);
    List<List<Shown>> rows = new ArrayList<>();
    Length sum = Length.ZERO;
    for (Piece piece : string.pieces()) {
      Tally.Joint joint = joints.get(piece.entry());
      sum = sum.plus(piece.laying());
      Length below = sum;
      rows.add(List.of(
          name(piece, joint),
          joint == null ? BLANK : depth(joint.overall()),
          joint == null ? BLANK : depth(joint.bell()),
          depth(piece.laying()),
          depth(sum),
          string.bottom().<Shown>map(bottom -> depth(bottom.minus(below))).orElse(BLANK)));
    }
    return sheet.table(
        Phrase.of("Casing tally", "Relación de tubos"),
        List.of(
            Phrase.of("Piece", "Pieza"),
            Phrase.of("Overall", "Total"),
            Phrase.of("Bell", "Campana"),
            Phrase.of("Laying", "Útil"),
            Phrase.of("Sum", "Suma"),
            Phrase.of("Top at", "Tope a")),
        rows);
  }

  private static Phrase name(Piece piece, Tally.Joint joint) {
    return switch (piece.sort()) {
      case SUMP -> CasingEntries.SUMP.title();
      case SCREEN -> CasingEntries.SCREEN.title();
      case CUT_PIECE -> CasingEntries.CUT_PIECE.title();
      case JOINT -> joint == null
          ? CasingEntries.JOINT.title()
          : Phrase.of("Joint {0}", "Tubo {0}", Integer.toString(joint.number()));
    };
  }
}
