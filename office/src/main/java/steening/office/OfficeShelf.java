package steening.office;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentSkipListMap;
import steening.job.Job;
import steening.journal.Entry;
import steening.journal.Journal;
import steening.page.Shelf;

/** The journals of the firm in memory, loaded once. What is here is on disk; each journal is whole at any moment. */
public final class OfficeShelf implements Shelf {
  private final Store store;
  private final ConcurrentSkipListMap<String, Journal> journals = new ConcurrentSkipListMap<>();
  private final ConcurrentHashMap<String, Job> jobs = new ConcurrentHashMap<>();

  public OfficeShelf(Store store) {
    this.store = store;
    List<Entry> all = new ArrayList<>(store.all());
    // the choice between contents under one id is the journal's, so that it is the same on every device
    all.addAll(store.quarantined());
    take(all);
  }

  /** Stores entries, and shows them once they are on disk. */
  public synchronized Receipt append(List<Entry> entries) {
    Receipt receipt = store.append(entries);
    List<Entry> fresh = new ArrayList<>(receipt.stored());
    fresh.addAll(receipt.clashing());
    take(fresh);
    return receipt;
  }

  @Override
  public List<String> wells() {
    return List.copyOf(journals.keySet());
  }

  @Override
  public Journal journal(String well) {
    return journals.getOrDefault(well, Journal.EMPTY);
  }

  /** Folded when first asked for, and again when something was written. */
  @Override
  public Job job(String well) {
    Journal journal = journal(well);
    Job known = jobs.get(well);
    if (known != null && known.journal() == journal) return known;
    Job job = Job.of(well, journal);
    jobs.put(well, job);
    return job;
  }

  private void take(List<Entry> entries) {
    Map<String, List<Entry>> byWell = new TreeMap<>();
    for (Entry entry : entries) byWell.computeIfAbsent(entry.well(), well -> new ArrayList<>()).add(entry);
    byWell.forEach((well, more) -> journals.put(well, journal(well).with(more)));
  }
}
