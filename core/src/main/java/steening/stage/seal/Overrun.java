package steening.stage.seal;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import steening.bore.Bagged;
import steening.bore.Filled;
import steening.bore.Reach;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.language.Phrase;
import steening.number.Decimal;
import steening.quantity.Dimension;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.reckoning.Outcome;
import steening.well.Fill;
import steening.well.Losses;

/** A hole that takes much more grout than it should hold: seen at the tape, told in bags before they run out. */
final class Overrun {
  /** Apparent over drilled diameter (common practice, no source). */
  private static final double MUCH_WIDER = 1.15;

  private Overrun() {}

  /** The tape shows how much more than planned the hole takes, while it is not full. */
  static Optional<Finding> of(Sealing sealing, Losses losses) {
    Optional<Fill.Tag> tag = sealing.grout().lastTag().filter(t -> t.bags() > 0 && sealing.isDeep(t));
    Optional<Outcome> filled = tag.flatMap(sealing::filled);
    if (filled.isEmpty()) return Optional.empty();
    Optional<Length> bit = sealing.annulus().pieces(tag.get().depth(), sealing.bottom()).stream()
        .map(Reach::diameter).max(Comparator.naturalOrder());
    boolean wide = bit.filter(b -> filled.get().quantity("apparent-diameter").coherent() > MUCH_WIDER * b.coherent())
        .isPresent();
    if (!wide) return Optional.empty();
    return StillNeeded.above(sealing, tag.get().depth(), filled)
        .map(left -> finding(sealing, tag.get(), filled.get(), left, bit.get(),
            losses.between(tag.get().depth(), sealing.bottom())));
  }

  private static Finding finding(
      Sealing sealing, Fill.Tag tag, Outcome filled, Outcome left, Length bit, List<Losses.Zone> lost) {
    Figure seen = new Figure(filled.quantity("per-length"), Scale.LIQUID_CAPACITY);
    Figure drilled = new Figure(perLength(filled), Scale.LIQUID_CAPACITY);
    return Finding.of("seal.overrun", Weight.LOOK, SealStage.NAME, Phrase.of(
            "After {0} the grout stands at {1}: the hole takes {2}, {3} times the {4} of a {5} hole, as if it were"
                + " {6} wide.",
            "Tras {0} la lechada está a {1}: el barreno lleva {2}, {3} veces los {4} de uno de {5}, como si fuera de"
                + " {6}.",
            Bagged.said(tag.bags()), new Figure(tag.depth(), Scale.DEPTH), seen,
            Decimal.fixed(filled.quantity("ratio").coherent(), 2), drilled,
            new Figure(bit, Scale.DIAMETER), Filled.said(filled)))
        .comparing(seen, drilled)
        .because(cause(lost))
        .so(Phrase.of(
            "{0} and {1} of water are still needed at this rate ({2} reckoned; as drilled {3}). Have them here before"
                + " the top sets.",
            "A este paso faltan {0} y {1} de agua ({2} calculados; según lo perforado {3}). Téngalos aquí antes de"
                + " que fragüe el tope.",
            Bagged.said(left.quantity("bags")), left.figure("water"),
            Bagged.about(left.quantity("bags-as-seen")), Bagged.about(left.quantity("bags-as-drilled"))))
        .shownBy(filled).from(entries(sealing, tag));
  }

  private static Quantity perLength(Outcome filled) {
    double drilled = filled.quantity("per-length").coherent() / filled.quantity("ratio").coherent();
    return new Measure(Dimension.VOLUME_PER_LENGTH, drilled);
  }

  private static List<String> entries(Sealing sealing, Fill.Tag tag) {
    return sealing.grouting().lastBatch().map(b -> List.of(b.entry(), tag.entry())).orElse(List.of(tag.entry()));
  }

  private static Phrase cause(List<Losses.Zone> lost) {
    if (lost.isEmpty()) {
      return Phrase.of(
          "A washout, or a loss. If the top falls with the pump off it is a loss; the log shows where mud was lost.",
          "Una socavación o una pérdida. Si el tope baja con la bomba parada es pérdida; el registro dice dónde se"
              + " perdió lodo.");
    }
    return Phrase.of(
        "Mud was lost at {0} to {1} while drilling: a washout is likely there, or a loss. If the top falls with the"
            + " pump off it is a loss.",
        "Al perforar se perdió lodo de {0} a {1}: ahí es probable una socavación o una pérdida. Si el tope baja con la"
            + " bomba parada es pérdida.",
        new Figure(lost.get(0).from(), Scale.DEPTH), new Figure(lost.get(0).to(), Scale.DEPTH));
  }
}
