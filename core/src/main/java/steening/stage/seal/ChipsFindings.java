package steening.stage.seal;

import java.util.List;
import java.util.Optional;
import steening.bore.Bagged;
import steening.bore.Filled;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.reckoning.Outcome;
import steening.reckoning.Term;
import steening.well.Fill;

/** Chips that hang in the annulus instead of lying on the pack. */
final class ChipsFindings {
  /** Placed over reckoned below this is a bridge (a judgement; common practice, no source). */
  private static final double TOO_HIGH = 0.8;

  private ChipsFindings() {}

  static Optional<Finding> of(Sealing sealing) {
    Optional<Fill.Tag> tag = sealing.chips().lastTag().filter(t -> t.bags() > 0);
    Optional<Outcome> expected = tag.flatMap(t -> Sealing.chipsTop(sealing.annulus(), sealing.packTop(), t.poured()));
    Optional<Outcome> filled = tag.flatMap(t -> filled(sealing, t));
    if (expected.isEmpty() || filled.isEmpty()) return Optional.empty();
    Length top = (Length) expected.get().quantity(GroutTop.TOP.name());
    boolean high = filled.get().quantity("ratio").coherent() < TOO_HIGH
        && top.minus(tag.get().depth()).isMoreThan(Grouted.READ_TO);
    if (!high) return Optional.empty();
    Figure found = new Figure(tag.get().depth(), Scale.DEPTH);
    Figure should = new Figure(top, Scale.DEPTH);
    return Optional.of(Finding.of("seal.chips-bridged", Weight.LOOK, SealStage.NAME, Phrase.of(
            "After {0} the tape finds the chips at {1}; {2} was expected.",
            "Tras {0} la sonda halla los pellets a {1}; se esperaba {2}.",
            Bagged.said(tag.get().bags()), found, should))
        .comparing(found, should)
        .because(Phrase.of(
            "Chips bridge when they are poured fast or swell on the way.",
            "Los pellets hacen puente si se vierten rápido o se hinchan al bajar."))
        .so(Phrase.of(
            "Break it before more is poured, and sound again. No grout on a bridge.",
            "Rómpalo antes de verter más y sondee de nuevo. Nada de lechada sobre un puente."))
        .shownBy(expected.get()).from(List.of(tag.get().entry())));
  }

  private static Optional<Outcome> filled(Sealing sealing, Fill.Tag tag) {
    Term volume = Term.given("V", Phrase.of("chips poured", "pellets vertidos"), Scale.VOLUME, tag.poured());
    return Outcome.ifReckonable(() -> new Filled(sealing.annulus(), tag.depth(), sealing.packTop(), volume).outcome());
  }
}
