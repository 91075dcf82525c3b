package steening.bench;

import java.util.List;
import steening.job.Job;
import steening.journal.Codec;
import steening.journal.Entry;
import steening.journal.Journal;

/** Folding a journal of a thousand entries into a well, against only reading the same entries from their text. */
final class FoldBench {
  private static final int ENTRIES = 1000;
  private static final int RUNS = 40;

  private FoldBench() {}

  static Row measure() throws Exception {
    List<Entry> entries = LongJournal.of(LongJournal.LEVELS, ENTRIES);
    List<String> texts = entries.stream().map(Codec::write).toList();
    String well = entries.get(0).well();
    double fold = Stopwatch.median(RUNS, () -> Job.of(well, Journal.of(entries)).findings());
    double read = Stopwatch.median(RUNS, () -> texts.forEach(Codec::read));
    return Row.time("fold 1,000 entries, with all findings", fold, "reading their 1,000 lines", read);
  }
}
