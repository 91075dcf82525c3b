package steening.stage.development;

import java.util.List;
import steening.field.Kind;
import steening.journal.Entry;
import steening.language.Phrase;
import steening.reckoning.Reckoning;
import steening.stage.Progress;
import steening.stage.Stage;
import steening.well.PumpingTest;
import steening.well.Well;

/** Development, until the water is free of sand. */
public final class DevelopmentStage implements Stage {
  static final String NAME = "development";

  @Override
  public String name() {
    return NAME;
  }

  @Override
  public Phrase title() {
    return Phrase.of("Development", "Desarrollo");
  }

  @Override
  public List<Kind> kinds() {
    return DevelopmentEntries.ALL;
  }

  @Override
  public List<Reckoning> reckonings() {
    return List.of(SandContent.RECKONING);
  }

  @Override
  public Well fold(Well well, Entry entry) {
    return DevelopmentFold.with(well, entry);
  }

  @Override
  public Progress progress(Well well) {
    if (!well.get(Development.PART).isBegun()) return Progress.NOT_BEGUN;
    return well.get(PumpingTest.PART).started().isPresent() ? Progress.DONE : Progress.UNDER_WAY;
  }
}
