package steening.stage.pack;

import java.util.List;
import java.util.Optional;
import steening.finding.Finding;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Measure;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Outcome;
import steening.well.Fill;
import steening.well.Grade;
import steening.well.Well;

/** A tape that went down while the last bag was still falling finds the pack too deep, and a washout that is none. */
final class EarlyTape {
  private EarlyTape() {}

  /** The finding, with that as a cause beside the others where it may be one. */
  static Finding explaining(Finding washout, Well well) {
    Fill pack = well.get(Fill.PACK);
    Optional<Fill.Tag> tag = pack.lastTag();
    Optional<Grade> grade = well.get(Grade.PART);
    Optional<Length> finest = grade.flatMap(Grade::finest);
    if (tag.isEmpty() || finest.isEmpty() || !tag.get().depth().isMoreThan(Length.ZERO)) return washout;
    // Entries of the same minute were written down together and say nothing of the time between.
    double waited = last(pack.pours(), tag.get()).map(p -> tag.get().at().minutesSince(p.at())).orElse(0.0);
    Optional<Outcome> fall = Outcome.ifReckonable(() -> GrainFall.of(finest.get(), tag.get().depth()))
        .filter(o -> waited > 0 && waited < o.quantity(GrainFall.WAIT.name()).in(Unit.MINUTE));
    return fall.map(o -> washout.because(Phrase.of(
        "{0} Or sand still falling: the tape went down {1} after the last bag, and the finest grains of {2} take {3}.",
        "{0} O arena que aún caía: la sonda bajó {1} después del último saco, y los granos más finos de {2} tardan"
            + " {3}.",
        washout.cause().orElseGet(() -> Phrase.same("")), minutes(waited), grade.get().text(),
        o.figure(GrainFall.WAIT.name())))).orElse(washout);
  }

  /** The last lot that had been poured when the tape went down. */
  private static Optional<Fill.Pour> last(List<Fill.Pour> pours, Fill.Tag tag) {
    int bags = 0;
    Optional<Fill.Pour> last = Optional.empty();
    for (Fill.Pour pour : pours) {
      bags += pour.bags();
      if (bags <= tag.bags()) last = Optional.of(pour);
    }
    return last;
  }

  private static Figure minutes(double minutes) {
    return new Figure(Measure.of(minutes, Unit.MINUTE), Scale.MINUTES);
  }
}
