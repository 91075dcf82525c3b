package steening.stage;

import java.util.List;
import java.util.Map;
import steening.field.Kind;
import steening.finding.Expectation;
import steening.finding.Finding;
import steening.journal.Entry;
import steening.language.Phrase;
import steening.language.Shown;
import steening.reckoning.Reckoning;
import steening.well.Well;

/** One stage of the job. Stateless. */
public interface Stage {
  /** In addresses and codes: one lower-case word. */
  String name();

  Phrase title();

  /** The entries of this stage, in the order they usually come. */
  List<Kind> kinds();

  /** The reckonings of this stage; may be none. */
  default List<Reckoning> reckonings() {
    return List.of();
  }

  /** The well after one more entry of one of this stage's kinds, whose body was checked. */
  Well fold(Well well, Entry entry);

  /** Where this stage of the well is not as expected. Must answer for any well, however little is known of it. */
  default List<Finding> findings(Well well) {
    return List.of();
  }

  /** What will probably be measured next, before it is. */
  default List<Expectation> expectations(Well well) {
    return List.of();
  }

  Progress progress(Well well);

  /** Whether a job goes through it only when something went wrong or is over, so that no other stage waits for it. */
  default boolean isBesideTheLine() {
    return false;
  }

  /** Whether with this stage the job is over, whatever the others would still want. */
  default boolean endsTheJob(Well well) {
    return false;
  }

  /** The kind of entry to make next in this stage, by name. */
  default String nextKind(Well well) {
    return kinds().get(0).name();
  }

  /** What the form of a kind begins with, by the name of the field, because the well so far suggests it. */
  default Map<String, Shown> begun(Well well, Kind kind) {
    return Map.of();
  }

  /** What this stage has to show: figures with their working, tables, a chart. */
  default Sheet sheet(Well well) {
    return Sheet.EMPTY;
  }

  /** What runs out, sets or is due; the page counts down to it. */
  default List<Clock> clocks(Well well) {
    return List.of();
  }

  /** What has to be on the truck for this stage, from the plan. */
  default List<Load> loads(Well well) {
    return List.of();
  }
}
