package steening.stage.disinfection;

import java.util.List;
import steening.field.Kind;
import steening.finding.Expectation;
import steening.finding.Finding;
import steening.journal.Body;
import steening.journal.Entry;
import steening.language.Phrase;
import steening.reckoning.Reckoning;
import steening.stage.Load;
import steening.stage.Progress;
import steening.stage.Sheet;
import steening.stage.Stage;
import steening.well.Residual;
import steening.well.Well;

/** Disinfection and what is left of the chlorine. */
public final class DisinfectionStage implements Stage {
  static final String NAME = "disinfection";

  @Override
  public String name() {
    return NAME;
  }

  @Override
  public Phrase title() {
    return Phrase.of("Disinfection", "Desinfección");
  }

  @Override
  public List<Kind> kinds() {
    return DisinfectionEntries.ALL;
  }

  @Override
  public List<Reckoning> reckonings() {
    return List.of(
        DisinfectionDose.RECKONING, DryChlorineDose.RECKONING, ChlorineAndPh.RECKONING, Dechlorination.RECKONING);
  }

  @Override
  public Well fold(Well well, Entry entry) {
    Body body = entry.body();
    if (entry.kind().equals(DisinfectionEntries.RESIDUAL.name())) {
      Residual.Reading reading =
          new Residual.Reading(DisinfectionEntries.CHLORINE.in(body).orElseThrow(), entry.happenedAt(), entry.id());
      return well.with(Residual.PART, well.get(Residual.PART).read(reading));
    }
    Dosing.Dose dose = new Dosing.Dose(
        DisinfectionEntries.PRODUCT.in(body).orElseThrow(),
        DisinfectionEntries.STRENGTH.in(body).orElseThrow(),
        DisinfectionEntries.AMOUNT.in(body),
        DisinfectionEntries.WEIGHT.in(body),
        DisinfectionEntries.TARGET.in(body).orElseThrow(),
        DisinfectionEntries.CONTACT.in(body).orElseThrow(),
        DisinfectionEntries.PH.in(body),
        entry.happenedAt(),
        entry.id());
    return well
        .with(Dosing.PART, well.get(Dosing.PART).with(dose))
        .with(Residual.PART, well.get(Residual.PART).dosed(entry.happenedAt()));
  }

  @Override
  public Progress progress(Well well) {
    Residual residual = well.get(Residual.PART);
    boolean dosed = !well.get(Dosing.PART).doses().isEmpty();
    if (!dosed && residual.readings().isEmpty()) return Progress.NOT_BEGUN;
    return dosed && residual.standing().isPresent() ? Progress.DONE : Progress.UNDER_WAY;
  }

  @Override
  public String nextKind(Well well) {
    boolean dosed = !well.get(Dosing.PART).doses().isEmpty();
    return (dosed ? DisinfectionEntries.RESIDUAL : DisinfectionEntries.DISINFECTION).name();
  }

  @Override
  public List<Finding> findings(Well well) {
    return DisinfectionFindings.of(well);
  }

  @Override
  public List<Expectation> expectations(Well well) {
    return DisinfectionSheet.expectations(well);
  }

  @Override
  public Sheet sheet(Well well) {
    return DisinfectionSheet.of(well);
  }

  @Override
  public List<Load> loads(Well well) {
    return DisinfectionSheet.loads(well);
  }
}
