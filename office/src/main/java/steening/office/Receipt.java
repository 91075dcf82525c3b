package steening.office;

import java.util.List;
import steening.journal.Entry;

/**
 * What became of entries that were handed to the store. All of it is on disk.
 *
 * @param stored were new
 * @param known were there already, word for word
 * @param clashing came under an id that is taken by another content: set aside, and to be shown to someone
 */
public record Receipt(List<Entry> stored, List<Entry> known, List<Entry> clashing) {
  public Receipt {
    stored = List.copyOf(stored);
    known = List.copyOf(known);
    clashing = List.copyOf(clashing);
  }
}
