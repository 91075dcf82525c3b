package steening.stage.pack;

import java.util.List;
import java.util.Optional;
import steening.bore.Bagged;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.language.Phrase;
import steening.quantity.Dimension;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Measure;
import steening.quantity.Scale;
import steening.quantity.Volume;
import steening.reckoning.Outcome;
import steening.well.Fill;

/** Bags that were miscounted, or are not the bags that were planned with. */
final class BagFindings {
  /** A bag so many times the planned one, or less than one over that, is another bag. */
  private static final double ANOTHER_BAG = 1.5;

  private BagFindings() {}

  /** More than fits below the ground. */
  static Optional<Finding> count(Pouring pouring) {
    if (!pouring.pack().isBegun()) return Optional.empty();
    Optional<Outcome> outcome = Outcome.ifReckonable(() -> pouring.with(0).expected(Optional.empty()));
    Optional<Length> top = outcome.map(o -> (Length) o.quantity(ExpectedTape.TAPE.name()))
        .filter(z -> z.isLessThan(Length.ZERO));
    if (top.isEmpty()) return Optional.empty();
    Fill.Pour largest = pouring.pack().pours().stream().reduce((a, b) -> b.bags() > a.bags() ? b : a).orElseThrow();
    Finding finding = Finding.of("pack.count", Weight.STOP, PackStage.NAME, Phrase.of(
            "{0} would fill the annulus to {1} above the ground.",
            "{0} llenarían el espacio anular hasta {1} sobre el terreno.",
            Bagged.said(pouring.pack().bags()), new Figure(Length.ZERO.minus(top.get()), Scale.DEPTH)))
        .so(Phrase.of(
            "Count the empty bags, or what is left on the pallet, and correct the entry.",
            "Cuente los sacos vacíos, o los que quedan en la tarima, y corrija el registro."))
        .shownBy(outcome.get()).from(List.of(largest.entry()));
    return Optional.of(meant(pouring, largest)
        .map(m -> finding.because(Phrase.of(
            "A slip of the finger: {0} instead of {1}?", "Un error al teclear: ¿{0} en vez de {1}?",
            Integer.toString(m), Integer.toString(largest.bags()))))
        .orElse(finding));
  }

  /** The count with one digit left out that comes nearest to what the plan still needed. */
  private static Optional<Integer> meant(Pouring pouring, Fill.Pour pour) {
    String typed = Integer.toString(pour.bags());
    double needed = planned(pouring).orElse(0.0) - (pouring.pack().bags() - pour.bags());
    Optional<Integer> best = Optional.empty();
    for (int i = 0; i < typed.length() && typed.length() > 1; i++) {
      int without = Integer.parseInt(typed.substring(0, i) + typed.substring(i + 1));
      boolean nearer = best.isEmpty() || Math.abs(without - needed) < Math.abs(best.get() - needed);
      if (without > 0 && nearer) best = Optional.of(without);
    }
    return best;
  }

  /** The bags of one lot are far from the planned size. */
  static Optional<Finding> size(Pouring pouring) {
    Volume plannedBag = pouring.plan().bagVolume();
    Optional<Fill.Pour> other = pouring.pack().pours().stream().filter(p -> isAnother(p.bag(), plannedBag))
        .reduce((a, b) -> b);
    return other.map(pour -> {
      double ratio = pour.bag().cubicMetres() / plannedBag.cubicMetres();
      Finding finding = Finding.of("pack.bag-size", Weight.LOOK, PackStage.NAME, Phrase.of(
              "{0} of {1} each: that is {2} of the planned bags of {3}.{4}",
              "{0} de {1} cada uno: son {2} de los sacos planeados de {3}.{4}",
              Bagged.said(pour.bags()), new Figure(pour.bag(), Scale.VOLUME), number(ratio * pour.bags()),
              new Figure(plannedBag, Scale.VOLUME), planned(pouring).map(BagFindings::takes).orElse(Phrase.same(""))))
          .comparing(new Figure(pour.bag(), Scale.VOLUME), new Figure(plannedBag, Scale.VOLUME))
          .so(Phrase.of(
              "Read the bag, and correct the weight or the plan.", "Lea el saco y corrija el peso o el plan."))
          .from(List.of(pour.entry()));
      boolean kilograms = ratio > 2.0 && ratio < 2.4;
      return kilograms ? finding.because(Phrase.of("Kilograms for pounds?", "¿Kilogramos en vez de libras?")) : finding;
    });
  }

  private static Phrase takes(double bags) {
    return Phrase.of(" The plan takes {0}.", " El plan lleva {0}.", number(bags));
  }

  private static boolean isAnother(Volume bag, Volume planned) {
    double ratio = bag.cubicMetres() / planned.cubicMetres();
    return ratio >= ANOTHER_BAG || ratio <= 1 / ANOTHER_BAG;
  }

  /** Planned bags that the planned pack takes. */
  private static Optional<Double> planned(Pouring pouring) {
    return PackPlan.volume(pouring.plan()).map(o -> o.quantity("bags-filled").coherent());
  }

  private static Phrase number(double bags) {
    return Bagged.about(new Measure(Dimension.NUMBER, bags));
  }
}
