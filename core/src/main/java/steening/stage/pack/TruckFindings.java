package steening.stage.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.bore.Bagged;
import steening.bore.BagsLeft;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.language.Phrase;
import steening.number.Decimal;
import steening.quantity.Figure;
import steening.reckoning.Outcome;
import steening.well.Fill;

/**
 * Whether the truck has the bags that are still needed. What is on it is what the plan has loaded, overage included,
 * less what went in: nobody counts a truck twice. Before the hole was sounded over sand nothing is learned, and nothing
 * is said.
 */
final class TruckFindings {
  static final Phrase SINCE = Phrase.of("bags in since the tape", "sacos vertidos desde la sonda");

  private TruckFindings() {}

  static Optional<Finding> finding(Pouring pouring) {
    Optional<Fill.Tag> stood = Standing.last(pouring);
    Optional<Integer> has = onTruck(pouring);
    Optional<Outcome> left = Standing.bagsLeft(pouring);
    if (stood.isEmpty() || has.isEmpty() || left.isEmpty()) return Optional.empty();
    Figure needed = left.get().figure(BagsLeft.WHOLE.name());
    if (needed.quantity().coherent() <= has.get()) return Optional.empty();
    List<String> entries = new ArrayList<>();
    pouring.pack().pours().forEach(p -> entries.add(p.entry()));
    entries.add(stood.get().entry());
    return Optional.of(Finding.of("pack.truck", Weight.LOOK, PackStage.NAME, Phrase.of(
            "Bags still needed: {0}. By the plan's load {1} should be on the truck.",
            "Sacos que faltan: {0}. Según la carga del plan debería haber {1} en el camión.",
            BagsLeft.said(left.get()), Bagged.said(has.get())))
        .because(Phrase.of(
            "The hole has taken {0} times its drilled size so far, the usual ground weighed in.",
            "El barreno ha llevado hasta ahora {0} veces lo perforado, con el terreno usual ponderado.",
            Decimal.fixed(left.get().quantity(BagsLeft.RATIO.name()).coherent(), 2)))
        .so(Phrase.of(
            "Count the bags on the truck, and send for more before the seal is begun.",
            "Cuente los sacos del camión y pida más antes de empezar el sello."))
        .shownBy(left.get()).from(entries));
  }

  /** Whole bags of the size in hand; none where the plan loads none. */
  static Optional<Integer> onTruck(Pouring pouring) {
    double bag = pouring.nextBag().cubicMetres();
    return PackPlan.volume(pouring.plan())
        .map(o -> o.quantity("order-bags").coherent() * pouring.plan().bagVolume().cubicMetres())
        .map(loaded -> (loaded - pouring.pack().volume().cubicMetres()) / bag)
        .map(bags -> (int) Math.max(0, Math.floor(bags + 1e-6)));
  }
}
