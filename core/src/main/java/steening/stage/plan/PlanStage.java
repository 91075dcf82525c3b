package steening.stage.plan;

import java.util.List;
import java.util.stream.Stream;
import steening.field.Field;
import steening.field.Kind;
import steening.finding.Finding;
import steening.journal.Entry;
import steening.language.Phrase;
import steening.reckoning.Reckoning;
import steening.stage.Progress;
import steening.stage.Sheet;
import steening.stage.Stage;
import steening.well.OnTruck;
import steening.well.Plan;
import steening.well.UsualGround;
import steening.well.Well;

/** The design the crew builds to. */
public final class PlanStage implements Stage {
  static final String NAME = "plan";
  static final Kind PLAN = Kind.of("plan", Phrase.of("Plan", "Plan"), Plan.FIELDS.toArray(Field[]::new))
      .seldom(Plan.PACK_TIMES_LEAST, Plan.PACK_TIMES_MOST, Plan.SLOT_RETAINS, Plan.ENTRANCE_LIMIT);
  static final Kind USUAL_GROUND = Kind.of(
      "usual-ground", Phrase.of("What holes take here", "Lo que llevan los barrenos aquí"),
      UsualGround.MEAN, UsualGround.SPREAD, UsualGround.WELLS);
  static final Kind ON_TRUCK = Kind.of(
      "on-truck", Phrase.of("Truck counted", "Camión contado"),
      Stream.of(OnTruck.Goods.values()).map(OnTruck.Goods::field).toArray(Field[]::new));

  @Override
  public String name() {
    return NAME;
  }

  @Override
  public Phrase title() {
    return Phrase.of("Plan", "Plan");
  }

  @Override
  public List<Kind> kinds() {
    return List.of(PLAN, USUAL_GROUND, ON_TRUCK);
  }

  @Override
  public Well fold(Well well, Entry entry) {
    return switch (entry.kind()) {
      case "usual-ground" -> UsualGround.fold(well, entry);
      case "on-truck" -> OnTruck.fold(well, entry);
      default -> well.with(Plan.PART, new Plan(entry.body()));
    };
  }

  @Override
  public List<Reckoning> reckonings() {
    return List.of(GroundOfEarlierWells.RECKONING);
  }

  @Override
  public List<Finding> findings(Well well) {
    return PlanFindings.of(well.get(Plan.PART));
  }

  @Override
  public Progress progress(Well well) {
    return well.get(Plan.PART).isMade() ? Progress.DONE : Progress.NOT_BEGUN;
  }

  @Override
  public Sheet sheet(Well well) {
    return PlanSheet.of(well);
  }
}
