package steening.stage.pack;

import java.util.List;
import java.util.Optional;
import steening.field.Kind;
import steening.finding.Expectation;
import steening.finding.Finding;
import steening.journal.Entry;
import steening.language.Phrase;
import steening.quantity.Length;
import steening.reckoning.Reckoning;
import steening.stage.Clock;
import steening.stage.Load;
import steening.stage.Progress;
import steening.stage.Sheet;
import steening.stage.Stage;
import steening.well.Fill;
import steening.well.Well;

/** Sand round the screen, poured bag by bag and sounded before it can bridge. */
public final class PackStage implements Stage {
  static final String NAME = "pack";

  @Override
  public String name() {
    return NAME;
  }

  @Override
  public Phrase title() {
    return Phrase.of("Filter pack", "Filtro de grava");
  }

  @Override
  public List<Kind> kinds() {
    return List.of(PackBags.KIND, PackTape.KIND);
  }

  @Override
  public Well fold(Well well, Entry entry) {
    return entry.kind().equals(PackBags.KIND.name()) ? PackBags.fold(well, entry) : PackTape.fold(well, entry);
  }

  @Override
  public List<Reckoning> reckonings() {
    return List.of(PackVolume.RECKONING, ExpectedTape.RECKONING, ApparentDiameter.RECKONING, PackLeft.RECKONING, BridgeVoid.RECKONING, PackSettles.RECKONING,
        GrainFall.RECKONING);
  }

  @Override
  public List<Finding> findings(Well well) {
    return PackFindings.of(well);
  }

  @Override
  public List<Expectation> expectations(Well well) {
    return PackExpectations.of(well);
  }

  /**
   * Done when something stands on it, or when the next bag would rise above the planned top by more than half of it.
   */
  @Override
  public Progress progress(Well well) {
    Fill pack = well.get(Fill.PACK);
    if (well.get(Fill.CHIPS).isBegun() || well.get(Fill.GROUT).isBegun()) return Progress.DONE;
    if (!pack.isBegun() && pack.tags().isEmpty()) return Progress.NOT_BEGUN;
    return Pouring.of(well).filter(PackStage::isUp).isPresent() ? Progress.DONE : Progress.UNDER_WAY;
  }

  private static boolean isUp(Pouring pouring) {
    if (pouring.pack().bagsSinceTag() > 0 || Bridge.evidence(pouring).isPresent()) return false;
    Optional<Length> top = pouring.pack().top();
    Optional<Length> planned = pouring.plannedTop();
    Optional<Length> bag = pouring.lastBagHeight();
    if (top.isEmpty() || planned.isEmpty() || bag.isEmpty()) return false;
    return top.get().minus(planned.get()).times(2).isLessThan(bag.get());
  }

  @Override
  public String nextKind(Well well) {
    boolean bridged = Pouring.of(well).flatMap(Bridge::evidence).isPresent();
    return (bridged || well.get(Fill.PACK).bagsSinceTag() > 0 ? PackTape.KIND : PackBags.KIND).name();
  }

  @Override
  public Sheet sheet(Well well) {
    return PackSheet.of(well);
  }

  @Override
  public List<Clock> clocks(Well well) {
    return PackClocks.of(well);
  }

  @Override
  public List<Load> loads(Well well) {
    return PackPlan.loads(well);
  }
}
