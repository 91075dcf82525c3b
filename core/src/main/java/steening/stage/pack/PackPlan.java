package steening.stage.pack;

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
import steening.quantity.Measure;
import steening.quantity.Scale;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.reckoning.Term;
import steening.stage.Load;
import steening.well.Plan;
import steening.well.UsualGround;
import steening.well.Well;
import steening.well.WellAnnulus;

/** The pack as planned: what it takes, and what has to be on the truck. */
final class PackPlan {
  private PackPlan() {}

  /** None while the plan does not say enough. */
  static Optional<Outcome> volume(Plan plan) {
    if (plan.length(Plan.PACK_TOP).isEmpty() || plan.hole().isEmpty()) return Optional.empty();
    return Outcome.ifReckonable(() -> Bagged.of(
        new Annulus(plan.hole(), plan.pipe()), plan.length(Plan.PACK_TOP).get(), plan.hole().bottom(), plan.bagVolume(),
        new Measure(Dimension.NUMBER, plan.overage())));
  }

  /** By the flat overage, and by what holes here take. */
  static List<Load> loads(Well well) {
    Plan plan = well.get(Plan.PART);
    List<Load> loads = new ArrayList<>();
    volume(plan).ifPresent(o -> loads.add(new Load(
        Phrase.of(
            "pack sand, bags of {0}", "arena de filtro, sacos de {0}", new Figure(plan.bagVolume(), Scale.VOLUME)),
        Bagged.said(o.quantity("order-bags")),
        Optional.of(o))));
    usually(well).ifPresent(o -> loads.add(new Load(
        Phrase.of(
            "the same by what holes here take, nine times in ten enough",
            "lo mismo según llevan los barrenos aquí, nueve de diez veces basta"),
        Bagged.said(o.quantity(BagsLeft.WHOLE.name())),
        Optional.of(o))));
    return loads;
  }

  /** The planned pack with the ground weighed in, before the first bag. */
  private static Optional<Outcome> usually(Well well) {
    Plan plan = well.get(Plan.PART);
    if (plan.length(Plan.PACK_TOP).isEmpty() || plan.hole().isEmpty()) return Optional.empty();
    Term bag = Term.given("b", PackBags.BAG_VOLUME.label(), Scale.VOLUME, plan.bagVolume());
    return Outcome.ifReckonable(() -> BagsLeft.of(
        Overbreak.usually(UsualGround.of(well)), WellAnnulus.planned(well), plan.length(Plan.PACK_TOP).get(),
        plan.hole().bottom(), bag, Inputs.count("i", TruckFindings.SINCE, 0)));
  }
}
