package steening.office;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentSkipListMap;
import steening.job.Job;
import steening.journal.Entry;
import steening.journal.Journal;
import steening.page.Shelf;

/** The journals of the firm in memory, loaded once. What is here is on disk; each journal is whole at any moment. */
public final class OfficeShelf implements Shelf {
  private final Store store;
  private final ConcurrentSkipListMap<String, Binder> binders = new ConcurrentSkipListMap<>();

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
    return List.copyOf(binders.keySet());
  }

  @Override
  public Journal journal(String well) {
    return binder(well).journal();
  }

  /** Folded when first asked for; what is written after that is folded onto it. */
  @Override
  public Job job(String well) {
    return binder(well).job();
  }

  private Binder binder(String well) {
    Binder binder = binders.get(well);
    return binder == null ? Binder.empty(well) : binder;
  }

  private void take(List<Entry> entries) {
    Map<String, List<Entry>> byWell = new TreeMap<>();
    for (Entry entry : entries) byWell.computeIfAbsent(entry.well(), well -> new ArrayList<>()).add(entry);
    byWell.forEach((well, more) -> binders.put(well, binder(well).with(more)));
  }
}
