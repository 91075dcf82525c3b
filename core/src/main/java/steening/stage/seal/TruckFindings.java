package steening.stage.seal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.bore.Bagged;
import steening.bore.BagsLeft;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.language.Phrase;
import steening.number.Decimal;
import steening.quantity.Dimension;
import steening.quantity.Figure;
import steening.quantity.Measure;
import steening.reckoning.Outcome;
import steening.well.Fill;
import steening.well.OnTruck;
import steening.well.Plan;
import steening.well.Well;
import steening.well.WellAnnulus;

/**
 * Whether the truck has the chips and the grout that are still needed: what was counted last less what went in since;
 * where nobody counted grout, the plan's load less what went in. Nothing is said before the grout was sounded, unless
 * somebody counted.
 */
final class TruckFindings {
  private TruckFindings() {}

  static List<Finding> of(Well well, Sealing sealing) {
    List<Finding> findings = new ArrayList<>();
    if (Grouted.isDone(well)) return findings;
    if (!sealing.grout().isBegun()) chips(well, sealing).ifPresent(findings::add);
    grout(well, sealing).ifPresent(findings::add);
    return findings;
  }

  /** Whole bags; none where nobody counted and the plan loads none. */
  static Optional<Integer> onTruck(Well well) {
    Plan plan = well.get(Plan.PART);
    int used = well.get(Fill.GROUT).bags();
    return well.get(OnTruck.PART).now(OnTruck.Goods.GROUT, used)
        .or(() -> SealLoads.grout(plan, WellAnnulus.planned(well), new Measure(Dimension.NUMBER, plan.overage()))
            .map(o -> Math.max(0, (int) o.quantity("order-bags").coherent() - used)));
  }

  private static Optional<Finding> grout(Well well, Sealing sealing) {
    Optional<OnTruck.Count> counted = well.get(OnTruck.PART).last(OnTruck.Goods.GROUT);
    Optional<Fill.Tag> tag = sealing.grout().lastTag().filter(t -> t.bags() > 0);
    Optional<Integer> has = onTruck(well);
    Optional<Outcome> left = GroutForecast.left(sealing);
    if (counted.isEmpty() && tag.isEmpty() || has.isEmpty() || left.isEmpty()) return Optional.empty();
    int needed = (int) left.get().quantity(BagsLeft.WHOLE.name()).coherent();
    if (needed <= has.get()) return Optional.empty();
    List<String> entries = new ArrayList<>();
    tag.ifPresent(t -> entries.add(t.entry()));
    counted.ifPresent(c -> entries.add(c.entry()));
    String shortOf = Integer.toString(needed - has.get());
    Phrase bags = BagsLeft.said(left.get());
    Phrase text = counted.isPresent()
        ? Phrase.of(
            "Bags of grout still needed: {0}. On the truck by the last count: {1}; short {2}.",
            "Sacos de lechada que faltan: {0}. En el camión, según el último conteo: {1}; faltarían {2}.",
            bags, Bagged.said(has.get()), shortOf)
        : Phrase.of(
            "Bags of grout still needed: {0}. By the plan's load {1} should be on the truck: short {2}.",
            "Sacos de lechada que faltan: {0}. Según la carga del plan debería haber {1}: faltarían {2}.",
            bags, Bagged.said(has.get()), shortOf);
    return Optional.of(Finding.of("seal.truck", Weight.LOOK, SealStage.NAME, text)
        .because(Phrase.of(
            "The ground is reckoned to take {0} times the drilled size, by what pack and grout took.",
            "Se cuenta con que el terreno lleve {0} veces lo perforado, según llevaron filtro y lechada.",
            Decimal.fixed(left.get().quantity(BagsLeft.RATIO.name()).coherent(), 2)))
        .so(toDo(tag.isPresent(), left.get().figure(GroutLeft.WATER.name())))
        .shownBy(left.get()).from(entries));
  }

  private static Phrase toDo(boolean begun, Figure water) {
    return begun ? ShortGrout.inOrder(water) : Phrase.of(
        "Send for them, and for {0} of water in all, before the next batch: grout is placed without a pause.",
        "Pídalos, y {0} de agua en total, antes de la próxima mezcla: la lechada se coloca sin pausa.", water);
  }

  private static Optional<Finding> chips(Well well, Sealing sealing) {
    Optional<Integer> has = well.get(OnTruck.PART).now(OnTruck.Goods.CHIPS, sealing.chips().bags());
    Optional<Outcome> planned = sealing.plan().length(Plan.CHIPS_TOP)
        .filter(top -> top.isLessThan(sealing.packTop()))
        .flatMap(top -> Outcome.ifReckonable(() -> Bagged.of(
            sealing.annulus(), top, sealing.packTop(), sealing.plan().chipsBagVolume(), Bagged.NO_OVERAGE)));
    if (has.isEmpty() || planned.isEmpty()) return Optional.empty();
    int needed = (int) planned.get().quantity(Bagged.BAGS.name()).coherent() - sealing.chips().bags();
    if (needed <= has.get()) return Optional.empty();
    return Optional.of(Finding.of("seal.chips-truck", Weight.LOOK, SealStage.NAME, Phrase.of(
            "The chips still take {0} as drilled; on the truck by the last count: {1}.",
            "Los pellets llevan aún {0} según lo perforado; en el camión, según el último conteo: {1}.",
            Bagged.said(needed), Bagged.said(has.get())))
        .so(Phrase.of("Send for more before they are begun.", "Pida más antes de empezarlos."))
        .shownBy(planned.get())
        .from(List.of(well.get(OnTruck.PART).last(OnTruck.Goods.CHIPS).orElseThrow().entry())));
  }
}
