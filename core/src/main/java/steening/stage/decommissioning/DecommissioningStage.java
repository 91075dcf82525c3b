package steening.stage.decommissioning;

import java.util.List;
import java.util.Optional;
import steening.field.Kind;
import steening.finding.Expectation;
import steening.finding.Finding;
import steening.journal.Entry;
import steening.language.Phrase;
import steening.reckoning.Reckoning;
import steening.stage.Load;
import steening.stage.Progress;
import steening.stage.Sheet;
import steening.stage.Stage;
import steening.well.Plugs;
import steening.well.Well;

/** Closing holes for good. A job with no hole given up, and whose well lives, has no need of it. */
public final class DecommissioningStage implements Stage {
  static final String NAME = "decommissioning";

  @Override
  public String name() {
    return NAME;
  }

  @Override
  public Phrase title() {
    return Phrase.of("Decommissioning", "Cierre del pozo");
  }

  @Override
  public List<Kind> kinds() {
    return List.of(ClosingEntry.KIND, PlugEntries.PLUG, PlugEntries.TAPE);
  }

  @Override
  public List<Reckoning> reckonings() {
    return List.of(PlugVolume.RECKONING);
  }

  @Override
  public Well fold(Well well, Entry entry) {
    return switch (entry.kind()) {
      case "decommissioning" -> ClosingEntry.fold(well, entry);
      case "plug" -> PlugEntries.plug(well, entry);
      case "plug-tape" -> PlugEntries.tape(well, entry);
      default -> well;
    };
  }

  @Override
  public boolean isBesideTheLine() {
    return true;
  }

  @Override
  public boolean endsTheJob(Well well) {
    return well.get(Plugs.PART).isBegun() && Plugging.of(well).isDone();
  }

  @Override
  public Progress progress(Well well) {
    List<Plugging> all = Plugging.all(well);
    if (all.isEmpty()) return Progress.NOT_NEEDED;
    if (all.stream().allMatch(Plugging::isDone)) return Progress.DONE;
    return all.stream().anyMatch(p -> p.plugs().isBegun()) ? Progress.UNDER_WAY : Progress.NOT_BEGUN;
  }

  @Override
  public String nextKind(Well well) {
    Optional<Plugging> open = Plugging.all(well).stream().filter(p -> !p.isDone()).reduce((a, b) -> b);
    boolean unsounded = Plugging.all(well).stream().flatMap(p -> p.plugs().plugs().stream())
        .anyMatch(p -> p.fill().bagsSinceTag() > 0);
    if (unsounded) return PlugEntries.TAPE.name();
    boolean decided = open.isPresent() && open.get().plugs().isBegun();
    return (decided ? PlugEntries.PLUG : ClosingEntry.KIND).name();
  }

  @Override
  public List<Finding> findings(Well well) {
    return DecommissioningFindings.of(well);
  }

  @Override
  public List<Expectation> expectations(Well well) {
    return DecommissioningExpectations.of(well);
  }

  @Override
  public Sheet sheet(Well well) {
    return DecommissioningSheet.of(well);
  }

  @Override
  public List<Load> loads(Well well) {
    return DecommissioningLoads.of(well);
  }
}
