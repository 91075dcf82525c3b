package steening.stage.seal;

import java.util.List;
import java.util.Optional;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Outcome;
import steening.stage.seal.placing.WorkingTime;

/** A stop between two batches that was longer than grout in the tremie stays workable, and nobody moved the tremie. */
final class Stopped {
  private Stopped() {}

  static Optional<Finding> of(Sealing sealing) {
    List<Batch> batches = sealing.grouting().batches();
    Optional<Finding> found = Optional.empty();
    for (int i = 1; i < batches.size(); i++) {
      Optional<Finding> stop = between(sealing, batches.get(i - 1), batches.get(i));
      if (stop.isPresent()) found = stop;
    }
    return found;
  }

  private static Optional<Finding> between(Sealing sealing, Batch before, Batch after) {
    Optional<Outcome> time = SealClocks.workingTime(before);
    if (time.isEmpty() || before.returned().orElse(false) || isNewLift(sealing, before, after)) return Optional.empty();
    String answer = time.get().answers().containsKey(WorkingTime.MOST.name())
        ? WorkingTime.MOST.name() : WorkingTime.LEAST.name();
    Quantity passed = Measure.of(after.at().minutesSince(before.at()), Unit.MINUTE);
    if (passed.coherent() <= time.get().quantity(answer).coherent()) return Optional.empty();
    Figure stood = new Figure(passed, Scale.MINUTES);
    Figure workable = time.get().figure(answer);
    return Optional.of(Finding.of("seal.stopped", Weight.LOOK, SealStage.NAME, Phrase.of(
            "{0} between two batches; this grout stays workable for {1}.",
            "{0} entre dos mezclas; esta lechada es trabajable {1}.", stood, workable))
        .comparing(stood, workable)
        .because(Phrase.of(
            "What stood in hose and tremie may have stiffened, and the top of the column with it.",
            "Lo que quedó en manguera y tremie pudo endurecerse, y con ello el tope de la columna."))
        .so(Phrase.of(
            "After a stop lift the tremie clear, pump it full of fresh grout, then lower it in (COMAR 26.04.04.20)."
                + " If that was done, enter the tremie, between the two batches.",
            "Tras una parada levante la tremie, llénela de lechada fresca y luego métala (COMAR 26.04.04.20). Si así"
                + " se hizo, registre la tremie entre ambas mezclas."))
        .shownBy(time.get()).from(List.of(before.entry(), after.entry())));
  }

  /** The tremie was handled between them, or the first had been left to set. */
  private static boolean isNewLift(Sealing sealing, Batch before, Batch after) {
    boolean moved = sealing.tremie().runs().stream()
        .anyMatch(r -> r.at().isAfter(before.at()) && !r.at().isAfter(after.at()));
    boolean set = sealing.grout().tags().stream()
        .anyMatch(t -> sealing.isNextDay(t) && t.at().isAfter(before.at()) && !t.at().isAfter(after.at()));
    return moved || set;
  }
}
