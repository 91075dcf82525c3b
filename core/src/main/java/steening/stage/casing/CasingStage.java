package steening.stage.casing;

import java.util.List;
import java.util.Optional;
import steening.field.Kind;
import steening.finding.Expectation;
import steening.finding.Finding;
import steening.ground.PackGrading;
import steening.ground.SlotChoice;
import steening.journal.Entry;
import steening.language.Phrase;
import steening.quantity.Length;
import steening.reckoning.Reckoning;
import steening.stage.Load;
import steening.stage.Progress;
import steening.stage.Sheet;
import steening.stage.Stage;
import steening.stage.casing.choice.ScreenLength;
import steening.well.CasingString;
import steening.well.Piece;
import steening.well.Well;

/** The casing: from the sump to the string set. */
public final class CasingStage implements Stage {
  public static final String NAME = "casing";

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
  public List<Reckoning> reckonings() {
    return List.of(
        CasingVolume.RECKONING,
        StringLength.RECKONING,
        CollapseMargin.RECKONING,
        StringWeight.RECKONING,
        EntranceVelocity.RECKONING,
        PackGrading.RECKONING,
        SlotChoice.RECKONING,
        ScreenLength.RECKONING,
        CementCure.RECKONING);
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

  /** Sump, screen, joints, cut piece, then the string is set. */
  @Override
  public String nextKind(Well well) {
    CasingString string = well.get(CasingString.PART);
    if (string.isSet()) return CasingEntries.CASING_CUT.name();
    Optional<ToCome> toCome = ToCome.of(well);
    boolean sump = toCome.map(t -> t.sump().isMoreThan(Length.ZERO)).orElse(string.count(Piece.Sort.SUMP) == 0);
    boolean screen = toCome.map(t -> t.screen().isMoreThan(Length.ZERO)).orElse(string.count(Piece.Sort.SCREEN) == 0);
    if (sump && string.count(Piece.Sort.SCREEN) == 0) return CasingEntries.SUMP.name();
    if (screen) return CasingEntries.SCREEN.name();
    boolean whole = string.count(Piece.Sort.CUT_PIECE) > 0 || toCome.map(ToCome::isComplete).orElse(false);
    if (whole) return CasingEntries.STRING_SET.name();
    return toCome.isEmpty() || toCome.get().joints() > 0 ? CasingEntries.JOINT.name() : CasingEntries.CUT_PIECE.name();
  }

  @Override
  public List<Finding> findings(Well well) {
    return CasingFindings.of(well);
  }

  @Override
  public List<Expectation> expectations(Well well) {
    return CasingExpectations.of(well);
  }

  @Override
  public Sheet sheet(Well well) {
    return CasingSheet.of(well);
  }

  @Override
  public List<Load> loads(Well well) {
    return CasingLoads.of(well);
  }
}
