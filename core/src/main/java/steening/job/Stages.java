package steening.job;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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

  private static final Map<String, Stage> BY_NAME = new LinkedHashMap<>();
  private static final Map<String, Stage> BY_KIND = new LinkedHashMap<>();
  private static final Map<String, Kind> KINDS = new LinkedHashMap<>();
  private static final Map<String, Reckoning> RECKONINGS = new LinkedHashMap<>();

  static {
    for (Stage stage : ALL) {
      BY_NAME.put(stage.name(), stage);
      for (Kind kind : stage.kinds()) {
        BY_KIND.put(kind.name(), stage);
        KINDS.put(kind.name(), kind);
      }
      for (Reckoning reckoning : stage.reckonings()) RECKONINGS.put(reckoning.name(), reckoning);
    }
  }

  private Stages() {}

  public static List<Stage> all() {
    return ALL;
  }

  public static Optional<Stage> named(String name) {
    return Optional.ofNullable(BY_NAME.get(name));
  }

  /** The stage that a kind of entry belongs to. */
  public static Optional<Stage> ofKind(String kind) {
    return Optional.ofNullable(BY_KIND.get(kind));
  }

  public static Optional<Kind> kind(String name) {
    return Optional.ofNullable(KINDS.get(name));
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
    return List.copyOf(RECKONINGS.values());
  }

  public static Optional<Reckoning> reckoning(String name) {
    return Optional.ofNullable(RECKONINGS.get(name));
  }
}
