package steening.stage.pump;

import java.util.List;
import java.util.Optional;
import steening.field.Kind;
import steening.journal.Entry;
import steening.language.Phrase;
import steening.stage.Progress;
import steening.stage.Stage;
import steening.well.PumpSet;
import steening.well.Well;

/** The pump, its pipe and its tank. */
public final class PumpStage implements Stage {
  @Override
  public String name() {
    return "pump";
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
  public Well fold(Well well, Entry entry) {
    Optional<PumpSet> pump = PumpEntries.pump(entry);
    return pump.isPresent() ? well.with(PumpSet.PART, pump) : well;
  }

  @Override
  public Progress progress(Well well) {
    return well.get(PumpSet.PART).isPresent() ? Progress.DONE : Progress.NOT_BEGUN;
  }
}
