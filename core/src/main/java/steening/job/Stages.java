package steening.job;

import java.util.List;
import java.util.Optional;
import steening.field.Kind;
import steening.journal.Entry;
import steening.language.Phrase;
import steening.reckoning.Reckoning;
import steening.stage.Stage;
import steening.stage.casing.CasingStage;
import steening.stage.decommissioning.DecommissioningStage;
import steening.stage.development.DevelopmentStage;
import steening.stage.disinfection.DisinfectionStage;
import steening.stage.drilling.DrillingStage;
import steening.stage.handover.HandoverStage;
import steening.stage.pack.PackStage;
import steening.stage.permit.PermitStage;
import steening.stage.plan.PlanStage;
import steening.stage.pump.PumpStage;
import steening.stage.sample.SampleStage;
import steening.stage.seal.SealStage;
import steening.stage.site.SiteStage;
import steening.stage.test.TestStage;

/** The register of stages, in the order of the job. To add a stage is to add its room and one line here. */
public final class Stages {
  private static final List<Stage> ALL = List.of(
      new SiteStage(),
      new PermitStage(),
      new PlanStage(),
      new DrillingStage(),
      new CasingStage(),
      new PackStage(),
      new SealStage(),
      new DevelopmentStage(),
      new TestStage(),
      new PumpStage(),
      new DisinfectionStage(),
      new SampleStage(),
      new HandoverStage(),
      new DecommissioningStage());

  private Stages() {}

  public static List<Stage> all() {
    return ALL;
  }

  public static Optional<Stage> named(String name) {
    return ALL.stream().filter(s -> s.name().equals(name)).findFirst();
  }

  /** The stage that a kind of entry belongs to. */
  public static Optional<Stage> ofKind(String kind) {
    return ALL.stream().filter(s -> s.kinds().stream().anyMatch(k -> k.name().equals(kind))).findFirst();
  }

  public static Optional<Kind> kind(String name) {
    return ALL.stream().flatMap(s -> s.kinds().stream()).filter(k -> k.name().equals(name)).findFirst();
  }

  /**
   * What is wrong with the body of an entry, by field; nothing for a kind, or a version of one, that is newer than
   * this.
   */
  public static List<Phrase> faults(Entry entry) {
    return kind(entry.kind())
        .filter(k -> entry.schema() <= k.schema())
        .map(k -> k.faults(entry.body()))
        .orElse(List.of());
  }

  public static List<Reckoning> reckonings() {
    return ALL.stream().flatMap(s -> s.reckonings().stream()).toList();
  }

  public static Optional<Reckoning> reckoning(String name) {
    return reckonings().stream().filter(r -> r.name().equals(name)).findFirst();
  }
}
