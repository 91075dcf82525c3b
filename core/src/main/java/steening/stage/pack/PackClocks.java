package steening.stage.pack;

import java.util.List;
import java.util.Optional;
import steening.journal.Moment;
import steening.language.Phrase;
import steening.quantity.Length;
import steening.quantity.Unit;
import steening.reckoning.Outcome;
import steening.stage.Clock;
import steening.well.Fill;
import steening.well.Grade;
import steening.well.Well;

/** When the finest grains of the last bag have come down; the hole is taken as full to the ground. */
final class PackClocks {
  private PackClocks() {}

  /** None where nobody wrote the grade, or the tape was down already. */
  static List<Clock> of(Well well) {
    Fill pack = well.get(Fill.PACK);
    boolean sealed = well.get(Fill.CHIPS).isBegun() || well.get(Fill.GROUT).isBegun();
    if (pack.bagsSinceTag() == 0 || sealed) return List.of();
    Moment last = pack.pours().get(pack.pours().size() - 1).at();
    Optional<Grade> grade = well.get(Grade.PART);
    return grade.flatMap(Grade::finest).flatMap(finest -> fall(well, finest)).map(o -> new Clock(
        Phrase.of(
            "the last grains of {0} are down: tape not before", "los últimos granos de {0} llegaron: sonda no antes",
            grade.get().text()),
        last, last.plusMinutes((long) Math.ceil(o.quantity(GrainFall.WAIT.name()).in(Unit.MINUTE))), Optional.of(o)))
        .stream().toList();
  }

  private static Optional<Outcome> fall(Well well, Length finest) {
    return Pouring.of(well).flatMap(PackExpectations::top).filter(t -> t.isMoreThan(Length.ZERO))
        .flatMap(top -> Outcome.ifReckonable(() -> GrainFall.of(finest, top)));
  }
}
