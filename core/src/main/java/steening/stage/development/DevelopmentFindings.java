package steening.stage.development;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.language.Phrase;
import steening.quantity.Dimension;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.reckoning.Outcome;
import steening.well.CasingString;
import steening.well.PumpingTest;
import steening.well.Well;

/** Whether the well is clean enough, has stopped opening up, and has kept its pack. */
final class DevelopmentFindings {
  /** Specific capacity that still grows by more each cycle is not done growing (common practice, no source). */
  private static final double GROWING = 1.05;

  private DevelopmentFindings() {}

  static List<Finding> of(Well well) {
    List<Finding> findings = new ArrayList<>();
    adrift(well).ifPresent(findings::add);
    SetFindings.of(well).ifPresent(findings::add);
    CureFindings.of(well).ifPresent(findings::add);
    sand(well).ifPresent(findings::add);
    SandFinding.of(well).ifPresent(findings::add);
    SettledFinding.of(well).ifPresent(findings::add);
    rising(well).ifPresent(findings::add);
    atScreen(well).ifPresent(findings::add);
    return findings;
  }

  private static Optional<Finding> adrift(Well well) {
    List<String> entries = well.get(Development.PART).adrift();
    if (entries.isEmpty()) return Optional.empty();
    return Optional.of(found(
            "development.datum-unknown", Weight.LOOK,
            Phrase.of(
                "Readings from the top of casing before the stick-up was known: {0}. They are kept aside.",
                "Lecturas desde la boca del ademe antes de conocerse su altura sobre el terreno: {0}. Quedan aparte.",
                Integer.toString(entries.size())))
        .so(Phrase.of(
            "Enter the stick-up, at an hour before these readings.",
            "Registre la altura sobre el terreno, con hora anterior a estas lecturas."))
        .from(entries));
  }

  private static Optional<Finding> sand(Well well) {
    PumpingTest test = well.get(PumpingTest.PART);
    if (test.started().isEmpty()) return Optional.empty();
    List<Development.Cycle> last = SandReadings.last(well.get(Development.PART), test.started());
    if (last.isEmpty()) return Optional.empty();
    Outcome mean = SandReadings.mean(last);
    if (mean.quantity("mean").coherent() <= SandReadings.LIMIT.coherent()) return Optional.empty();
    Figure limit = new Figure(SandReadings.LIMIT, Scale.CONCENTRATION);
    return Optional.of(found(
            "development.sand", Weight.LOOK,
            Phrase.of(
                "The test began with {0} of sand, the mean of {1} readings; {2} is the limit for a house.",
                "La prueba empezó con {0} de arena, media de {1} lecturas; {2} es el límite para una casa.",
                mean.figure("mean"), Integer.toString(last.size()), limit))
        .comparing(mean.figure("mean"), limit)
        .because(Phrase.of(
            "Development ended too soon, or the slot or the pack is too coarse for the sand.",
            "El desarrollo terminó antes de tiempo, o la ranura o el filtro son muy gruesos para la arena."))
        .so(Phrase.of(
            "Go on developing. Sand that does not fall from cycle to cycle is not a matter of time.",
            "Siga desarrollando. Si la arena no baja de un ciclo a otro, no es cuestión de tiempo."))
        .shownBy(mean)
        .from(last.stream().map(Development.Cycle::entry).toList()));
  }

  private static Optional<Finding> rising(Well well) {
    List<CycleCapacity> all = CycleCapacity.all(well);
    if (all.size() < 2) return Optional.empty();
    CycleCapacity last = all.get(all.size() - 1);
    CycleCapacity before = all.get(all.size() - 2);
    double ratio = last.size().coherent() / before.size().coherent();
    if (ratio <= GROWING) return Optional.empty();
    return Optional.of(found(
            "development.still-rising", Weight.NOTE,
            Phrase.of(
                "Specific capacity rose by {0} in the last cycle, from {1} to {2}.",
                "El caudal específico subió {0} en el último ciclo, de {1} a {2}.",
                new Figure(new Measure(Dimension.NUMBER, ratio - 1), Scale.SHARE), capacity(before.size()),
                capacity(last.size())))
        .comparing(capacity(last.size()), capacity(before.size()))
        .so(Phrase.of(
            "Keep going: the well is still opening up. Under 5 % a cycle it is developed.",
            "Siga: el pozo aún se está abriendo. Con menos de 5 % por ciclo está desarrollado."))
        .shownBy(last.working())
        .from(List.of(before.cycle().entry(), last.cycle().entry())));
  }

  private static Optional<Finding> atScreen(Well well) {
    Optional<Length> screen = well.get(CasingString.PART).screenTop();
    List<Development.Cycle> levels =
        well.get(Development.PART).cycles().stream().filter(c -> c.level().isPresent()).toList();
    if (screen.isEmpty() || levels.isEmpty()) return Optional.empty();
    Development.Cycle last = levels.get(levels.size() - 1);
    Length level = last.level().orElseThrow();
    if (!level.isMoreThan(screen.get())) return Optional.empty();
    return Optional.of(found(
            "development.level-in-screen", Weight.LOOK,
            Phrase.of(
                "The level was drawn down to {0}, below the top of the screen, {1}.",
                "El nivel se abatió hasta {0}, por debajo del tope de la rejilla, {1}.", depth(level),
                depth(screen.get())))
        .comparing(depth(level), depth(screen.get()))
        .so(Phrase.of(
            "Lower the rate until the water is clean: a full hole outside presses on an empty pipe.",
            "Baje el gasto hasta que el agua salga limpia: el barreno lleno presiona el tubo vacío."))
        .from(List.of(last.entry())));
  }

  private static Finding found(String code, Weight weight, Phrase text) {
    return Finding.of(code, weight, DevelopmentStage.NAME, text);
  }

  private static Figure depth(Length length) {
    return new Figure(length, Scale.DEPTH);
  }

  private static Figure capacity(Quantity quantity) {
    return new Figure(quantity, Scale.SPECIFIC_CAPACITY);
  }
}
