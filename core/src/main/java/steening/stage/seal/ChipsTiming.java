package steening.stage.seal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.bore.Bagged;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.journal.Moment;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Measure;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Outcome;
import steening.stage.Clock;
import steening.well.Fill;

/**
 * Whether chips were poured slowly enough, and given the time to land. Entries of the same minute say nothing of it:
 * they were written down together.
 */
final class ChipsTiming {
  /** A bag of 50 lb in not less than this (memory). */
  private static final double MINUTES_A_BAG = 3;

  private ChipsTiming() {}

  static List<Finding> of(Sealing sealing) {
    List<Finding> findings = new ArrayList<>();
    fast(sealing.chips()).ifPresent(findings::add);
    early(sealing).ifPresent(findings::add);
    return findings;
  }

  /** The later of two lots had at most the time between them. */
  private static Optional<Finding> fast(Fill chips) {
    for (int i = 1; i < chips.pours().size(); i++) {
      Fill.Pour pour = chips.pours().get(i);
      double minutes = pour.at().minutesSince(chips.pours().get(i - 1).at());
      if (minutes > 0 && minutes < MINUTES_A_BAG * pour.bags()) return Optional.of(fast(pour, minutes));
    }
    return Optional.empty();
  }

  private static Finding fast(Fill.Pour pour, double minutes) {
    Figure took = minutes(minutes);
    Figure least = minutes(MINUTES_A_BAG * pour.bags());
    return Finding.of("seal.chips-fast", Weight.LOOK, SealStage.NAME, Phrase.of(
            "{0} of chips went in within {1}; not less than {2} is advised.",
            "{0} de pellets entraron en {1}; se aconseja no menos de {2}.", Bagged.said(pour.bags()), took, least))
        .comparing(took, least)
        .because(Phrase.of(
            "Chips that arrive in a crowd wedge between hole and casing.",
            "Los pellets que llegan juntos se acuñan entre barreno y ademe."))
        .so(Phrase.of(
            "Sound now, before more goes in; pour the next bag over 3 to 5 minutes.",
            "Sondee ahora, antes de verter más; vierta el próximo saco en 3 a 5 minutos."))
        .from(List.of(pour.entry()));
  }

  private static Optional<Finding> early(Sealing sealing) {
    Fill chips = sealing.chips();
    if (chips.pours().isEmpty()) return Optional.empty();
    Fill.Pour pour = chips.pours().get(chips.pours().size() - 1);
    Optional<Fill.Tag> tag = chips.lastTag().filter(t -> t.bags() == chips.bags());
    if (tag.isEmpty()) return Optional.empty();
    double waited = tag.get().at().minutesSince(pour.at());
    return landing(sealing).filter(o -> waited > 0 && waited < o.quantity("wait").in(Unit.MINUTE))
        .map(o -> Finding.of("seal.chips-tape-early", Weight.LOOK, SealStage.NAME, Phrase.of(
                "The tape went down {0} after the last bag; the last chips may take {1} to land.",
                "La sonda bajó {0} después del último saco; los últimos pellets pueden tardar {1} en llegar.",
                minutes(waited), o.figure("wait")))
            .comparing(minutes(waited), o.figure("wait"))
            .so(Phrase.of("Sound again before grout goes on them.", "Sondee de nuevo antes de la lechada."))
            .shownBy(o).from(List.of(tag.get().entry())));
  }

  /** The fall from the ground to where they lie: nobody measures where the water stands in the annulus. */
  static Optional<Outcome> landing(Sealing sealing) {
    return Optional.of(sealing.packTop()).filter(t -> t.isMoreThan(Length.ZERO))
        .flatMap(top -> Outcome.ifReckonable(() -> ChipsFall.of(top)));
  }

  /** Before that the tape tells nothing; none once it was down. */
  static Optional<Clock> clock(Sealing sealing) {
    Fill chips = sealing.chips();
    if (chips.bagsSinceTag() == 0 || sealing.grout().isBegun()) return Optional.empty();
    Moment last = chips.pours().get(chips.pours().size() - 1).at();
    return landing(sealing).map(o -> new Clock(
        Phrase.of("the last chips have landed: tape not before", "los últimos pellets llegaron: sonda no antes"), last,
        last.plusMinutes((long) Math.ceil(o.quantity(ChipsFall.WAIT.name()).in(Unit.MINUTE))), Optional.of(o)));
  }

  private static Figure minutes(double minutes) {
    return new Figure(Measure.of(minutes, Unit.MINUTE), Scale.MINUTES);
  }
}
