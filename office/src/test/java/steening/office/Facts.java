package steening.office;

import java.util.List;
import steening.journal.Body;
import steening.journal.Entry;
import steening.journal.Moment;

/** Small entries for tests. */
final class Facts {
  private static final Moment MOMENT = Moment.parse("2026-05-06T14:05:00-05:00");

  private Facts() {}

  static Entry fact(FreshIds ids, String device, long sequence, String text) {
    return fact(ids.next(), device, sequence, text);
  }

  static Entry fact(String id, String device, long sequence, String text) {
    return new Entry(
        id, "well-1", device, sequence, "Ana", MOMENT, MOMENT, "note", 1, Body.of("text", text), List.of());
  }
}
