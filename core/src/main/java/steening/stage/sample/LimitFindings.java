package steening.stage.sample;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.finding.Finding;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.reckoning.Outcome;

/** What stands above a limit in the last sample that was tested for it. */
final class LimitFindings {
  private LimitFindings() {}

  static List<Finding> of(Samples samples) {
    List<Finding> findings = new ArrayList<>();
    for (Constituent constituent : Constituent.values()) {
      Optional<Sample.Result> tested = samples.testedFor(constituent);
      if (tested.isEmpty()) continue;
      Quantity found = tested.get().amount(constituent).orElseThrow();
      constituent.broken(found)
          .map(limit -> finding(constituent, found, limit).from(List.of(tested.get().entry())))
          .ifPresent(findings::add);
    }
    return findings;
  }

  private static Finding finding(Constituent constituent, Quantity found, Limit limit) {
    Figure measured = new Figure(found, constituent.scale());
    Figure bound = new Figure(limit.bound(), constituent.scale());
    Finding finding = Finding.of(
            "sample." + constituent.field.name(), limit.rank().weight, SampleStage.NAME, Phrase.of(
                limit.isLeast() ? "{0}: {1}, below the {2} of {3} ({4})." : "{0}: {1}, above the {2} of {3} ({4}).",
                limit.isLeast() ? "{0}: {1}, bajo el {2} de {3} ({4})." : "{0}: {1}, sobre el {2} de {3} ({4}).",
                constituent.field.label(), measured, limit.rank().label, bound, limit.citation()))
        .comparing(measured, bound)
        .because(constituent.cause);
    if (constituent.scale() == Scale.NUMBER) return finding.so(sour(limit));
    Optional<Outcome> share = ShareToRemove.of(found, limit.bound());
    if (share.isEmpty()) return finding;
    return finding.shownBy(share.get()).so(next(limit, share.get().figure(ShareToRemove.SHARE.name())));
  }

  private static Phrase next(Limit limit, Figure share) {
    if (limit.rank() == Limit.Rank.SECONDARY) {
      return Phrase.of(
          "Tell the owner. A treatment, if one is wanted, has to take out at least {0}; a second sample comes first.",
          "Avise al dueño. Un tratamiento, si se quiere, debe quitar al menos {0}; antes, una segunda muestra.", share);
    }
    return Phrase.of(
        "Not to drink or cook with. Tell the owner and the health authority, which decides; sample again."
            + " A treatment has to take out at least {0}.",
        "No beber ni cocinar con ella. Avise al dueño y a la autoridad de salud, que decide; repita la muestra."
            + " Un tratamiento debe quitar al menos {0}.",
        share);
  }

  private static Phrase sour(Limit limit) {
    return limit.isLeast()
        ? Phrase.of(
            "Tell the owner; have lead and copper tested at a tap that stood overnight.",
            "Avise al dueño; haga medir plomo y cobre en una llave que reposó la noche.")
        : Phrase.of(
            "Tell the owner. If the seal is of cement and new, flush and read the pH again first.",
            "Avise al dueño. Si el sello es de cemento y nuevo, purgue y mida otra vez el pH.");
  }
}
