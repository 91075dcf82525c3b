package steening.bench;

import java.util.ArrayList;
import java.util.List;
import steening.journal.Body;
import steening.journal.Entry;
import steening.journal.Moment;
import steening.office.demo.DemoFirm;

/** The everyday well with far more entries than anyone would make, each later than the one before. */
final class LongJournal {
  /** What a logger would read. */
  static final List<String> LEVELS = List.of("pumping-level");

  /** What can go on and on at a well: readings of every sort. Pipe, bags and batches end with the hole. */
  static final List<String> MIXED = List.of(
      "mud", "development", "development-tape", "static-level", "pumping-level", "recovery-level", "disinfection",
      "residual");

  private LongJournal() {}

  /** So many entries: the well's own, and then those of some kinds over and over, an hour apart. */
  static List<Entry> of(List<String> kinds, int size) {
    List<Entry> entries = new ArrayList<>(DemoFirm.well("everyday-well"));
    List<Entry> again = entries.stream().filter(e -> kinds.contains(e.kind())).toList();
    Moment last = entries.stream().max(Entry.ORDER).orElseThrow().happenedAt();
    for (int i = 0; entries.size() < size; i++) {
      Entry pattern = again.get(i % again.size());
      String id = pattern.id().substring(0, 28) + String.format("%08x", i);
      Moment at = last.plusMinutes(60L * (i + 1));
      entries.add(new Entry(
          id, pattern.well(), pattern.device(), 10_000L + i, pattern.who(), at, at, pattern.kind(), pattern.schema(),
          timed(pattern.body(), i), pattern.replaces()));
    }
    return entries;
  }

  private static Body timed(Body body, int place) {
    String minutes = 20 + place / 5 + "." + 2 * (place % 5) + " min";
    return body.text("minutes").isPresent() ? body.with("minutes", minutes) : body;
  }
}
