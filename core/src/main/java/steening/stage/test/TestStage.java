package steening.stage.test;

import java.util.List;
import steening.field.Kind;
import steening.journal.Entry;
import steening.language.Phrase;
import steening.stage.Progress;
import steening.stage.Stage;
import steening.well.Levels;
import steening.well.PumpingTest;
import steening.well.Well;

/** The pumping test. */
public final class TestStage implements Stage {
  static final String NAME = "test";

  @Override
  public String name() {
    return NAME;
  }

  @Override
  public Phrase title() {
    return Phrase.of("Pumping test", "Prueba de bombeo");
  }

  @Override
  public List<Kind> kinds() {
    return TestEntries.ALL;
  }

  @Override
  public Well fold(Well well, Entry entry) {
    return TestFold.with(well, entry);
  }

  @Override
  public Progress progress(Well well) {
    PumpingTest test = well.get(PumpingTest.PART);
    if (test.stopped().isPresent()) return Progress.DONE;
    return well.get(LevelReadings.PART).isEmpty() ? Progress.NOT_BEGUN : Progress.UNDER_WAY;
  }

  @Override
  public String nextKind(Well well) {
    PumpingTest test = well.get(PumpingTest.PART);
    if (test.stopped().isPresent()) return TestEntries.RECOVERY_LEVEL.name();
    if (test.started().isPresent()) return TestEntries.PUMPING_LEVEL.name();
    return (well.get(Levels.PART).atRest().isPresent() ? TestEntries.START : TestEntries.STATIC_LEVEL).name();
  }
}
