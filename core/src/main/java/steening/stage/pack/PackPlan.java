package steening.stage.pack;

import java.util.List;
import java.util.Optional;
import steening.bore.Annulus;
import steening.bore.Bagged;
import steening.language.Phrase;
import steening.quantity.Dimension;
import steening.quantity.Figure;
import steening.quantity.Measure;
import steening.quantity.Scale;
import steening.reckoning.Outcome;
import steening.stage.Load;
import steening.well.Plan;

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

  static List<Load> loads(Plan plan) {
    return volume(plan)
        .map(o -> List.of(new Load(
            Phrase.of(
                "pack sand, bags of {0}", "arena de filtro, sacos de {0}", new Figure(plan.bagVolume(), Scale.VOLUME)),
            Bagged.said(o.quantity("order-bags")),
            Optional.of(o))))
        .orElse(List.of());
  }
}
