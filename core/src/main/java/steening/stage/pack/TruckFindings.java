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
import steening.well.OnTruck;

/**
 * Whether the truck has the bags that are still needed. What is on it is what was counted last, less what went in
 * since; where nobody counted, what the plan has loaded, overage included, less what went in. Before the hole was
 * sounded over sand nothing is learned, and nothing is said unless somebody counted.
 */
final class TruckFindings {
  static final Phrase SINCE = Phrase.of("bags in since the tape", "sacos vertidos desde la sonda");

  private TruckFindings() {}

  static Optional<Finding> finding(Pouring pouring) {
    Optional<Fill.Tag> stood = Standing.last(pouring);
    Optional<OnTruck.Count> counted = pouring.truck().last(OnTruck.Goods.PACK);
    Optional<Integer> has = onTruck(pouring);
    Optional<Outcome> left = Standing.bagsLeft(pouring);
    if (stood.isEmpty() && counted.isEmpty() || has.isEmpty() || left.isEmpty()) return Optional.empty();
    Figure needed = left.get().figure(BagsLeft.WHOLE.name());
    if (needed.quantity().coherent() <= has.get()) return Optional.empty();
    List<String> entries = new ArrayList<>();
    pouring.pack().pours().forEach(p -> entries.add(p.entry()));
    stood.ifPresent(t -> entries.add(t.entry()));
    counted.ifPresent(c -> entries.add(c.entry()));
    Phrase bags = BagsLeft.said(left.get());
    Phrase text = counted.isPresent()
        ? Phrase.of(
            "Bags still needed: {0}. On the truck by the last count: {1}.",
            "Sacos que faltan: {0}. En el camión, según el último conteo: {1}.", bags, Bagged.said(has.get()))
        : Phrase.of(
            "Bags still needed: {0}. By the plan's load {1} should be on the truck.",
            "Sacos que faltan: {0}. Según la carga del plan debería haber {1} en el camión.",
            bags, Bagged.said(has.get()));
    return Optional.of(Finding.of("pack.truck", Weight.LOOK, PackStage.NAME, text)
        .because(cause(stood.isPresent(), left.get()))
        .so(counted.isPresent()
            ? Phrase.of("Send for more before the seal is begun.", "Pida más antes de empezar el sello.")
            : Phrase.of(
                "Count the bags on the truck, and send for more before the seal is begun.",
                "Cuente los sacos del camión y pida más antes de empezar el sello."))
        .shownBy(left.get()).from(entries));
  }

  private static Phrase cause(boolean sounded, Outcome left) {
    String ratio = Decimal.fixed(left.quantity(BagsLeft.RATIO.name()).coherent(), 2);
    return sounded
        ? Phrase.of(
            "The hole has taken {0} times its drilled size so far, the usual ground weighed in.",
            "El barreno ha llevado hasta ahora {0} veces lo perforado, con el terreno usual ponderado.", ratio)
        : Phrase.of(
            "Holes here usually take {0} times their drilled size.",
            "Aquí los barrenos suelen llevar {0} veces lo perforado.", ratio);
  }

  /** Bags that went from the truck and not into the entries, or the other way round, between two counts. */
  static Optional<Finding> pallet(Pouring pouring) {
    Optional<OnTruck.Twice> twice =
        pouring.truck().twice(OnTruck.Goods.PACK).filter(t -> t.gone() != t.entered() && t.gone() >= 0);
    return twice.map(t -> Finding.of("pack.pallet", Weight.LOOK, PackStage.NAME, Phrase.of(
            "Pallet {0} − {1} left = {2}; the tally says {3}.",
            "Tarima {0} − {1} que quedan = {2}; la cuenta dice {3}.",
            said(t.first()), said(t.last()), Integer.toString(t.gone()), Integer.toString(t.entered())))
        .because(Phrase.of(
            "A lot of bags not entered, or entered twice; or bags broken or set aside.",
            "Un lote sin registrar, o registrado dos veces; o sacos rotos o apartados."))
        .so(Phrase.of(
            "Count the empty bags and correct the lot: every expected tape rests on the count.",
            "Cuente los sacos vacíos y corrija el lote: de esa cuenta depende cada lectura esperada."))
        .from(List.of(t.first().entry(), t.last().entry())));
  }

  private static String said(OnTruck.Count count) {
    return Integer.toString(count.left().get(OnTruck.Goods.PACK));
  }

  /** Whole bags of the size in hand; none where nobody counted and the plan loads none. */
  static Optional<Integer> onTruck(Pouring pouring) {
    return pouring.truck().now(OnTruck.Goods.PACK, pouring.pack().bags()).or(() -> loaded(pouring));
  }

  private static Optional<Integer> loaded(Pouring pouring) {
    double bag = pouring.nextBag().cubicMetres();
    return PackPlan.volume(pouring.plan())
        .map(o -> o.quantity("order-bags").coherent() * pouring.plan().bagVolume().cubicMetres())
        .map(loaded -> (loaded - pouring.pack().volume().cubicMetres()) / bag)
        .map(bags -> (int) Math.max(0, Math.floor(bags + 1e-6)));
  }
}
