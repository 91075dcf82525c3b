package steening.stage.development;

import java.util.List;
import java.util.Optional;
import steening.field.Kind;
import steening.finding.Expectation;
import steening.finding.Finding;
import steening.journal.Entry;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Scale;
import steening.reckoning.Reckoning;
import steening.stage.Load;
import steening.stage.Progress;
import steening.stage.Sheet;
import steening.stage.Stage;
import steening.well.Plan;
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
    return List.of(SandContent.RECKONING, WeighedSand.RECKONING, AirLift.RECKONING, SandDecay.RECKONING);
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

  @Override
  public List<Finding> findings(Well well) {
    return DevelopmentFindings.of(well);
  }

  @Override
  public List<Expectation> expectations(Well well) {
    return DevelopmentSheet.expectations(well);
  }

  @Override
  public Sheet sheet(Well well) {
    return DevelopmentSheet.of(well);
  }

  /** What measuring takes (common practice, no source). */
  @Override
  public List<Load> loads(Well well) {
    if (!well.get(Plan.PART).isMade()) return List.of();
    return List.of(
        new Load(Phrase.of("settling cone, marked in mL", "cono de sedimentación, marcado en mL"), Phrase.same("1"),
            Optional.empty()),
        new Load(Phrase.of("pail of {0}", "cubeta de {0}", new Figure(SandContent.PAIL, Scale.LIQUID)),
            Phrase.same("1"), Optional.empty()));
  }
}
