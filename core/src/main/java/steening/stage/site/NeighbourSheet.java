package steening.stage.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.ground.Outlook;
import steening.language.Phrase;
import steening.language.Shown;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.reckoning.Outcome;
import steening.stage.Sheet;
import steening.well.Neighbours;
import steening.well.Well;

/** The neighbours' logs and what they say of the sand here. */
final class NeighbourSheet {
  private static final Phrase BLANK = Phrase.same("");

  private NeighbourSheet() {}

  static Sheet on(Sheet sheet, Well well) {
    Sheet with = sheet;
    for (Outlook outlook : Outlook.all(well)) with = outlook(with, outlook);
    List<List<Shown>> rows = new ArrayList<>();
    for (Neighbours.Log log : well.get(Neighbours.PART).logs()) rows.add(row(log));
    return with.table(
        Phrase.of("Neighbours' logs", "Registros de los vecinos"),
        List.of(
            NeighbourEntries.WELL.label(), Phrase.of("distance", "distancia"), Phrase.of("ground", "terreno"),
            Phrase.of("sand", "arena"), NeighbourEntries.TOP.label(),
            Phrase.of("top, elevation", "tope, cota"), Phrase.of("level at rest", "nivel estático"),
            Phrase.of("yield", "gasto")),
        rows);
  }

  private static Sheet outlook(Sheet sheet, Outlook outlook) {
    Phrase label = Phrase.of("top of {0}", "tope de {0}", outlook.name());
    if (outlook.working().isEmpty()) return sheet.line(label, outlook.said());
    Outcome working = outlook.working().get();
    Sheet with = sheet.line(label, outlook.said(), working);
    if (working.shown("depth-alike").isEmpty()) return with;
    return with.line(
        Phrase.of("the same, all wells weighed alike", "lo mismo, todos los pozos por igual"),
        Phrase.of(
            "{0}, 9 times in 10 between {1} and {2}", "{0}, 9 de 10 veces entre {1} y {2}",
            working.figure("depth-alike"), working.figure("shallow-alike"), working.figure("deep-alike")),
        working);
  }

  private static List<Shown> row(Neighbours.Log log) {
    return List.of(
        Phrase.same(log.well()),
        new Figure(log.distance(), Scale.FAR),
        depth(log.elevation()),
        log.found()
            ? Phrase.same(Integer.toString(log.sand()))
            : Phrase.of("{0}: none", "{0}: no hay", Integer.toString(log.sand())),
        depth(log.top()),
        depth(log.topElevation()),
        depth(log.atRest()),
        log.yield().<Shown>map(rate -> new Figure(rate, Scale.FLOW)).orElse(BLANK));
  }

  private static Shown depth(Optional<Length> depth) {
    return depth.<Shown>map(d -> new Figure(d, Scale.DEPTH)).orElse(BLANK);
  }
}
