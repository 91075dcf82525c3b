package steening.office;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import steening.journal.Entry;

/**
 * Stores portions of 1 and of 20 entries in turn, as fast as it can, until it is killed. Prints each id after
 * {@code append} returned, and never before.
 */
final class RestlessOffice {
  static final String ACKNOWLEDGED = "ok ";
  static final int PORTION = 20;

  private RestlessOffice() {}

  public static void main(String[] arguments) {
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.US_ASCII);
    FreshIds ids = new FreshIds();
    try (Store store = Store.open(Path.of(arguments[0]), ids)) {
      long sequence = store.nextSequence();
      for (int round = 0; ; round++) {
        List<Entry> portion = new ArrayList<>();
        String name = "portion " + ids.next();
        for (int i = 0; i < (round % 2 == 0 ? 1 : PORTION); i++) {
          portion.add(Facts.fact(ids, store.device(), sequence++, name));
        }
        store.append(portion);
        StringBuilder said = new StringBuilder();
        for (Entry entry : portion) said.append(ACKNOWLEDGED).append(entry.id()).append('\n');
        out.print(said);
        out.flush();
      }
    }
  }
}
