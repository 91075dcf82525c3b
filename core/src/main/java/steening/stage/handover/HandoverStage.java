package steening.stage.handover;

import java.util.List;
import java.util.Optional;
import steening.field.Kind;
import steening.finding.Finding;
import steening.journal.Entry;
import steening.language.Phrase;
import steening.stage.Load;
import steening.stage.Progress;
import steening.stage.Sheet;
import steening.stage.Stage;
import steening.well.Completion;
import steening.well.Plan;
import steening.well.Tag;
import steening.well.Well;

/** The well tag, and the completion that the report is about. */
public final class HandoverStage implements Stage {
  static final String NAME = "handover";

  @Override
  public String name() {
    return NAME;
  }

  @Override
  public Phrase title() {
    return Phrase.of("Handover", "Entrega");
  }

  @Override
  public List<Kind> kinds() {
    return List.of(HandoverEntries.TAG, HandoverEntries.COMPLETION);
  }

  @Override
  public Well fold(Well well, Entry entry) {
    boolean tag = entry.kind().equals(HandoverEntries.TAG.name());
    if (tag) return well.with(Tag.PART, Optional.of(HandoverEntries.tag(entry)));
    Optional<Completion> completion = HandoverEntries.completion(entry);
    return completion.isPresent() ? well.with(Completion.PART, completion) : well;
  }

  @Override
  public List<Finding> findings(Well well) {
    return HandoverFindings.of(well);
  }

  @Override
  public Progress progress(Well well) {
    boolean tagged = well.get(Tag.PART).isPresent();
    boolean complete = well.get(Completion.PART).isPresent();
    if (tagged && complete) return Progress.DONE;
    return tagged || complete ? Progress.UNDER_WAY : Progress.NOT_BEGUN;
  }

  @Override
  public String nextKind(Well well) {
    return well.get(Tag.PART).isPresent() ? HandoverEntries.COMPLETION.name() : HandoverEntries.TAG.name();
  }

  @Override
  public Sheet sheet(Well well) {
    return HandoverSheet.of(well);
  }

  @Override
  public List<Load> loads(Well well) {
    boolean open = well.get(Plan.PART).isMade() && well.get(Tag.PART).isEmpty();
    if (!open) return List.of();
    return List.of(new Load(Phrase.of("well tag", "placa de identificación"), Phrase.same("1"), Optional.empty()));
  }
}
