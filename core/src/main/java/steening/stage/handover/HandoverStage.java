package steening.stage.handover;

import java.util.List;
import java.util.Optional;
import steening.field.Kind;
import steening.journal.Entry;
import steening.language.Phrase;
import steening.stage.Progress;
import steening.stage.Stage;
import steening.well.Completion;
import steening.well.Tag;
import steening.well.Well;

/** The well tag, and the completion that the report is about. */
public final class HandoverStage implements Stage {
  @Override
  public String name() {
    return "handover";
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
    if (entry.kind().equals(HandoverEntries.TAG.name())) return well.with(Tag.PART, Optional.of(HandoverEntries.tag(entry)));
    Optional<Completion> completion = HandoverEntries.completion(entry);
    return completion.isPresent() ? well.with(Completion.PART, completion) : well;
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
}
