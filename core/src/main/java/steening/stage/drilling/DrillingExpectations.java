package steening.stage.drilling;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.finding.Expectation;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.stage.drilling.ahead.AheadExpectations;
import steening.stage.drilling.hole.FirstHole;
import steening.stage.drilling.hole.RodTally;
import steening.stage.drilling.log.CuttingsLag;
import steening.stage.drilling.log.Penetration;
import steening.stage.drilling.start.StartFindings;
import steening.well.CasingString;
import steening.well.Hole;
import steening.well.Plan;
import steening.well.Well;

/** What to expect while drilling goes on: the depth after the next rod, and when its cuttings come. */
final class DrillingExpectations {
  private DrillingExpectations() {}

  static List<Expectation> of(Well well) {
    Drilling drilling = well.get(Drilling.PART);
    Length drilled = drilling.rodDepth().max(well.get(Hole.PART).depth());
    boolean lowered = !well.get(CasingString.PART).pieces().isEmpty();
    boolean deepEnough = well.get(Plan.PART).length(Plan.DEPTH).map(d -> !drilled.isLessThan(d)).orElse(false);
    List<Expectation> expectations = new ArrayList<>();
    if (lowered) return expectations;
    expectations.addAll(StartFindings.asked(well));
    if (!deepEnough) FirstHole.nextChange(well, drilled).ifPresent(expectations::add);
    if (!deepEnough) nextRod(drilling).ifPresent(expectations::add);
    if (drilled.isMoreThan(Length.ZERO)) lag(drilling, drilled).ifPresent(expectations::add);
    if (drilled.isMoreThan(Length.ZERO)) sample(drilling).ifPresent(expectations::add);
    expectations.addAll(AheadExpectations.of(well));
    return expectations;
  }

  private static Optional<Expectation> nextRod(Drilling drilling) {
    if (drilling.rods().isEmpty()) return Optional.empty();
    Drilling.Rod last = drilling.rods().get(drilling.rods().size() - 1);
    Outcome next = RodTally.next(last);
    return Optional.of(new Expectation(
        Phrase.of("hole depth after rod {0}", "profundidad después del tubo {0}", Integer.toString(last.number() + 1)),
        next.figure("depth"),
        Optional.empty(),
        next));
  }

  private static Optional<Expectation> lag(Drilling drilling, Length depth) {
    try {
      return drilling.rig().map(rig -> {
        Outcome lag = CuttingsLag.of(rig, depth);
        Phrase what = Phrase.of(
            "time the cuttings need from {0}", "tiempo que tardan los recortes desde {0}",
            new Figure(depth, Scale.DEPTH));
        return new Expectation(what, lag.figure("lag"), Optional.empty(), lag);
      });
    } catch (NotReckonable rodsAsWideAsTheHole) {
      return Optional.empty();
    }
  }

  /** Where the cuttings come from that are at the surface now, by the hours of the rods. */
  private static Optional<Expectation> sample(Drilling drilling) {
    Length bit = drilling.rodDepth();
    Optional<Quantity> rate = Penetration.at(drilling.rods(), bit);
    if (rate.isEmpty() || drilling.rig().isEmpty()) return Optional.empty();
    Phrase what = Phrase.of(
        "cuttings caught with the bit at {0} come from", "los recortes tomados con la barrena a {0} vienen de",
        new Figure(bit, Scale.DEPTH));
    return Outcome.ifReckonable(() -> CuttingsLag.of(drilling.rig().get(), bit, rate, Optional.empty()))
        .filter(o -> o.answers().containsKey("came-from"))
        .map(o -> new Expectation(what, o.figure("came-from"), Optional.empty(), o));
  }
}
