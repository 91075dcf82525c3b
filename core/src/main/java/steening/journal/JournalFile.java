package steening.journal;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import steening.language.Phrase;

/**
 * The text of a journal file, taken apart: an entry a line. Blank lines and lines that begin with {@code #} say
 * nothing; every other line is here, as an entry or as a fault. Whoever stores a file does so only when it
 * {@link #isSound}.
 *
 * @param entries in the order of the file, repetitions among them
 * @param faults in the order of the file
 */
public record JournalFile(List<Entry> entries, List<Fault> faults) {
  private static final char BYTE_ORDER_MARK = '\uFEFF';

  public JournalFile {
    entries = List.copyOf(entries);
    faults = List.copyOf(faults);
  }

  /** Never fails: what cannot be read is a fault. */
  public static JournalFile read(String text) {
    return read(text, entry -> List.of());
  }

  /**
   * The same, with bodies held to their kinds.
   *
   * @param faultsOf what is wrong with an entry that is well formed; nothing for a kind that nobody here knows
   */
  public static JournalFile read(String text, Function<Entry, List<Phrase>> faultsOf) {
    List<Entry> entries = new ArrayList<>();
    List<Fault> faults = new ArrayList<>();
    int lineNumber = 0;
    int start = !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? 1 : 0;
    while (start < text.length()) {
      int end = text.indexOf('\n', start);
      if (end < 0) end = text.length();
      String line = text.substring(start, end).trim();
      lineNumber++;
      start = end + 1;
      if (line.isEmpty() || line.startsWith("#")) continue;
      try {
        Entry entry = Codec.read(line);
        List<Phrase> wrong = faultsOf.apply(entry);
        if (wrong.isEmpty()) entries.add(entry);
        for (Phrase phrase : wrong) faults.add(new Fault(lineNumber, line, phrase));
      } catch (UnreadableEntry e) {
        faults.add(new Fault(lineNumber, line, e.phrase()));
      }
    }
    return new JournalFile(entries, faults);
  }

  /** No faults: all that the file says was understood. */
  public boolean isSound() {
    return faults.isEmpty();
  }
}
