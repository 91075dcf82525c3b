package steening.stage.pump;

import java.util.List;
import java.util.Optional;
import steening.field.Kind;
import steening.finding.Expectation;
import steening.finding.Finding;
import steening.journal.Entry;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Scale;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.stage.Load;
import steening.stage.Progress;
import steening.stage.Sheet;
import steening.stage.Stage;
import steening.stage.pump.demand.HouseholdDemand;
import steening.stage.pump.demand.LowYieldStorage;
import steening.stage.pump.line.FittingLength;
import steening.stage.pump.line.OperatingPoint;
import steening.stage.pump.line.PipeFriction;
import steening.stage.pump.motor.CableDrop;
import steening.stage.pump.motor.CableLength;
import steening.stage.pump.motor.MotorCooling;
import steening.well.Plan;
import steening.well.PumpSet;
import steening.well.Well;

/** The pump, its pipe and its tank. */
public final class PumpStage implements Stage {
  static final String NAME = "pump";

  @Override
  public String name() {
    return NAME;
  }

  @Override
  public Phrase title() {
    return Phrase.of("Pump and tank", "Bomba y tanque");
  }

  @Override
  public List<Kind> kinds() {
    return List.of(PumpEntries.PUMP);
  }

  @Override
  public List<Reckoning> reckonings() {
    return List.of(
        PumpHead.RECKONING, PressureTank.RECKONING, OperatingPoint.RECKONING, PipeFriction.RECKONING,
        FittingLength.RECKONING, MotorCooling.RECKONING, CableDrop.RECKONING, CableLength.RECKONING,
        HouseholdDemand.RECKONING, LowYieldStorage.RECKONING);
  }

  @Override
  public Well fold(Well well, Entry entry) {
    Optional<PumpSet> pump = PumpEntries.pump(entry);
    if (pump.isEmpty()) return well;
    Equipment equipment = new Equipment(entry.body(), entry.id());
    return well.with(PumpSet.PART, pump).with(Equipment.PART, Optional.of(equipment));
  }

  @Override
  public List<Finding> findings(Well well) {
    return PumpFindings.of(well);
  }

  /** What runs into a bucket between cut-out and cut-in shows whether the tank is as it should be. */
  @Override
  public List<Expectation> expectations(Well well) {
    Optional<Outcome> tank = well.get(PumpSet.PART).flatMap(PumpFigures::tank);
    return tank.stream()
        .map(outcome -> new Expectation(
            Phrase.of("water from the tank between cut-out and cut-in", "agua del tanque entre paro y arranque"),
            outcome.figure(PressureTank.DRAWDOWN.name()), Optional.empty(), outcome))
        .toList();
  }

  @Override
  public Progress progress(Well well) {
    return well.get(PumpSet.PART).isPresent() ? Progress.DONE : Progress.NOT_BEGUN;
  }

  @Override
  public Sheet sheet(Well well) {
    return PumpSheet.of(well);
  }

  /** The intake stays above the screen, so its top is as much pipe and cable as can be needed in the well. */
  @Override
  public List<Load> loads(Well well) {
    return well.get(Plan.PART).length(Plan.SCREEN_TOP).stream()
        .map(top -> new Load(
            Phrase.of("drop pipe and pump cable, at most", "columna de bombeo y cable, a lo más"),
            new Figure(top, Scale.DEPTH), Optional.empty()))
        .toList();
  }
}
