package steening.stage.pack;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import steening.bore.Filled;
import steening.bore.Reach;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.language.Phrase;
import steening.number.Decimal;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.reckoning.Outcome;
import steening.well.Fill;
import steening.well.Losses;

/** A stretch that took much more sand than the hole should hold there. */
final class Washout {
  static final String CODE = "pack.washout";

  /** Apparent over drilled diameter (common practice, no source). */
  private static final double MUCH_WIDER = 1.15;

  private Washout() {}

  /** In what went in before the last tape. */
  static Optional<Finding> finding(Pouring pouring, Losses losses) {
    Optional<Fill.Tag> last = pouring.pack().lastTag().filter(t -> t.bags() > 0);
    if (last.isEmpty()) return Optional.empty();
    Fill.Tag tag = last.get();
    Run run = pouring.lately(tag);
    Optional<Outcome> outcome = Outcome.ifReckonable(() -> run.filled(tag.depth()).outcome());
    return outcome.flatMap(o -> widest(run, tag.depth())
        .filter(bit -> o.quantity("apparent-diameter").coherent() > MUCH_WIDER * bit.coherent())
        .map(bit -> finding(pouring, run, tag, o, bit, losses.between(tag.depth(), run.from()))));
  }

  private static Optional<Length> widest(Run run, Length top) {
    return run.annulus().pieces(top, run.from()).stream().map(Reach::diameter).max(Comparator.naturalOrder());
  }

  private static Finding finding(
      Pouring pouring, Run run, Fill.Tag tag, Outcome outcome, Length bit, List<Losses.Zone> lost) {
    Figure apparent = Filled.said(outcome);
    Figure drilled = new Figure(bit, Scale.DIAMETER);
    List<String> entries = pouring.before(tag).map(b -> List.of(b.entry(), tag.entry())).orElse(List.of(tag.entry()));
    return Finding.of(CODE, Weight.LOOK, PackStage.NAME, Phrase.of(
            "Between {0} and {1} the hole took sand for {2} across; the bit was {3}. That is {4} times what was"
                + " reckoned.",
            "Entre {0} y {1} el barreno llevó arena para {2} de diámetro; la barrena fue de {3}. Es {4} veces lo"
                + " calculado.",
            new Figure(tag.depth(), Scale.DEPTH), new Figure(run.from(), Scale.DEPTH), apparent, drilled,
            Decimal.fixed(outcome.quantity("ratio").coherent(), 2)))
        .comparing(apparent, drilled)
        .because(cause(lost))
        .so(Phrase.of(
            "Go on with the tape after every bag, and count on more bags than planned.",
            "Siga sondeando tras cada saco y cuente con más sacos que los planeados."))
        .shownBy(outcome).from(entries);
  }

  /** What the driller wrote down while drilling there decides which it is. */
  private static Phrase cause(List<Losses.Zone> lost) {
    if (lost.isEmpty()) {
      return Phrase.of(
          "A washout, or sand lost into open ground. The log shows whether mud was lost there.",
          "Una socavación, o arena perdida en terreno abierto. El registro dice si ahí se perdió lodo.");
    }
    return Phrase.of(
        "Mud was lost there while drilling, at {0} to {1}: a washout is likely.",
        "Ahí se perdió lodo al perforar, de {0} a {1}: es probable una socavación.",
        new Figure(lost.get(0).from(), Scale.DEPTH), new Figure(lost.get(0).to(), Scale.DEPTH));
  }
}
