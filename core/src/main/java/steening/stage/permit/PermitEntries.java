package steening.stage.permit;

import java.time.LocalDate;
import java.util.Optional;
import steening.field.DateField;
import steening.field.Kind;
import steening.field.TextField;
import steening.journal.Body;
import steening.journal.Entry;
import steening.language.Phrase;
import steening.well.Permit;

/** The two papers that must be at hand before the rig moves. */
final class PermitEntries {
  static final TextField NUMBER =
      TextField.of("number", Phrase.of("permit number", "número de permiso"), "WP-2026-0413");
  static final DateField ISSUED = DateField.of("issued", Phrase.of("issued", "expedido"));
  static final DateField EXPIRES = DateField.of("expires", Phrase.of("last day it holds", "último día de vigencia"));
  static final TextField AUTHORITY =
      TextField.of("authority", Phrase.of("authority", "autoridad"), "Example County Health Department").optional();
  static final Kind PERMIT = Kind.of("permit", Phrase.of("Permit", "Permiso"), NUMBER, ISSUED, EXPIRES, AUTHORITY);

  static final TextField TICKET =
      TextField.of("number", Phrase.of("ticket number", "número de solicitud"), "26126-0417");
  static final DateField REQUESTED = DateField.of("requested", Phrase.of("requested on", "solicitado el"));
  static final DateField DIG_FROM = DateField.of("dig-from", Phrase.of("dig from", "excavar desde"));
  static final DateField DIG_UNTIL = DateField.of("dig-until", Phrase.of("dig until", "excavar hasta"));
  static final Kind LOCATE_TICKET = Kind.of(
      "locate-ticket", Phrase.of("Utility-locate ticket", "Solicitud de localización de servicios"),
      TICKET, REQUESTED, DIG_FROM, DIG_UNTIL);

  private PermitEntries() {}

  static Permit fold(Permit permit, Entry entry) {
    Body body = entry.body();
    return entry.kind().equals(PERMIT.name())
        ? grant(body, entry.id()).map(permit::with).orElse(permit)
        : ticket(body, entry.id()).map(permit::with).orElse(permit);
  }

  private static Optional<Permit.Grant> grant(Body body, String entry) {
    return ISSUED.in(body).flatMap(issued -> EXPIRES.in(body).map(expires ->
        new Permit.Grant(NUMBER.text(body).orElse(""), issued, expires, AUTHORITY.text(body), entry)));
  }

  private static Optional<Permit.Ticket> ticket(Body body, String entry) {
    Optional<LocalDate> from = DIG_FROM.in(body);
    Optional<LocalDate> until = DIG_UNTIL.in(body);
    if (from.isEmpty() || until.isEmpty()) return Optional.empty();
    return REQUESTED.in(body).map(requested ->
        new Permit.Ticket(TICKET.text(body).orElse(""), requested, from.get(), until.get(), entry));
  }
}
