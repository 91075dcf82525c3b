package steening.bench;

import java.util.ArrayList;
import java.util.List;
import steening.job.Job;
import steening.journal.Codec;
import steening.journal.Entry;
import steening.journal.Journal;
import steening.office.demo.DemoFirm;

/** Folding a journal of a thousand entries into a well, against only reading the same entries from their text. */
final class FoldBench {
  private static final int ENTRIES = 1000;
  private static final int RUNS = 40;

  private FoldBench() {}

  static Row measure() throws Exception {
    List<Entry> entries = longJournal();
    List<String> texts = entries.stream().map(Codec::write).toList();
    String well = entries.get(0).well();
    double fold = Stopwatch.median(RUNS, () -> Job.of(well, Journal.of(entries)).findings());
    double read = Stopwatch.median(RUNS, () -> texts.forEach(Codec::read));
    return Row.time("fold 1,000 entries, with all findings", fold, "reading their 1,000 lines", read);
  }

  /** The everyday well with its levels read far more often than anyone would. */
  static List<Entry> longJournal() {
    List<Entry> entries = new ArrayList<>(DemoFirm.well("everyday-well"));
    List<Entry> levels = entries.stream().filter(e -> e.kind().equals("pumping-level")).toList();
    for (int i = 0; entries.size() < ENTRIES; i++) {
      Entry level = levels.get(i % levels.size());
      String id = level.id().substring(0, 28) + String.format("%08x", i);
      String minutes = (20 + i * 0.2) + " min";
      entries.add(new Entry(
          id, level.well(), level.device(), 10_000L + i, level.who(), level.happenedAt(), level.recordedAt(),
          level.kind(), level.schema(), level.body().with("minutes", minutes), level.replaces()));
    }
    return entries;
  }
}
