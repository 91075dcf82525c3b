package steening.stage.permit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.journal.Dates;
import steening.language.Phrase;
import steening.language.Shown;
import steening.stage.Sheet;
import steening.well.Permit;
import steening.well.Well;

/** The papers, and the first day on which both allow to drill. */
final class PermitSheet {
  private static final Phrase PERMITS = Phrase.of("Permits", "Permisos");
  private static final Phrase TICKETS = Phrase.of("Utility-locate tickets", "Solicitudes de localización de servicios");

  private PermitSheet() {}

  static Sheet of(Well well) {
    Permit permit = well.get(Permit.PART);
    Sheet sheet = Sheet.EMPTY;
    Optional<LocalDate> first = firstDay(permit);
    if (first.isPresent()) {
      sheet = sheet.line(Phrase.of("drilling allowed from", "se puede perforar desde"), day(first.get()));
    }
    return sheet
        .table(
            PERMITS,
            List.of(
                PermitEntries.NUMBER.label(),
                PermitEntries.ISSUED.label(),
                PermitEntries.EXPIRES.label(),
                PermitEntries.AUTHORITY.label()),
            grants(permit))
        .table(
            TICKETS,
            List.of(
                PermitEntries.TICKET.label(),
                PermitEntries.REQUESTED.label(),
                PermitEntries.DIG_FROM.label(),
                PermitEntries.DIG_UNTIL.label()),
            tickets(permit));
  }

  /** The later of permit and ticket, where there is a day that both allow. */
  private static Optional<LocalDate> firstDay(Permit permit) {
    if (permit.grant().isEmpty() || permit.ticket().isEmpty()) return Optional.empty();
    Permit.Grant grant = permit.grant().get();
    Permit.Ticket ticket = permit.ticket().get();
    LocalDate first = grant.issued().isAfter(ticket.digFrom()) ? grant.issued() : ticket.digFrom();
    return first.isAfter(grant.expires()) || first.isAfter(ticket.digUntil()) ? Optional.empty() : Optional.of(first);
  }

  private static List<List<Shown>> grants(Permit permit) {
    List<List<Shown>> rows = new ArrayList<>();
    for (Permit.Grant grant : permit.grants()) {
      Phrase authority = Phrase.same(grant.authority().orElse("–"));
      rows.add(List.of(Phrase.same(grant.number()), day(grant.issued()), day(grant.expires()), authority));
    }
    return rows;
  }

  private static List<List<Shown>> tickets(Permit permit) {
    List<List<Shown>> rows = new ArrayList<>();
    for (Permit.Ticket ticket : permit.tickets()) {
      rows.add(List.of(
          Phrase.same(ticket.number()), day(ticket.requested()), day(ticket.digFrom()), day(ticket.digUntil())));
    }
    return rows;
  }

  private static Phrase day(LocalDate date) {
    return Phrase.same(Dates.format(date));
  }
}
