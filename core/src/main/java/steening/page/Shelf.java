package steening.page;

import java.util.List;
import steening.job.Job;
import steening.journal.Journal;

/** The journals of the firm, as a shell holds them. */
public interface Shelf {
  /** Ids of all wells, in a fixed order. */
  List<String> wells();

  /** The journal of a well; empty when there is none of that id. */
  Journal journal(String well);

  /** The well folded. A shell may remember what it folded as long as the journal is the same. */
  default Job job(String well) {
    return Job.of(well, journal(well));
  }
}
