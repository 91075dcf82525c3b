package steening.stage.seal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.bore.Annulus;
import steening.bore.Bagged;
import steening.bore.BagsLeft;
import steening.bore.Overbreak;
import steening.language.Phrase;
import steening.quantity.Dimension;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.stage.Load;
import steening.well.Plan;
import steening.well.UsualGround;
import steening.well.Well;
import steening.well.WellAnnulus;

/** Chips, grout and water to load, from the plan and its overage. */
final class SealLoads {
  private SealLoads() {}

  static List<Load> of(Well well) {
    Plan plan = well.get(Plan.PART);
    Quantity overage = new Measure(Dimension.NUMBER, plan.overage());
    List<Load> loads = new ArrayList<>();
    chips(plan, WellAnnulus.planned(well), overage).ifPresent(o -> loads.add(new Load(
        Phrase.of("chips, bags of {0}", "pellets, sacos de {0}", new Figure(plan.chipsBagVolume(), Scale.VOLUME)),
        Bagged.said(o.quantity("order-bags")), Optional.of(o))));
    grout(plan, WellAnnulus.planned(well), overage).ifPresent(o -> {
      loads.add(new Load(
          Phrase.of("grout, bags of {0}", "lechada, sacos de {0}", new Figure(plan.groutSolids(), Scale.WEIGHT)),
          Bagged.said(o.quantity("order-bags")), Optional.of(o)));
      loads.add(
          new Load(Phrase.of("water for the grout", "agua para la lechada"), o.figure("order-water"), Optional.of(o)));
    });
    usually(well).ifPresent(o -> loads.add(new Load(
        Phrase.of(
            "bags of grout by what holes here take, nine times in ten enough",
            "sacos de lechada según llevan los barrenos aquí, nueve de diez veces basta"),
        Phrase.of("{0}, {1} of water", "{0}, {1} de agua",
            Bagged.said(o.quantity(BagsLeft.WHOLE.name())), o.figure(GroutLeft.WATER.name())),
        Optional.of(o))));
    return loads;
  }

  /** The planned grout with the ground weighed in, before the first bag. */
  private static Optional<Outcome> usually(Well well) {
    Plan plan = well.get(Plan.PART);
    Optional<Length> bottom = plan.length(Plan.CHIPS_TOP).or(() -> plan.length(Plan.PACK_TOP));
    if (bottom.isEmpty()) return Optional.empty();
    Length top = plan.length(Plan.GROUT_TOP).orElse(Length.ZERO);
    return Outcome.ifReckonable(() -> GroutForecast.withWater(
        BagsLeft.of(
            Overbreak.usually(UsualGround.of(well)).onGrout(), WellAnnulus.planned(well), top, bottom.get(),
            GroutForecast.bag(Recipe.of(plan)), Inputs.count("i", GroutLeft.SINCE, 0)),
        Recipe.of(plan)));
  }

  /** The planned chips; none where the plan has none. */
  static Optional<Outcome> chips(Plan plan, Annulus annulus, Quantity overage) {
    Optional<Length> top = plan.length(Plan.CHIPS_TOP);
    Optional<Length> bottom = plan.length(Plan.PACK_TOP);
    if (top.isEmpty() || bottom.isEmpty()) return Optional.empty();
    return Outcome.ifReckonable(() -> Bagged.of(annulus, top.get(), bottom.get(), plan.chipsBagVolume(), overage));
  }

  /** The planned grout, by the plan's own recipe. */
  static Optional<Outcome> grout(Plan plan, Annulus annulus, Quantity overage) {
    Optional<Length> bottom = plan.length(Plan.CHIPS_TOP).or(() -> plan.length(Plan.PACK_TOP));
    if (bottom.isEmpty() || !plan.isMade()) return Optional.empty();
    Length top = plan.length(Plan.GROUT_TOP).orElse(Length.ZERO);
    return Outcome.ifReckonable(() -> GroutVolume.of(annulus, top, bottom.get(), Recipe.of(plan), overage));
  }
}
