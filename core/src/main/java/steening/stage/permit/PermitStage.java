package steening.stage.permit;

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
import steening.well.Permit;
import steening.well.Well;

/** Leave to drill and leave to dig. */
public final class PermitStage implements Stage {
  static final String NAME = "permit";

  @Override
  public String name() {
    return NAME;
  }

  @Override
  public Phrase title() {
    return Phrase.of("Permit and locate ticket", "Permiso y localización de servicios");
  }

  @Override
  public List<Kind> kinds() {
    return List.of(PermitEntries.PERMIT, PermitEntries.LOCATE_TICKET);
  }

  @Override
  public Well fold(Well well, Entry entry) {
    return well.with(Permit.PART, PermitEntries.fold(well.get(Permit.PART), entry));
  }

  @Override
  public List<Finding> findings(Well well) {
    return PermitFindings.of(well);
  }

  @Override
  public Progress progress(Well well) {
    Permit permit = well.get(Permit.PART);
    if (permit.grants().isEmpty() && permit.tickets().isEmpty()) return Progress.NOT_BEGUN;
    return permit.grants().isEmpty() || permit.tickets().isEmpty() ? Progress.UNDER_WAY : Progress.DONE;
  }

  @Override
  public String nextKind(Well well) {
    boolean permitted = well.get(Permit.PART).number().isPresent();
    return permitted ? PermitEntries.LOCATE_TICKET.name() : PermitEntries.PERMIT.name();
  }

  @Override
  public Sheet sheet(Well well) {
    return PermitSheet.of(well);
  }

  /** Some rules want the permit on the site at all times. */
  @Override
  public List<Load> loads(Well well) {
    boolean none = well.get(Permit.PART).grants().isEmpty() && well.get(Permit.PART).tickets().isEmpty();
    if (none) return List.of();
    return List.of(new Load(
        Phrase.of("copies of the permit and the locate ticket", "copias del permiso y de la solicitud de localización"),
        Phrase.same("1"), Optional.empty()));
  }
}
