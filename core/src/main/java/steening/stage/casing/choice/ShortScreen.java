package steening.stage.casing.choice;

import java.util.Optional;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.reckoning.Outcome;
import steening.stage.casing.CasingStage;
import steening.well.CasingString;
import steening.well.Plan;
import steening.well.Well;

/** The screen, as planned until the string is set, against the length that the rate takes. */
final class ShortScreen {
  private ShortScreen() {}

  /** A screen already set that is too short even when clear is told by its entrance velocity. */
  static Optional<Finding> finding(Well well) {
    Optional<Length> screen = Choice.screen(well);
    Optional<Outcome> reckoned = Choice.length(well);
    if (screen.isEmpty() || reckoned.isEmpty()) return Optional.empty();
    Outcome outcome = reckoned.get();
    boolean clear = !screen.get().isLessThan((Length) outcome.quantity(ScreenLength.LENGTH.name()));
    boolean half = !screen.get().isLessThan((Length) outcome.quantity(ScreenLength.HALF.name()));
    boolean set = well.get(CasingString.PART).isSet();
    if (half || set && !clear) return Optional.empty();
    String answer = clear ? ScreenLength.HALF.name() : ScreenLength.LENGTH.name();
    Figure has = ChoiceSheet.depth(screen.get());
    Figure rate = new Figure(well.get(Plan.PART).rate().orElseThrow(), Scale.FLOW);
    Phrase text = clear
        ? Phrase.of(
            "{0} of screen are enough for {1} while clear; half blocked it takes {2}.",
            "{0} de rejilla bastan para {1} si está limpia; medio tapada hacen falta {2}.",
            has, rate, outcome.figure(answer))
        : Phrase.of(
            "{0} of screen for {1}; by its open area {2} are needed.",
            "{0} de rejilla para {1}; por su área abierta hacen falta {2}.", has, rate, outcome.figure(answer));
    return Optional.of(Finding.of("casing.screen-short", clear ? Weight.NOTE : Weight.LOOK, CasingStage.NAME, text)
        .comparing(has, outcome.figure(answer))
        .because(Phrase.of(
            "Sources differ on the velocity; the working has the length by each.",
            "Las fuentes difieren en la velocidad; el cálculo da la longitud según cada una."))
        .so(Phrase.of(
            "A longer screen, more open area, or a lower rate.",
            "Una rejilla más larga, más área abierta o un gasto menor."))
        .shownBy(outcome));
  }
}
