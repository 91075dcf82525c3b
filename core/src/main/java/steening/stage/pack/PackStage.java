package steening.stage.pack;

import java.util.List;
import steening.field.Kind;
import steening.journal.Entry;
import steening.language.Phrase;
import steening.stage.Progress;
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
  public Progress progress(Well well) {
    Fill pack = well.get(Fill.PACK);
    if (!pack.isBegun() && pack.tags().isEmpty()) return Progress.NOT_BEGUN;
    boolean sealed = well.get(Fill.CHIPS).isBegun() || well.get(Fill.GROUT).isBegun();
    return sealed ? Progress.DONE : Progress.UNDER_WAY;
  }

  @Override
  public String nextKind(Well well) {
    return (well.get(Fill.PACK).bagsSinceTag() > 0 ? PackTape.KIND : PackBags.KIND).name();
  }
}
