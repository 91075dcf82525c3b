package steening.well;

import java.time.LocalDate;
import java.util.Optional;

/**
 * Leave to drill, and leave to dig.
 *
 * @param number the permit's number
 * @param issued first day the permit holds
 * @param expires last day it holds
 * @param ticket the number of the utility-locate ticket
 * @param digFrom first day the marks may be relied on
 * @param digUntil last day
 */
public record Permit(
    Optional<String> number,
    Optional<LocalDate> issued,
    Optional<LocalDate> expires,
    Optional<String> ticket,
    Optional<LocalDate> digFrom,
    Optional<LocalDate> digUntil) {
  public static final Part<Permit> PART = new Part<>(
      "permit",
      new Permit(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty()));

  public Permit permitted(String number, LocalDate issued, LocalDate expires) {
    return new Permit(Optional.of(number), Optional.of(issued), Optional.of(expires), ticket, digFrom, digUntil);
  }

  public Permit located(String ticket, LocalDate digFrom, LocalDate digUntil) {
    return new Permit(number, issued, expires, Optional.of(ticket), Optional.of(digFrom), Optional.of(digUntil));
  }
}
