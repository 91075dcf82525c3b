package steening.stage.seal;

import java.util.List;
import java.util.Optional;
import steening.bore.Bagged;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.reckoning.Outcome;
import steening.well.Fill;
import steening.well.Losses;

/** Grout that is not where it should be for what was pumped. */
final class PlacingFindings {
  /** A column that falls by more than this share of itself is being lost (common practice, no source). */
  private static final double FALLS_AWAY = 0.05;

  private PlacingFindings() {}

  static Optional<Finding> of(Sealing sealing, Losses losses) {
    if (!sealing.grout().isBegun()) return Optional.empty();
    if (sealing.grout().bagsSinceTag() > 0) return noReturn(sealing);
    return Falling.of(sealing).flatMap(Falling::loss)
        .or(() -> NoRise.of(sealing))
        .or(() -> sank(sealing))
        .or(() -> Overrun.of(sealing, losses).map(f -> held(sealing, losses).map(f::because).orElse(f)))
        .or(() -> shortOfTop(sealing));
  }

  /** What took more grout than it should, once the top was seen to hold. */
  private static Optional<Phrase> held(Sealing sealing, Losses losses) {
    return Falling.of(sealing).map(f -> {
      Phrase held = Phrase.of(
          "A washout, no loss: with the pump off the top fell {0} in {1}.",
          "Una socavación, no una pérdida: con la bomba parada el tope bajó {0} en {1}.",
          f.fall().figure(GroutFall.FALL.name()), new Figure(f.minutes(), Scale.MINUTES));
      return losses.between(f.after(), sealing.bottom()).stream().findFirst()
          .map(zone -> Phrase.of(
              "{0} Mud was lost from {1} to {2} while drilling: likely there.",
              "{0} Al perforar se perdió lodo de {1} a {2}: es probable ahí.",
              held, new Figure(zone.from(), Scale.DEPTH), new Figure(zone.to(), Scale.DEPTH)))
          .orElse(held);
    });
  }

  /** As much as the plan takes is pumped, and nobody has seen it come back. */
  private static Optional<Finding> noReturn(Sealing sealing) {
    Optional<Batch> last = sealing.grouting().lastBatch();
    boolean returned = last.flatMap(Batch::returned).orElse(false);
    Optional<Outcome> planned = sealing.planned(Bagged.NO_OVERAGE);
    if (last.isEmpty() || returned || planned.isEmpty() || !sealing.isPlanUsed()) return Optional.empty();
    Figure pumped = new Figure(sealing.grout().volume(), Scale.LIQUID);
    return Optional.of(Finding.of("seal.no-return", Weight.LOOK, SealStage.NAME, Phrase.of(
            "{0} in, {1}; the plan takes {2}, and no grout has come back.",
            "Van {0}, {1}; el plan lleva {2} y la lechada no ha regresado.",
            Bagged.said(sealing.grout().bags()), pumped, planned.get().figure("liquid")))
        .comparing(pumped, planned.get().figure("liquid"))
        .because(Phrase.of(
            "A washout, or grout lost into the ground.", "Una socavación, o lechada que se pierde en el terreno."))
        .so(Phrase.of(
            "Tag now, before the next batch. Then stop the pump a quarter of an hour: grout that keeps falling is"
                + " being lost.",
            "Sondee ahora, antes de la próxima mezcla. Luego pare la bomba un cuarto de hora: si sigue bajando, se"
                + " está perdiendo."))
        .shownBy(planned.get()).from(List.of(last.get().entry())));
  }

  /** All that the hole should take is in, or a night has passed, and the top is not up. */
  private static Optional<Finding> shortOfTop(Sealing sealing) {
    Optional<Fill.Tag> tag = sealing.grout().lastTag().filter(t -> t.bags() > 0 && sealing.isDeep(t));
    if (tag.isEmpty() || !(sealing.isPlanUsed() || sealing.isNextDay(tag.get()))) return Optional.empty();
    return StillNeeded.above(sealing, tag.get().depth(), sealing.filled(tag.get())).map(left -> {
      Figure found = new Figure(tag.get().depth(), Scale.DEPTH);
      Figure planned = new Figure(sealing.top(), Scale.DEPTH);
      return Finding.of("seal.short", Weight.LOOK, SealStage.NAME, Phrase.of(
              "The grout stands at {0}; it is to stand at {1}.", "La lechada está a {0}; debe llegar a {1}.",
              found, planned))
          .comparing(found, planned)
          .so(Phrase.of(
              "{0} and {1} of water more.", "Faltan {0} y {1} de agua.",
              Bagged.said(left.quantity("bags")), left.figure("water")))
          .shownBy(left).from(List.of(tag.get().entry()));
    });
  }

  /** The next day's tape is deeper than where the grout had been. */
  private static Optional<Finding> sank(Sealing sealing) {
    Optional<Fill.Tag> next = sealing.grout().lastTag().filter(sealing::isNextDay);
    Optional<Length> before = next.flatMap(t -> stoodAt(sealing, t));
    if (before.isEmpty()) return Optional.empty();
    Length fall = next.get().depth().minus(before.get());
    if (!fall.isMoreThan(Grouted.READ_TO)) return Optional.empty();
    double column = sealing.bottom().minus(before.get()).coherent();
    Phrase cause = fall.coherent() > FALLS_AWAY * column
        ? Phrase.of("That is more than 5 % of the column: it may be running into the ground.",
            "Es más de 5 % de la columna: puede estar yéndose al terreno.")
        : Phrase.of("Grout settles as it sets.", "La lechada se asienta al fraguar.");
    Figure found = new Figure(next.get().depth(), Scale.DEPTH);
    Finding finding = Finding.of("seal.sank", Weight.LOOK, SealStage.NAME, Phrase.of(
            "Overnight the top of the grout fell {0}, to {1}.",
            "De un día para otro el tope de la lechada bajó {0}, a {1}.",
            new Figure(fall, Scale.DEPTH), found))
        .comparing(found, new Figure(before.get(), Scale.DEPTH)).because(cause)
        .so(Phrase.of("Top it up, and look again the day after.", "Complétela y revise otra vez al día siguiente."))
        .from(List.of(next.get().entry()));
    return Optional.of(StillNeeded.above(sealing, next.get().depth(), Optional.empty())
        .map(left -> finding.shownBy(left).so(Phrase.of(
            "Top it up: {0} and {1} of water. Look again the day after.",
            "Complétela: {0} y {1} de agua. Revise otra vez al día siguiente.",
            Bagged.said(left.quantity("bags")), left.figure("water"))))
        .orElse(finding));
  }

  /** The top before the night: the tape before, else the planned top where grout had come back. */
  private static Optional<Length> stoodAt(Sealing sealing, Fill.Tag next) {
    Optional<Length> sounded = sealing.lastTagOfTheDay().filter(t -> t.bags() == next.bags()).map(Fill.Tag::depth);
    boolean returned = sealing.grouting().lastBatch().flatMap(Batch::returned).orElse(false);
    return sounded.or(() -> returned ? Optional.of(sealing.top()) : Optional.empty());
  }
}
