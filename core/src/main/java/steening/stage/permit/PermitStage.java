package steening.stage.permit;

import java.util.List;
import steening.field.Kind;
import steening.journal.Entry;
import steening.language.Phrase;
import steening.stage.Progress;
import steening.stage.Stage;
import steening.well.Permit;
import steening.well.Well;

/** Leave to drill and leave to dig. */
public final class PermitStage implements Stage {
  @Override
  public String name() {
    return "permit";
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
}
