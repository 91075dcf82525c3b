package steening.office;

import java.util.List;
import steening.job.Job;
import steening.journal.Entry;
import steening.journal.Journal;

/** One well on the shelf: its journal, folded when somebody first asks; from then on both grow together. */
final class Binder {
  private final String well;
  private final Journal journal;
  private Job job;

  private Binder(String well, Journal journal) {
    this.well = well;
    this.journal = journal;
  }

  static Binder empty(String well) {
    return new Binder(well, Journal.EMPTY);
  }

  /** This one stays as it is for those who are reading in it. */
  synchronized Binder with(List<Entry> more) {
    if (job == null) return new Binder(well, journal.with(more));
    Job grown = job.with(more);
    Binder binder = new Binder(well, grown.journal());
    binder.job = grown;
    return binder;
  }

  Journal journal() {
    return journal;
  }

  synchronized Job job() {
    if (job == null) job = Job.of(well, journal);
    return job;
  }
}
