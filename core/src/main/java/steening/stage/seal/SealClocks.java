package steening.stage.seal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.journal.Moment;
import steening.language.Phrase;
import steening.quantity.Unit;
import steening.reckoning.Outcome;
import steening.stage.Clock;
import steening.stage.seal.placing.SetClock;
import steening.stage.seal.placing.WorkingTime;
import steening.well.Fill;
import steening.well.Well;

/** What has its time while the seal is placed: chips that fall, the batch in the pump, setting cement, a next look. */
final class SealClocks {
  private static final Phrase AGAIN =
      Phrase.of("sound the grout again, and top it up", "sondee otra vez la lechada y complétela");
  private static final long A_DAY = 24 * 60;
  private static final long SEVEN = 7 * 60;

  private SealClocks() {}

  static List<Clock> of(Well well) {
    List<Clock> clocks = new ArrayList<>();
    Sealing.of(well).flatMap(ChipsTiming::clock).ifPresent(clocks::add);
    Grouting grouting = well.get(Grouting.PART);
    boolean done = Grouted.isDone(well);
    if (!done) grouting.lastBatch().flatMap(SealClocks::workable).ifPresent(clocks::add);
    SetClock.of(well).ifPresent(clocks::add);
    if (done && !isSeenAgain(grouting)) tomorrow(well).ifPresent(clocks::add);
    return clocks;
  }

  /** How long a batch can be worked; none where only the label can tell. */
  static Optional<Outcome> workingTime(Batch batch) {
    return Outcome.ifReckonable(() -> WorkingTime.of(batch.recipe().material(), batch.temperature()));
  }

  private static Optional<Clock> workable(Batch batch) {
    return workingTime(batch).map(o -> new Clock(what(o), batch.at(), after(batch, o), Optional.of(o)));
  }

  private static Phrase what(Outcome time) {
    if (!time.answers().containsKey(WorkingTime.MOST.name())) {
      return Phrase.of("the batch stays workable", "la mezcla sigue trabajable");
    }
    return Phrase.of("the batch stays workable, {0} to {1}", "la mezcla sigue trabajable, {0} a {1}",
        time.figure(WorkingTime.LEAST.name()), time.figure(WorkingTime.MOST.name()));
  }

  private static Moment after(Batch batch, Outcome time) {
    return batch.at().plusMinutes((long) Math.floor(time.quantity(WorkingTime.LEAST.name()).in(Unit.MINUTE) + 1e-6));
  }

  private static boolean isSeenAgain(Grouting grouting) {
    return grouting.looks().stream().anyMatch(Grouting.Look::nextDay);
  }

  /** Seven in the morning of the day after the last of it. */
  private static Optional<Clock> tomorrow(Well well) {
    Optional<Moment> last = well.get(Fill.GROUT).pours().stream().map(Fill.Pour::at).reduce((a, b) -> b);
    return last.map(at -> new Clock(AGAIN, at, morningAfter(at), Optional.empty()));
  }

  private static Moment morningAfter(Moment at) {
    long minute = Math.floorDiv(at.epochMillis(), 60000L);
    long intoDay = Math.floorMod(minute + at.offsetMinutes(), A_DAY);
    return new Moment((minute - intoDay + A_DAY + SEVEN) * 60000, at.offsetMinutes());
  }
}
