package steening.stage.development;

import java.util.Optional;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Scale;
import steening.reckoning.Outcome;
import steening.well.PumpingTest;
import steening.well.Well;

/** Sand that more hours will not cure. */
final class SandFinding {
  private SandFinding() {}

  static Optional<Finding> of(Well well) {
    if (well.get(PumpingTest.PART).started().isPresent()) return Optional.empty();
    return SandCourse.of(well.get(Development.PART)).filter(c -> c.isFound(SandDecay.NOT_TIME)).map(SandFinding::of);
  }

  private static Finding of(SandCourse course) {
    Outcome decay = course.decay().orElseThrow();
    SandSeries all = course.all();
    Figure now = new Figure(all.content().get(all.size() - 1), Scale.CONCENTRATION);
    Figure pumped = new Figure(all.minutes().get(all.size() - 1), Scale.HOURS);
    return Finding.of("development.not-a-matter-of-time", Weight.LOOK, DevelopmentStage.NAME, Phrase.of(
            "{0} of sand after {1}; {2}: not a matter of time.",
            "{0} de arena tras {1}; {2}: no es cuestión de tiempo.",
            now, pumped, course(decay)))
        .comparing(now, new Figure(SandReadings.LIMIT, Scale.CONCENTRATION))
        .because(Phrase.of(
            "Slot or pack too coarse for the sand, a gap in the pack, or too much rate for the screen.",
            "Ranura o filtro muy gruesos para la arena, un hueco en el filtro, o demasiado gasto para la rejilla."))
        .so(Phrase.of(
            "Measure once at half the rate: sand that falls to a quarter is a matter of velocity or pack. Sound the"
                + " pack and hold the sieve against slot and pack.",
            "Mida una vez a medio gasto: si la arena baja a un cuarto, es cosa de velocidad o filtro. Sondee el filtro"
                + " y compare el tamizado con ranura y filtro."))
        .shownBy(decay)
        .from(course.entries());
  }

  private static Phrase course(Outcome decay) {
    boolean early = decay.answers().containsKey(SandDecay.EARLY.name());
    if (!decay.answers().containsKey(SandDecay.LATE.name())) {
      return Phrase.of("it no longer falls", "ya no baja");
    }
    Figure late = decay.figure(SandDecay.LATE.name());
    boolean lengthening = early
        && decay.quantity(SandDecay.LATE.name()).coherent() > decay.quantity(SandDecay.EARLY.name()).coherent();
    return lengthening
        ? Phrase.of("half-life {0} and lengthening", "vida media {0} y creciendo", late)
        : Phrase.of("half-life {0}", "vida media {0}", late);
  }
}
