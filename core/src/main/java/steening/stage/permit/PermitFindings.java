package steening.stage.permit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.journal.Dates;
import steening.journal.Moment;
import steening.language.Phrase;
import steening.well.Hole;
import steening.well.Permit;
import steening.well.Well;

/** Whether there was leave to drill and leave to dig on the day the hole was begun. */
final class PermitFindings {
  private static final Phrase STOP_DRILLING = Phrase.of(
      "Stop and ask the authority before going on.", "Pare y consulte a la autoridad antes de seguir.");
  private static final Phrase STOP_DIGGING = Phrase.of(
      "Stop. Call for a locate and check that every utility has answered; private lines are not marked.",
      "Pare. Pida la localización y compruebe que todos respondieron; las líneas privadas no se marcan.");

  private PermitFindings() {}

  static List<Finding> of(Well well) {
    Permit permit = well.get(Permit.PART);
    List<Finding> findings = new ArrayList<>();
    Optional<Moment> begun = well.get(Hole.PART).begun();
    if (begun.isPresent()) {
      leaveToDrill(permit.grants(), begun.get().date()).ifPresent(findings::add);
      leaveToDig(permit.tickets(), begun.get().date()).ifPresent(findings::add);
    }
    for (Permit.Grant grant : permit.grants()) disorder(grant).ifPresent(findings::add);
    for (Permit.Ticket ticket : permit.tickets()) disorder(ticket).ifPresent(findings::add);
    return findings;
  }

  private static Optional<Finding> leaveToDrill(List<Permit.Grant> grants, LocalDate day) {
    if (grants.stream().anyMatch(g -> holds(day, g.issued(), g.expires()))) return Optional.empty();
    if (grants.isEmpty()) {
      return Optional.of(stop("permit.missing", Phrase.of(
              "Drilling began on {0}, and no permit is written down.",
              "La perforación empezó el {0} y no hay permiso anotado.",
              text(day)))
          .so(STOP_DRILLING));
    }
    Permit.Grant last = grants.get(grants.size() - 1);
    boolean expired = day.isAfter(last.expires());
    Finding finding = expired
        ? stop("permit.expired", Phrase.of(
            "Drilling began on {0}; permit {1} held until {2}.",
            "La perforación empezó el {0}; el permiso {1} venció el {2}.",
            text(day), last.number(), text(last.expires())))
        : stop("permit.not-yet-issued", Phrase.of(
            "Drilling began on {0}; permit {1} was issued on {2}.",
            "La perforación empezó el {0}; el permiso {1} se expidió el {2}.",
            text(day), last.number(), text(last.issued())));
    return Optional.of(finding.so(STOP_DRILLING).from(List.of(last.entry())));
  }

  private static Optional<Finding> leaveToDig(List<Permit.Ticket> tickets, LocalDate day) {
    if (tickets.stream().anyMatch(t -> holds(day, t.digFrom(), t.digUntil()))) return Optional.empty();
    if (tickets.isEmpty()) {
      return Optional.of(stop("permit.ticket-missing", Phrase.of(
              "Drilling began on {0}, and no utility-locate ticket is written down.",
              "La perforación empezó el {0} y no hay solicitud de localización de servicios anotada.", text(day)))
          .so(STOP_DIGGING));
    }
    Permit.Ticket last = tickets.get(tickets.size() - 1);
    boolean expired = day.isAfter(last.digUntil());
    Finding finding = expired
        ? stop("permit.ticket-expired", Phrase.of(
            "Drilling began on {0}; the marks of ticket {1} held until {2}.",
            "La perforación empezó el {0}; las marcas de la solicitud {1} valían hasta el {2}.",
            text(day), last.number(), text(last.digUntil())))
        : stop("permit.ticket-not-yet", Phrase.of(
            "Drilling began on {0}; ticket {1} allows digging from {2}.",
            "La perforación empezó el {0}; la solicitud {1} permite excavar desde el {2}.",
            text(day), last.number(), text(last.digFrom())));
    return Optional.of(finding.so(STOP_DIGGING).from(List.of(last.entry())));
  }

  private static Optional<Finding> disorder(Permit.Grant grant) {
    if (!grant.expires().isBefore(grant.issued())) return Optional.empty();
    return Optional.of(disorder(grant.entry(), Phrase.of(
        "Permit {0} ends on {1}, before it was issued on {2}.",
        "El permiso {0} vence el {1}, antes de expedirse el {2}.",
        grant.number(), text(grant.expires()), text(grant.issued()))));
  }

  private static Optional<Finding> disorder(Permit.Ticket ticket) {
    boolean inOrder = !ticket.digFrom().isBefore(ticket.requested()) && !ticket.digUntil().isBefore(ticket.digFrom());
    if (inOrder) return Optional.empty();
    return Optional.of(disorder(ticket.entry(), Phrase.of(
        "Ticket {0}: requested {1}, dig from {2}, dig until {3}; these days are not in order.",
        "Solicitud {0}: pedida {1}, excavar desde {2}, hasta {3}; estas fechas no están en orden.",
        ticket.number(), text(ticket.requested()), text(ticket.digFrom()), text(ticket.digUntil()))));
  }

  private static Finding disorder(String entry, Phrase text) {
    return Finding.of("permit.dates", Weight.LOOK, PermitStage.NAME, text)
        .because(Phrase.of("Month and day turned round?", "¿Día y mes invertidos?"))
        .so(Phrase.of(
            "Read the paper again and correct the entry.", "Lea otra vez el documento y corrija el registro."))
        .from(List.of(entry));
  }

  private static Finding stop(String code, Phrase text) {
    return Finding.of(code, Weight.STOP, PermitStage.NAME, text);
  }

  private static boolean holds(LocalDate day, LocalDate first, LocalDate last) {
    return !day.isBefore(first) && !day.isAfter(last);
  }

  private static String text(LocalDate day) {
    return Dates.format(day);
  }
}
