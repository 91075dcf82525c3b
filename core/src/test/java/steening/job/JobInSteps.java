package steening.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.finding.Expectation;
import steening.finding.Finding;
import steening.journal.Body;
import steening.journal.Entry;
import steening.journal.Journal;
import steening.journal.Moment;
import steening.stage.Stage;

/** An invented well, entry by entry; each happens ten minutes after the one before. Immutable. */
public record JobInSteps(List<Entry> entries) {
  private static final Moment MORNING = Moment.parse("2026-05-12T08:00:00-05:00");

  public static JobInSteps nothing() {
    return new JobInSteps(List.of());
  }

  /** One more entry; its id is its kind and its place, as in {@code pack-tape-7}. */
  public JobInSteps then(String kind, String... namesAndTexts) {
    int place = entries.size() + 1;
    Moment at = MORNING.plusMinutes(10L * place);
    List<Entry> more = new ArrayList<>(entries);
    more.add(new Entry(
        kind + "-" + place, "w1", "d1", place, "crew", at, at, kind, 1, Body.of(namesAndTexts), List.of()));
    return new JobInSteps(more);
  }

  public Job job() {
    return Job.of("w1", Journal.of(entries));
  }

  /** The findings of one stage. */
  public List<Finding> findings(String stage) {
    return Stages.named(stage).orElseThrow().findings(job().well());
  }

  public Optional<Finding> finding(String code) {
    return job().findings().stream().filter(f -> f.code().equals(code)).findFirst();
  }

  public List<Expectation> expectations(String stage) {
    return stage(stage).expectations(job().well());
  }

  public Stage stage(String name) {
    return Stages.named(name).orElseThrow();
  }
}
