package steening.office;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import steening.finding.Finding;
import steening.job.Job;
import steening.journal.Entry;
import steening.journal.Journal;
import steening.office.demo.DemoFirm;

class OfficeShelfTest {
  @TempDir Path folder;

  @Test
  void aWellNobodyWroteAboutIsEmpty() {
    try (Store store = Store.open(folder.resolve("empty.db"), new FreshIds())) {
      OfficeShelf shelf = new OfficeShelf(store);
      assertThat(shelf.wells()).isEmpty();
      assertThat(shelf.job("w1").journal().size()).isZero();
      assertThat(shelf.wells()).isEmpty();
    }
  }

  /** Entries come in from several hands, in no order, while others look: whoever looks sees a whole well. */
  @Test
  void growsWhileItIsReadAndIsWholeAtAnyMoment() throws Exception {
    List<Entry> entries = new ArrayList<>(DemoFirm.entries());
    Collections.shuffle(entries, new Random(5));
    String well = DemoFirm.well("everyday-well").get(0).well();
    try (Store store = Store.open(folder.resolve("busy.db"), new FreshIds())) {
      OfficeShelf shelf = new OfficeShelf(store);
      AtomicBoolean over = new AtomicBoolean();
      ExecutorService crew = Executors.newFixedThreadPool(4);
      Future<Integer> first = crew.submit(() -> look(shelf, well, over));
      Future<Integer> second = crew.submit(() -> look(shelf, well, over));
      List<Future<?>> writers = new ArrayList<>();
      for (int hand = 0; hand < 2; hand++) {
        List<Entry> own = entries.subList(hand * entries.size() / 2, (hand + 1) * entries.size() / 2);
        writers.add(crew.submit(() -> own.forEach(entry -> shelf.append(List.of(entry)))));
      }
      for (Future<?> writer : writers) writer.get();
      over.set(true);
      assertThat(first.get() + second.get()).isPositive();
      crew.shutdown();
      same(shelf.job(well), Job.of(well, Journal.of(DemoFirm.well("everyday-well"))));
      OfficeShelf again = new OfficeShelf(store);
      assertThat(again.wells()).isEqualTo(shelf.wells());
      for (String id : shelf.wells()) same(shelf.job(id), again.job(id));
    }
  }

  /** How often the well was looked at. */
  private static int look(OfficeShelf shelf, String well, AtomicBoolean over) {
    int looks = 0;
    int before = 0;
    do {
      Job job = shelf.job(well);
      assertThat(job.journal().size()).isGreaterThanOrEqualTo(before);
      before = job.journal().size();
      same(job, Job.of(well, job.journal()));
      looks++;
    } while (!over.get());
    return looks;
  }

  private static void same(Job job, Job folded) {
    assertThat(job.journal().entries()).isEqualTo(folded.journal().entries());
    assertThat(job.well()).isEqualTo(folded.well());
    assertThat(codes(job)).isEqualTo(codes(folded));
  }

  private static List<String> codes(Job job) {
    return job.findings().stream().map(Finding::code).toList();
  }
}
