package steening.stage.drilling;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import steening.field.Kind;
import steening.finding.Expectation;
import steening.finding.Finding;
import steening.ground.GoingOn;
import steening.ground.GrainSizeConductivity;
import steening.ground.RoughYield;
import steening.ground.SandAhead;
import steening.ground.SieveCurve;
import steening.ground.SoilName;
import steening.ground.WentworthGrade;
import steening.journal.Entry;
import steening.language.Phrase;
import steening.language.Shown;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.reckoning.Reckoning;
import steening.stage.Load;
import steening.stage.Progress;
import steening.stage.Sheet;
import steening.stage.Stage;
import steening.stage.drilling.fluid.ArtesianBalance;
import steening.stage.drilling.fluid.MudMakeUp;
import steening.stage.drilling.fluid.MudPumpOutput;
import steening.stage.drilling.fluid.PitVolume;
import steening.stage.drilling.fluid.ShutInHead;
import steening.stage.drilling.fluid.UpHoleVelocity;
import steening.stage.drilling.fluid.WeightingUp;
import steening.stage.drilling.hole.HoleFindings;
import steening.stage.drilling.hole.HoleVolume;
import steening.stage.drilling.hole.RodTally;
import steening.stage.drilling.log.CuttingsLag;
import steening.stage.drilling.log.CuttingsSlip;
import steening.stage.drilling.log.LogEntries;
import steening.stage.drilling.log.Penetration;
import steening.stage.drilling.start.LineClearance;
import steening.stage.drilling.start.StartEntries;
import steening.stage.drilling.trouble.CirculationLoss;
import steening.stage.drilling.trouble.FishOrRedrill;
import steening.stage.drilling.trouble.FishTop;
import steening.stage.drilling.trouble.HoleFill;
import steening.stage.drilling.trouble.TroubleEntries;
import steening.well.CasingString;
import steening.well.GroundLog;
import steening.well.Hole;
import steening.well.Plan;
import steening.well.Well;

/** Drilling: from the rig set up to the hole logged to its bottom. */
public final class DrillingStage implements Stage {
  public static final String NAME = "drilling";

  @Override
  public String name() {
    return NAME;
  }

  @Override
  public Phrase title() {
    return Phrase.of("Drilling", "Perforación");
  }

  @Override
  public List<Kind> kinds() {
    return Stream.of(DrillingEntries.ALL, TroubleEntries.ALL, StartEntries.ALL).flatMap(List::stream).toList();
  }

  @Override
  public List<Reckoning> reckonings() {
    return List.of(
        HoleVolume.RECKONING, UpHoleVelocity.RECKONING, CuttingsLag.RECKONING, PitVolume.RECKONING, RodTally.RECKONING,
        MudMakeUp.RECKONING, MudPumpOutput.RECKONING, ArtesianBalance.RECKONING, WeightingUp.RECKONING,
        SieveCurve.RECKONING, GrainSizeConductivity.RECKONING, SoilName.RECKONING, WentworthGrade.RECKONING,
        SandAhead.RECKONING, GoingOn.RECKONING, RoughYield.RECKONING,
        CirculationLoss.RECKONING, HoleFill.RECKONING, FishTop.RECKONING,
        CuttingsSlip.RECKONING, Penetration.RECKONING, LineClearance.RECKONING,
        ShutInHead.RECKONING, FishOrRedrill.RECKONING);
  }

  @Override
  public Well fold(Well well, Entry entry) {
    return DrillingFold.fold(well, entry);
  }

  /** Done once something is lowered into the hole, or once it is as deep as planned and logged to the bottom. */
  @Override
  public Progress progress(Well well) {
    Hole hole = well.get(Hole.PART);
    GroundLog log = well.get(GroundLog.PART);
    boolean lowered = !well.get(CasingString.PART).pieces().isEmpty();
    Length planned = well.get(Plan.PART).length(Plan.DEPTH).orElse(Length.ZERO);
    boolean deepEnough = hole.isBegun() && !hole.depth().isLessThan(planned) && !log.bottom().isLessThan(hole.depth());
    if (hole.isBegun() && (lowered || deepEnough)) return Progress.DONE;
    boolean begun = hole.isBegun() || !log.strata().isEmpty() || !well.get(Drilling.PART).equals(Drilling.PART.empty());
    return begun ? Progress.UNDER_WAY : Progress.NOT_BEGUN;
  }

  /** The rig first, then rod and log by turns; the hole once it is deep enough, and the mud once more before casing. */
  @Override
  public String nextKind(Well well) {
    Drilling drilling = well.get(Drilling.PART);
    Length logged = well.get(GroundLog.PART).bottom();
    Length drilled = drilling.rodDepth().max(well.get(Hole.PART).depth());
    boolean deepEnough = well.get(Plan.PART).length(Plan.DEPTH).map(d -> !drilled.isLessThan(d)).orElse(false);
    if (drilling.rig().isEmpty()) return DrillingEntries.DRILLING.name();
    if (drilled.minus(logged).isMoreThan(HoleFindings.AGREES)) return LogEntries.LOG.name();
    if (!deepEnough) return DrillingEntries.ROD_DOWN.name();
    boolean entered = !well.get(Hole.PART).depth().isLessThan(drilled);
    return entered ? DrillingEntries.MUD.name() : DrillingEntries.HOLE.name();
  }

  /** An interval begins where the last one ended; it goes as deep as the hole does. */
  @Override
  public Map<String, Shown> begun(Well well, Kind kind) {
    Length logged = well.get(GroundLog.PART).bottom();
    Length drilled = DrillingFold.depthSoFar(well);
    Map<String, Shown> begun = new LinkedHashMap<>();
    if (kind == LogEntries.LOG) {
      begun.put(LogEntries.FROM.name(), new Figure(logged, Scale.DEPTH));
      if (drilled.isMoreThan(logged)) begun.put(LogEntries.TO.name(), new Figure(drilled, Scale.DEPTH));
    } else if (kind == DrillingEntries.HOLE) {
      begun.put(DrillingEntries.HOLE_FROM.name(), new Figure(well.get(Hole.PART).depth(), Scale.DEPTH));
    }
    return begun;
  }

  @Override
  public List<Finding> findings(Well well) {
    return DrillingFindings.of(well);
  }

  @Override
  public List<Expectation> expectations(Well well) {
    return DrillingExpectations.of(well);
  }

  @Override
  public Sheet sheet(Well well) {
    return DrillingSheet.of(well);
  }

  @Override
  public List<Load> loads(Well well) {
    return DrillingLoads.of(well);
  }
}
