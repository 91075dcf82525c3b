package steening.stage.seal;

import java.util.List;
import java.util.Optional;
import steening.field.Kind;
import steening.finding.Expectation;
import steening.finding.Finding;
import steening.journal.Entry;
import steening.language.Phrase;
import steening.reckoning.Reckoning;
import steening.stage.Clock;
import steening.stage.Load;
import steening.stage.Progress;
import steening.stage.Sheet;
import steening.stage.Stage;
import steening.stage.seal.placing.HoseVolume;
import steening.stage.seal.placing.Tremie;
import steening.stage.seal.placing.TremieFit;
import steening.stage.seal.placing.WorkingTime;
import steening.well.Fill;
import steening.well.Well;

/** Chips on the pack and grout to the surface, so that no surface water runs down beside the casing. */
public final class SealStage implements Stage {
  static final String NAME = "seal";

  @Override
  public String name() {
    return NAME;
  }

  @Override
  public Phrase title() {
    return Phrase.of("Seal and grout", "Sello y lechada");
  }

  @Override
  public List<Kind> kinds() {
    return List.of(
        Chips.KIND, Chips.TAPE, GroutEntries.MIX, Readiness.KIND, Tremie.KIND, GroutEntries.BATCH, GroutEntries.TAPE);
  }

  @Override
  public List<Reckoning> reckonings() {
    return List.of(
        AnnulusVolume.RECKONING, ChipsVolume.RECKONING, GroutMix.RECKONING, GroutVolume.RECKONING, GroutTop.RECKONING,
        FeetPerBag.RECKONING, GroutDilution.RECKONING, ChipsFall.RECKONING,
        GroutLifts.RECKONING, UpliftHold.RECKONING,
        TremieFit.RECKONING, HoseVolume.RECKONING, GroutFall.RECKONING, WorkingTime.RECKONING, GroutLeft.RECKONING);
  }

  @Override
  public Well fold(Well well, Entry entry) {
    return switch (entry.kind()) {
      case "chips" -> Chips.pour(well, entry);
      case "chips-tape" -> Chips.sound(well, entry);
      case "grout-mix" -> GroutEntries.mix(well, entry);
      case "grout-ready" -> Readiness.fold(well, entry);
      case "tremie" -> Tremie.fold(well, entry);
      case "grout-batch" -> GroutEntries.batch(well, entry);
      case "grout-tape" -> GroutEntries.sound(well, entry);
      default -> well;
    };
  }

  @Override
  public List<Finding> findings(Well well) {
    return SealFindings.of(well);
  }

  @Override
  public List<Expectation> expectations(Well well) {
    return SealExpectations.of(well);
  }

  @Override
  public List<Clock> clocks(Well well) {
    return SealClocks.of(well);
  }

  @Override
  public Sheet sheet(Well well) {
    return SealSheet.of(well);
  }

  @Override
  public List<Load> loads(Well well) {
    return SealLoads.of(well);
  }

  @Override
  public Progress progress(Well well) {
    Fill grout = well.get(Fill.GROUT);
    boolean begun = grout.isBegun() || well.get(Fill.CHIPS).isBegun() || well.get(Grouting.PART).recipe().isPresent();
    if (!begun) return Progress.NOT_BEGUN;
    return Grouted.isDone(well) ? Progress.DONE : Progress.UNDER_WAY;
  }

  @Override
  public String nextKind(Well well) {
    if (!well.get(Fill.GROUT).isBegun()) {
      Fill chips = well.get(Fill.CHIPS);
      if (chips.bagsSinceTag() > 0) return Chips.TAPE.name();
      Optional<Recipe> recipe = well.get(Grouting.PART).recipe();
      boolean look = recipe.filter(r -> r.material().isCement()).isPresent() && well.get(Readiness.PART).isEmpty();
      if (recipe.isPresent()) return (look ? Readiness.KIND : GroutEntries.BATCH).name();
      return (chips.isBegun() ? GroutEntries.MIX : Chips.KIND).name();
    }
    return (Grouted.isDone(well) ? GroutEntries.TAPE : GroutEntries.BATCH).name();
  }
}
