package steening.stage.casing;

import static steening.stage.casing.CasingFindings.depth;
import static steening.stage.casing.CasingFindings.differ;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Outcome;
import steening.well.CasingString;
import steening.well.Piece;
import steening.well.Plan;
import steening.well.Screen;
import steening.well.Well;

/** The string against the plan. */
final class PlanFindings {
  private static final Length AGREES = ToCome.AGREES;

  /** Half a slot number either way is the rounding between inches and millimetres. */
  private static final Length SAME_SLOT = Length.of(0.6, Unit.SLOT);

  private static final long INCHES_A_FOOT = 12;

  private PlanFindings() {}

  static List<Finding> of(Well well) {
    Plan plan = well.get(Plan.PART);
    CasingString string = well.get(CasingString.PART);
    if (!plan.isMade() || string.pieces().isEmpty()) return List.of();
    Optional<Finding> length = screenLength(plan, string);
    Optional<Finding> bottom = bottom(well, plan, string);
    List<Finding> findings = new ArrayList<>(length.stream().toList());
    bottom.ifPresent(findings::add);
    // What follows from a screen or a string of the wrong length is not said again.
    if (findings.isEmpty()) screenEnds(plan, string).ifPresent(findings::add);
    if (length.isEmpty()) entranceVelocity(well, plan, string).ifPresent(findings::add);
    findings.addAll(slots(plan, well.get(Tally.PART)));
    return findings;
  }

  /** Known as soon as something stands on the screen. */
  private static Optional<Finding> screenLength(Plan plan, CasingString string) {
    Optional<Length> planned = plan.length(Plan.SCREEN_BOTTOM).flatMap(b -> plan.length(Plan.SCREEN_TOP).map(b::minus));
    Length lowered = string.length(Piece.Sort.SCREEN);
    boolean whole = string.isSet() || string.count(Piece.Sort.JOINT) > 0 || string.count(Piece.Sort.CUT_PIECE) > 0;
    if (planned.isEmpty() || !whole || !differ(lowered, planned.get(), AGREES)) return Optional.empty();
    boolean twelfth = !differ(lowered.times(INCHES_A_FOOT), planned.get(), AGREES);
    Length stickUp = string.stickUp().or(() -> plan.length(Plan.STICK_UP)).orElse(Length.ZERO);
    Finding finding = look(
            "casing.screen-length",
            Phrase.of(
                "{0} of screen lowered, {1} planned.", "Se bajaron {0} de rejilla; lo planeado son {1}.",
                depth(lowered), depth(planned.get())))
        .comparing(depth(lowered), depth(planned.get()))
        .so(Phrase.of("Measure the screen, or correct the entry.", "Mida la rejilla o corrija el registro."))
        .shownBy(StringLength.of(string, stickUp))
        .from(screens(string));
    return Optional.of(twelfth ? finding.because(Phrase.of("Inches for feet.", "Pulgadas por pies.")) : finding);
  }

  private static Optional<Finding> bottom(Well well, Plan plan, CasingString string) {
    Optional<Length> planned = plan.stringBottom();
    Optional<Length> ends = string.bottom();
    if (ends.isEmpty() || planned.isEmpty() || !differ(ends.get(), planned.get(), AGREES)) return Optional.empty();
    Length whole = planned.get().plus(plan.length(Plan.STICK_UP).orElse(Length.ZERO));
    return Optional.of(look(
            "casing.bottom-off-plan",
            Phrase.of(
                "The string ends at {0}, planned is {1}. It adds up to {2}, planned is {3}.",
                "La columna termina a {0}; lo planeado es {1}. Suma {2}; lo planeado es {3}.",
                depth(ends.get()), depth(planned.get()), depth(string.length()), depth(whole)))
        .comparing(depth(ends.get()), depth(planned.get()))
        .because(differ(whole, string.length(), AGREES)
            ? Phrase.of(
                "A piece mismeasured, miscounted or left out.", "Una pieza mal medida, mal contada o sin registrar.")
            : Phrase.of("It hangs on a ledge, or the hole caved.", "Cuelga en un escalón, o el barreno se derrumbó."))
        .so(Phrase.of(
            "Check the tally, and see where the screen stands before anything is placed.",
            "Revise la relación y vea dónde queda la rejilla antes de colocar nada."))
        .shownBy(StringLength.of(string, string.length().minus(ends.get())))
        .from(well.get(Tally.PART).setting().map(Tally.Setting::entry).stream().toList()));
  }

  /** The string may be as long as planned with the screen in another place of it. */
  private static Optional<Finding> screenEnds(Plan plan, CasingString string) {
    List<Screen> screens = string.screens();
    Optional<Length> plannedTop = plan.length(Plan.SCREEN_TOP);
    Optional<Length> plannedBottom = plan.length(Plan.SCREEN_BOTTOM);
    if (screens.isEmpty() || plannedTop.isEmpty() || plannedBottom.isEmpty()) return Optional.empty();
    Length top = string.screenTop().orElseThrow();
    Length bottom = screens.stream().map(Screen::bottom).max(Length::compareTo).orElseThrow();
    if (!differ(top, plannedTop.get(), AGREES) && !differ(bottom, plannedBottom.get(), AGREES)) return Optional.empty();
    return Optional.of(look(
            "casing.screen-off-plan",
            Phrase.of(
                "The screen stands from {0} to {1}, planned is {2} to {3}.",
                "La rejilla queda de {0} a {1}; lo planeado es de {2} a {3}.",
                depth(top), depth(bottom), depth(plannedTop.get()), depth(plannedBottom.get())))
        .comparing(depth(top), depth(plannedTop.get()))
        .so(Phrase.of("See the log: is the screen in the sand?", "Vea el registro: ¿queda la rejilla en la arena?"))
        .from(screens(string)));
  }

  private static List<Finding> slots(Plan plan, Tally tally) {
    Optional<Length> planned = plan.length(Plan.SLOT);
    return tally.openings().stream()
        .filter(o -> planned.isPresent() && differ(o.slot(), planned.get(), SAME_SLOT))
        .map(o -> look(
                "casing.slot-off-plan",
                Phrase.of(
                    "The screen's slot is {0}, planned is {1}.", "La ranura de la rejilla es {0}; lo planeado es {1}.",
                    new Figure(o.slot(), Scale.SLOT), new Figure(planned.get(), Scale.SLOT)))
            .comparing(new Figure(o.slot(), Scale.SLOT), new Figure(planned.get(), Scale.SLOT))
            .so(Phrase.of(
                "Hold the slot against the pack: it must keep back at least 90 % of it.",
                "Compare la ranura con el filtro: debe retener por lo menos 90 %."))
            .from(List.of(o.entry())))
        .toList();
  }

  private static Optional<Finding> entranceVelocity(Well well, Plan plan, CasingString string) {
    Optional<Outcome> reckoned = EntranceVelocity.at(well);
    if (reckoned.isEmpty()) return Optional.empty();
    Outcome outcome = reckoned.get();
    Quantity most = EntranceVelocity.limit(plan);
    if (outcome.quantity("velocity").coherent() <= most.coherent()) return Optional.empty();
    Figure limit = new Figure(most, Scale.ENTRANCE_VELOCITY);
    return Optional.of(look(
            "casing.entrance-velocity",
            Phrase.of(
                "At {0} the water enters the screen at {1}; {2} is not to be exceeded.",
                "Con {0} el agua entra a la rejilla a {1}; no se debe rebasar {2}.",
                new Figure(plan.rate().get(), Scale.FLOW), outcome.figure("velocity"), limit))
        .comparing(outcome.figure("velocity"), limit)
        .so(Phrase.of("A longer screen, or a lower rate.", "Una rejilla más larga o un gasto menor."))
        .shownBy(outcome)
        .from(screens(string)));
  }

  private static List<String> screens(CasingString string) {
    return string.pieces().stream().filter(p -> p.sort() == Piece.Sort.SCREEN).map(Piece::entry).toList();
  }

  private static Finding look(String code, Phrase text) {
    return Finding.of(code, Weight.LOOK, CasingStage.NAME, text);
  }
}
