package steening.office;

import steening.journal.Entry;

/** Entries that differ from another in one thing. */
public final class EntryChanges {
  private EntryChanges() {}

  /** The same with another text in one field. */
  public static Entry with(Entry entry, String field, String text) {
    return new Entry(
        entry.id(), entry.well(), entry.device(), entry.sequence(), entry.who(), entry.happenedAt(), entry.recordedAt(),
        entry.kind(), entry.schema(), entry.body().with(field, text), entry.replaces());
  }

  /** The same fact in another well, under an id of its own that ends in these digits. */
  public static Entry moved(Entry entry, String well, String digits) {
    String id = entry.id().substring(0, entry.id().length() - digits.length()) + digits;
    return new Entry(
        id, well, entry.device(), entry.sequence(), entry.who(), entry.happenedAt(), entry.recordedAt(), entry.kind(),
        entry.schema(), entry.body(), entry.replaces());
  }
}
