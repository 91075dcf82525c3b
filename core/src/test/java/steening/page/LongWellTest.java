package steening.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import steening.job.Job;
import steening.job.JobInSteps;
import steening.journal.Journal;
import steening.journal.Moment;
import steening.stage.EverydayWell;

/** A well that was read five hundred times: its pages stay such that a person can use them. */
class LongWellTest {
  private static final Moment NOW = Moment.parse("2026-08-12T20:00:00-05:00");
  private static final int READ = 500;
  private static final JobInSteps STEPS = longWell();
  private static final int ALL = STEPS.entries().size();

  @Test
  void theJournalIsTurnedPageByPage() {
    List<String> seen = new ArrayList<>();
    String before = "";
    for (int page = 0; page * 200 < ALL; page++) {
      String text = page("/well/w1/journal", before.isEmpty() ? Map.of() : Map.of("before", before));
      List<String> ids = ids(text);
      assertThat(ids).hasSize(Math.min(200, ALL - page * 200));
      assertThat(text.contains("?before=")).isEqualTo((page + 1) * 200 < ALL);
      assertThat(text.contains(">Newest entries<")).isEqualTo(page > 0);
      seen.addAll(ids);
      before = ids.get(ids.size() - 1);
    }
    List<String> all = new ArrayList<>(STEPS.entries().stream().map(e -> e.id()).toList());
    Collections.reverse(all);
    assertThat(seen).isEqualTo(all);
  }

  @Test
  void anUnknownPlaceInTheJournalIsItsEnd() {
    Map<String, String> nowhere = Map.of("before", "no-such-entry");
    assertThat(page("/well/w1/journal", nowhere)).isEqualTo(page("/well/w1/journal", Map.of()));
  }

  @Test
  void aTableShowsItsBeginningAndItsEndAndSaysWhatLiesBetween() {
    String text = page("/well/w1/test", Map.of());
    assertThat(text).contains((READ - 90) + " more rows lie between; the journal has them.");
    assertThat(text.split("<tr>", -1).length).isLessThan(200);
  }

  private static JobInSteps longWell() {
    JobInSteps steps = EverydayWell.cased()
        .then("static-level", "level", "31.0 ft", "from", "ground")
        .then("pumping-start", "rate", "10 gpm");
    for (int i = 1; i <= READ; i++) {
      steps = steps.then("pumping-level", "minutes", i + " min", "level", "35 ft", "from", "ground");
    }
    return steps;
  }

  private static List<String> ids(String page) {
    List<String> ids = new ArrayList<>();
    String mark = "id=\"entry-";
    for (int at = page.indexOf(mark); at >= 0; at = page.indexOf(mark, at + 1)) {
      ids.add(page.substring(at + mark.length(), page.indexOf('"', at + mark.length())));
    }
    return ids;
  }

  private static String page(String path, Map<String, String> values) {
    Job job = STEPS.job();
    Shelf shelf = new Shelf() {
      @Override
      public List<String> wells() {
        return List.of("w1");
      }

      @Override
      public Journal journal(String well) {
        return job.journal();
      }
    };
    return Desk.answer(new Request("GET", path, values, Map.of()), shelf, NOW, new Pen("d1", 1, List.of("x"))).body();
  }
}
