package steening.journal;

import java.util.Comparator;
import java.util.List;

/**
 * One fact about one well, never edited.
 *
 * @param id a UUID, version 7, given by the device that took the fact down
 * @param well the id of the well it belongs to
 * @param device the device that took it down
 * @param sequence counts the entries of this device: 1, 2, 3 and so on
 * @param who the hand that typed it
 * @param happenedAt when it happened at the well, as the crew says
 * @param recordedAt when it was typed
 * @param kind what it is a fact about; see the register of stages
 * @param schema the version of the kind's body, from 1
 * @param body the values
 * @param replaces ids of the entries that this one corrects or withdraws
 */
public record Entry(
    String id,
    String well,
    String device,
    long sequence,
    String who,
    Moment happenedAt,
    Moment recordedAt,
    String kind,
    int schema,
    Body body,
    List<String> replaces) {

  /** The kind of an entry that takes others back without putting anything in their place. */
  public static final String WITHDRAWAL = "withdrawal";

  /** Total: no two different entries are equal in it, since ids are unique. */
  public static final Comparator<Entry> ORDER =
      Comparator.comparingLong((Entry e) -> e.happenedAt.epochMillis())
          .thenComparingLong(e -> e.recordedAt.epochMillis())
          .thenComparing(Entry::device)
          .thenComparingLong(Entry::sequence)
          .thenComparing(Entry::id);

  public Entry {
    replaces = List.copyOf(replaces);
    if (sequence < 1) throw new IllegalArgumentException("sequence counts from 1, not " + sequence);
    if (schema < 1) throw new IllegalArgumentException("schema counts from 1, not " + schema);
  }

  public boolean isWithdrawal() {
    return kind.equals(WITHDRAWAL);
  }
}
