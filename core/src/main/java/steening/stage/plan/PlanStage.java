package steening.stage.plan;

import java.util.List;
import steening.field.Field;
import steening.field.Kind;
import steening.finding.Finding;
import steening.journal.Entry;
import steening.language.Phrase;
import steening.stage.Progress;
import steening.stage.Sheet;
import steening.stage.Stage;
import steening.well.Plan;
import steening.well.Well;

/** The design the crew builds to. */
public final class PlanStage implements Stage {
  static final String NAME = "plan";
  static final Kind PLAN = Kind.of("plan", Phrase.of("Plan", "Plan"), Plan.FIELDS.toArray(Field[]::new));

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
    return List.of(PLAN);
  }

  @Override
  public Well fold(Well well, Entry entry) {
    return well.with(Plan.PART, new Plan(entry.body()));
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
    return PlanSheet.of(well.get(Plan.PART));
  }
}
