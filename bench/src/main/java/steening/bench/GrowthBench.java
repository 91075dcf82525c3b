package steening.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import steening.job.Job;
import steening.journal.Entry;
import steening.journal.Journal;
import steening.journal.Moment;
import steening.page.Desk;
import steening.page.Pen;
import steening.page.Reply;
import steening.page.Request;
import steening.page.Shelf;

/**
 * One entry more on a journal that is folded already, against folding all of it anew; and the same with the well's page
 * drawn after it. The core alone: nothing is stored, nothing is sent.
 */
final class GrowthBench {
  private static final int[] SIZES = {1_000, 10_000, 100_000};
  private static final int APPENDED = 100;

  private GrowthBench() {}

  static List<Row> measure() throws Exception {
    List<Row> rows = new ArrayList<>();
    for (int size : SIZES) {
      rows.addAll(rows("levels of a logger", LongJournal.of(LongJournal.LEVELS, size + APPENDED)));
      rows.addAll(rows("readings of all sorts", LongJournal.of(LongJournal.MIXED, size + APPENDED)));
    }
    return rows;
  }

  private static List<Row> rows(String sort, List<Entry> entries) throws Exception {
    int size = entries.size() - APPENDED;
    int runs = Math.max(2, 20_000 / size);
    String well = entries.get(0).well();
    Job before = Job.of(well, Journal.of(entries.subList(0, size)));
    List<Entry> more = entries.subList(size, entries.size());
    List<Entry> one = entries.subList(size, size + 1);
    double appended = Stopwatch.median(10, () -> grown(before, more)) / APPENDED;
    double refolded = Stopwatch.median(runs, () -> Job.of(well, Journal.of(entries.subList(0, size + 1))));
    double page = Stopwatch.median(runs, () -> page(before.with(one)));
    double anew = Stopwatch.median(runs, () -> page(Job.of(well, Journal.of(entries.subList(0, size + 1)))));
    String what = size + " " + sort;
    return List.of(
        Row.time("an entry onto " + what, appended, "folding all anew", refolded),
        Row.time("the same, and the well's page", page, "folding anew, and the page", anew));
  }

  private static void grown(Job before, List<Entry> more) {
    Job job = before;
    for (Entry entry : more) job = job.with(List.of(entry));
    if (job.journal().size() != before.journal().size() + more.size()) throw new IllegalStateException("entries lost");
  }

  static int page(Job job) {
    String id = job.well().id();
    Request request = new Request("GET", "/well/" + id, Map.of(), Map.of());
    Moment now = job.journal().entries().get(job.journal().size() - 1).recordedAt();
    Reply reply = Desk.answer(request, new OneWell(job), now, new Pen("bench", 1, List.of("fresh")));
    if (reply.status() != 200) throw new IllegalStateException("no page: " + reply.status());
    return reply.body().length();
  }

  /** A shelf with nothing else on it. */
  private record OneWell(Job folded) implements Shelf {
    @Override
    public List<String> wells() {
      return List.of(folded.well().id());
    }

    @Override
    public Journal journal(String well) {
      return folded.journal();
    }

    @Override
    public Job job(String well) {
      return folded;
    }
  }
}
