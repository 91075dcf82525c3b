package steening.stage.test;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.field.Kind;
import steening.finding.Expectation;
import steening.finding.Finding;
import steening.journal.Entry;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.quantity.Volume;
import steening.reckoning.Reckoning;
import steening.stage.Load;
import steening.stage.Progress;
import steening.stage.Sheet;
import steening.stage.Stage;
import steening.stage.test.curve.LeakyTest;
import steening.stage.test.curve.TheisTest;
import steening.stage.test.distance.DistanceDrawdown;
import steening.stage.test.distance.SteadyConfined;
import steening.stage.test.distance.SteadyUnconfined;
import steening.stage.test.distance.TheisDrawdown;
import steening.stage.test.distance.UnconfinedCorrection;
import steening.stage.test.gauge.BucketRate;
import steening.stage.test.gauge.MeterRate;
import steening.stage.test.gauge.OrificeRate;
import steening.stage.test.gauge.PipeJet;
import steening.stage.test.gauge.RateFindings;
import steening.stage.test.gauge.RectangularWeir;
import steening.stage.test.gauge.VNotchWeir;
import steening.stage.test.slug.Hvorslev;
import steening.stage.test.slug.SlugTest;
import steening.stage.test.step.StepTest;
import steening.stage.test.step.WellEfficiency;
import steening.well.Levels;
import steening.well.Plan;
import steening.well.PumpingTest;
import steening.well.Well;

/** The pumping test. */
public final class TestStage implements Stage {
  public static final String NAME = "test";

  private static final Figure PAIL = new Figure(Volume.of(5, Unit.GALLON), Scale.LIQUID);

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
  public List<Reckoning> reckonings() {
    return List.of(
        ConstantRateTest.RECKONING, SpecificCapacity.RECKONING, CasingStorageTime.RECKONING,
        LongTermDrawdown.RECKONING, RecoveryTest.RECKONING, TheisTest.RECKONING, LeakyTest.RECKONING,
        BucketRate.RECKONING, VNotchWeir.RECKONING, RectangularWeir.RECKONING, OrificeRate.RECKONING,
        PipeJet.RECKONING, MeterRate.RECKONING,
        StepTest.RECKONING, WellEfficiency.RECKONING, DistanceDrawdown.RECKONING, SteadyConfined.RECKONING,
        SteadyUnconfined.RECKONING, UnconfinedCorrection.RECKONING, TheisDrawdown.RECKONING, Hvorslev.RECKONING,
        SlugTest.RECKONING);
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

  @Override
  public List<Finding> findings(Well well) {
    List<Finding> findings = new ArrayList<>(LevelFindings.of(well));
    findings.addAll(CourseFindings.of(well));
    findings.addAll(RateFindings.of(well));
    findings.addAll(YieldFindings.of(well));
    return findings;
  }

  @Override
  public List<Expectation> expectations(Well well) {
    return TestExpectations.of(well);
  }

  @Override
  public Sheet sheet(Well well) {
    return TestSheet.of(well);
  }

  /** What a test takes (common practice, no source). */
  @Override
  public List<Load> loads(Well well) {
    if (!well.get(Plan.PART).isMade()) return List.of();
    return List.of(
        new Load(Phrase.of("water-level sounder", "sonda de nivel"), Phrase.same("1"), Optional.empty()),
        new Load(Phrase.of("pail of {0} and a watch", "cubeta de {0} y un reloj", PAIL), Phrase.same("1"),
            Optional.empty()));
  }
}
