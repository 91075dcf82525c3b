package steening.well;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Leave to drill, and leave to dig. Both run out and are renewed: what held on a day is asked of all of them, the
 * numbers to print are the latest.
 *
 * @param grants permits, in the order they were entered
 * @param tickets utility-locate tickets, likewise
 */
public record Permit(List<Grant> grants, List<Ticket> tickets) {
  public static final Part<Permit> PART = Part.ofJob("permit", new Permit(List.of(), List.of()));

  public Permit {
    grants = List.copyOf(grants);
    tickets = List.copyOf(tickets);
  }

  /**
   * A permit.
   *
   * @param issued first day it holds
   * @param expires last day it holds
   */
  public record Grant(String number, LocalDate issued, LocalDate expires, Optional<String> authority, String entry) {}

  /**
   * A utility-locate ticket.
   *
   * @param requested the day it was asked for
   * @param digFrom first day the marks may be relied on
   * @param digUntil last day
   */
  public record Ticket(String number, LocalDate requested, LocalDate digFrom, LocalDate digUntil, String entry) {}

  public Permit with(Grant grant) {
    List<Grant> more = new ArrayList<>(grants);
    more.add(grant);
    return new Permit(more, tickets);
  }

  public Permit with(Ticket ticket) {
    List<Ticket> more = new ArrayList<>(tickets);
    more.add(ticket);
    return new Permit(grants, more);
  }

  public Optional<Grant> grant() {
    return grants.isEmpty() ? Optional.empty() : Optional.of(grants.get(grants.size() - 1));
  }

  public Optional<Ticket> ticket() {
    return tickets.isEmpty() ? Optional.empty() : Optional.of(tickets.get(tickets.size() - 1));
  }

  /** The number of the permit. */
  public Optional<String> number() {
    return grant().map(Grant::number);
  }
}
