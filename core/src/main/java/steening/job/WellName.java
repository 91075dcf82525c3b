package steening.job;

import java.util.Optional;
import steening.journal.Journal;

/** What people call a well: who asked for it and where it is. */
public final class WellName {
  private WellName() {}

  public static String of(Journal journal) {
    Optional<String> caller = last(journal, "enquiry", "caller");
    Optional<String> address = last(journal, "site", "address");
    if (caller.isPresent() && address.isPresent()) return caller.get() + ", " + address.get();
    return caller.or(() -> address).orElse("—");
  }

  private static Optional<String> last(Journal journal, String kind, String field) {
    return journal.facts().stream()
        .filter(e -> e.kind().equals(kind))
        .map(e -> e.body().text(field))
        .flatMap(Optional::stream)
        .reduce((earlier, later) -> later);
  }
}
