package steening.stage.seal.placing;

import java.util.List;
import java.util.Optional;
import steening.bore.Annulus;
import steening.bore.Reach;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Outcome;

/** Whether the tremie passes beside the casing. */
public final class TremieFitFindings {
  private TremieFitFindings() {}

  /** About the tremie as it hangs now. */
  public static Optional<Finding> of(Tremie tremie, Annulus annulus) {
    return tremie.last().flatMap(run -> size(run).or(() -> fit(run, annulus)));
  }

  private static Optional<Finding> size(Tremie.Run run) {
    if (run.outside().isMoreThan(run.inside())) return Optional.empty();
    return Optional.of(of("seal.tremie-size", Weight.LOOK, run, Phrase.of(
            "The tremie is {0} inside and {1} outside.", "La tremie mide {0} por dentro y {1} por fuera.",
            diameter(run.inside()), diameter(run.outside())))
        .comparing(diameter(run.inside()), diameter(run.outside()))
        .so(Phrase.of("Were the two turned round? Measure it.", "¿Se invirtieron? Mídala.")));
  }

  private static Optional<Finding> fit(Tremie.Run run, Annulus annulus) {
    Optional<Outcome> fit = narrowest(run, annulus).flatMap(hole -> casing(run, annulus).flatMap(
        casing -> Outcome.ifReckonable(() -> TremieFit.of(hole, casing, run.bell(), run.outside()))));
    if (fit.isEmpty() || fit.get().quantity(TremieFit.LEFT.name()).coherent() >= 0) return Optional.empty();
    boolean passesNowhere = fit.get().quantity(TremieFit.LEFT_WIDEST.name()).coherent() < 0;
    Figure gap = hundredths(fit.get(), TremieFit.GAP.name());
    Figure tremie = diameter(run.outside());
    Finding finding = of("seal.tremie-fit", passesNowhere ? Weight.STOP : Weight.LOOK, run, Phrase.of(
            "{0} at the bells; tremie {1}.", "{0} en las campanas; tremie de {1}.", gap, tremie))
        .comparing(tremie, gap).shownBy(fit.get());
    return Optional.of(passesNowhere
        ? finding
            .because(Phrase.of(
                "Even with the casing against the wall there are only {0}.",
                "Aun con el ademe contra la pared solo hay {0}.", hundredths(fit.get(), TremieFit.WIDEST.name())))
            .so(Phrase.of(
                "It will not pass: take a smaller tremie, and run it before the string is let go.",
                "No pasa: use una tremie menor y métala antes de soltar la columna."))
        : finding
            .because(Phrase.of(
                "It passes only where the casing stands to one side: {0} at the widest.",
                "Solo pasa donde el ademe queda a un lado: {0} en lo más ancho.",
                hundredths(fit.get(), TremieFit.WIDEST.name())))
            .so(Phrase.of(
                "Run it with the string, or take a smaller one; with centralisers it will not pass.",
                "Métala junto con la columna, o use una menor; con centradores no pasa.")));
  }

  /** The narrowest stretch down to its end. */
  private static Optional<Length> narrowest(Tremie.Run run, Annulus annulus) {
    return annulus.hole().reaches().stream().filter(r -> r.from().isLessThan(run.end())).map(Reach::diameter)
        .min(Length::compareTo);
  }

  private static Optional<Length> casing(Tremie.Run run, Annulus annulus) {
    return annulus.pipe().reaches().stream().filter(r -> r.from().isLessThan(run.end())).map(Reach::diameter)
        .max(Length::compareTo);
  }

  private static Finding of(String code, Weight weight, Tremie.Run run, Phrase text) {
    return Finding.of(code, weight, "seal", text).from(List.of(run.entry()));
  }

  private static Figure diameter(Length length) {
    return new Figure(length, Scale.DIAMETER);
  }

  /** To a hundredth of an inch, as a caliper reads. */
  private static Figure hundredths(Outcome outcome, String answer) {
    double inches = ((Length) outcome.quantity(answer)).inInches();
    return diameter(Length.of(Math.floor(inches * 100 + 0.5) / 100, Unit.INCH));
  }
}
