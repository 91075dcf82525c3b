package steening.stage.seal;

import java.util.List;
import java.util.Optional;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Scale;
import steening.well.Flowing;
import steening.well.Well;

/** A flowing well is sealed with cement: Minnesota Rules 4725.3450 (seen). */
final class FlowingFindings {
  private FlowingFindings() {}

  /** Once a recipe is written down. */
  static Optional<Finding> of(Well well) {
    Flowing flowing = well.get(Flowing.PART);
    Optional<Recipe> recipe = well.get(Grouting.PART).recipe();
    if (!flowing.isFlowing() || recipe.isEmpty()) return Optional.empty();
    if (!flowing.isSimple()) return Optional.of(beyond(flowing, recipe.get()));
    return recipe.filter(r -> r.material() == DryGrout.BENTONITE).map(r -> bentonite(flowing, r));
  }

  private static Finding bentonite(Flowing flowing, Recipe recipe) {
    return stop(flowing, recipe, Phrase.of(
            "This well flows, and bentonite slurry is to seal it; one rule asks for cement (Minnesota 4725.3450).",
            "Este pozo es surgente y se va a sellar con bentonita; una norma pide cemento (Minnesota 4725.3450)."))
        .because(Phrase.of(
            "Slurry that has not set is washed out by the flow.", "El flujo se lleva la lechada que no ha fraguado."));
  }

  private static Finding beyond(Flowing flowing, Recipe recipe) {
    return stop(flowing, recipe, Phrase.of(
        "This well flows more than simple grouting allows: {0} and a head of {1} at most (Minnesota 4725.3450).",
        "Este pozo fluye más de lo que admite la cementación simple: hasta {0} y una carga de {1} (Minnesota"
            + " 4725.3450).",
        new Figure(Flowing.SIMPLE_RATE, Scale.FLOW), new Figure(Flowing.SIMPLE_HEAD, Scale.DEPTH)));
  }

  private static Finding stop(Flowing flowing, Recipe recipe, Phrase text) {
    List<String> last = recipe.entries().isEmpty() ? flowing.entries() : recipe.entries();
    return Finding.of("seal.flowing", Weight.STOP, SealStage.NAME, text)
        .so(Phrase.of(
            "Hold the flow first, and ask the authority how this one is to be sealed.",
            "Primero contenga el flujo y pregunte a la autoridad cómo sellarlo."))
        .from(last);
  }
}
