package steening.stage.casing;

import static steening.stage.casing.CasingFindings.depth;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.language.Phrase;
import steening.quantity.Length;
import steening.well.CasingString;
import steening.well.Screen;
import steening.well.Well;

/** Whether the screen is held in the middle. A crew that enters no centralisers is not asked for them. */
final class CentraliserFindings {
  private CentraliserFindings() {}

  static List<Finding> of(Well well) {
    CasingString string = well.get(CasingString.PART);
    List<Centralisers.Centraliser> all = well.get(Centralisers.PART).all();
    List<Finding> findings = new ArrayList<>();
    if (all.isEmpty() || !string.isSet()) return findings;
    lower(string.bottom().orElseThrow(), all).ifPresent(findings::add);
    notHeld(string.screens(), all).ifPresent(findings::add);
    return findings;
  }

  private static Optional<Finding> lower(Length bottom, List<Centralisers.Centraliser> all) {
    return all.stream().filter(c -> c.depth().isMoreThan(bottom.plus(ToCome.AGREES))).findFirst().map(c ->
        Finding.of("casing.centraliser-off-string", Weight.LOOK, CasingStage.NAME, Phrase.of(
                "A centraliser is entered at {0}; the string ends at {1}.",
                "Hay un centralizador registrado a {0}; la columna termina a {1}.", depth(c.depth()), depth(bottom)))
            .comparing(depth(c.depth()), depth(bottom))
            .because(Phrase.of(
                "A slip in the depth, or a piece not entered.",
                "Un error en la profundidad, o una pieza sin registrar."))
            .so(Phrase.of("Correct the depth below ground.", "Corrija la profundidad bajo el terreno."))
            .from(List.of(c.entry())));
  }

  /** One above the highest screen and one below the lowest: common practice, no source. */
  private static Optional<Finding> notHeld(List<Screen> screens, List<Centralisers.Centraliser> all) {
    Optional<Length> top = screens.stream().map(Screen::top).min(Length::compareTo);
    Optional<Length> bottom = screens.stream().map(Screen::bottom).max(Length::compareTo);
    if (top.isEmpty() || bottom.isEmpty()) return Optional.empty();
    boolean above = all.stream().anyMatch(c -> !c.depth().isMoreThan(top.get()));
    boolean below = all.stream().anyMatch(c -> !c.depth().isLessThan(bottom.get()));
    if (above && below) return Optional.empty();
    Phrase text = above
        ? Phrase.of(
            "No centraliser below the screen, which ends at {0}.",
            "Sin centralizador debajo de la rejilla, que termina a {0}.", depth(bottom.get()))
        : Phrase.of(
            below ? "No centraliser above the screen, which begins at {0}."
                : "The screen, from {0} to {1}, has no centraliser above and none below.",
            below ? "Sin centralizador encima de la rejilla, que empieza a {0}."
                : "La rejilla, de {0} a {1}, no tiene centralizador ni encima ni debajo.",
            depth(top.get()), depth(bottom.get()));
    return Optional.of(Finding.of("casing.screen-not-centred", Weight.NOTE, CasingStage.NAME, text)
        .because(Phrase.of(
            "One above and one below is common practice (no source): against the wall, the pack is thin on one side.",
            "Uno encima y otro debajo es práctica común (sin fuente): contra la pared, el filtro queda delgado."))
        .so(Phrase.of(
            "Enter those that are missing, or keep it in mind when the sand is judged.",
            "Registre los que faltan, o téngalo presente al juzgar la arena."))
        .from(all.stream().map(Centralisers.Centraliser::entry).toList()));
  }
}
