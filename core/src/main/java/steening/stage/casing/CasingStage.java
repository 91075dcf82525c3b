package steening.stage.casing;

import java.util.List;
import steening.field.Kind;
import steening.journal.Entry;
import steening.language.Phrase;
import steening.stage.Progress;
import steening.stage.Stage;
import steening.well.CasingString;
import steening.well.Well;

/** The casing: from the sump to the string set. */
public final class CasingStage implements Stage {
  static final String NAME = "casing";

  @Override
  public String name() {
    return NAME;
  }

  @Override
  public Phrase title() {
    return Phrase.of("Casing and screen", "Ademe y rejilla");
  }

  @Override
  public List<Kind> kinds() {
    return CasingEntries.ALL;
  }

  @Override
  public Well fold(Well well, Entry entry) {
    return CasingFold.fold(well, entry);
  }

  @Override
  public Progress progress(Well well) {
    CasingString string = well.get(CasingString.PART);
    if (string.isSet()) return Progress.DONE;
    return string.pieces().isEmpty() ? Progress.NOT_BEGUN : Progress.UNDER_WAY;
  }
}
