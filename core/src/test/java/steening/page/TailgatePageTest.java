package steening.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import steening.job.JobInSteps;
import steening.journal.Journal;
import steening.journal.Moment;
import steening.stage.EverydayWell;

class TailgatePageTest {
  private static final Moment NOW = Moment.parse("2026-05-12T20:00:00-05:00");

  @Test
  void saysWhatIsStillAheadAndNothingTwice() {
    String planned = page(EverydayWell.planned(), "/well/w1/tailgate", Map.of());
    assertThat(planned).contains("<h1>Tailgate sheet</h1>", "<h2>Drilling</h2>", "keep mast, rods and hoist 10 ft away")
        .contains("Local code, product label and the licensed person come first.")
        .contains("href=\"/well/w1\"");
    assertThat(planned.split("keep mast, rods and hoist", -1)).as("site and drilling have it both").hasSize(2);
    String cased = page(EverydayWell.cased(), "/well/w1/tailgate", Map.of());
    assertThat(cased).doesNotContain("<h2>Casing and screen</h2>").contains("Wet cement burns");
  }

  @Test
  void speaksSpanishAndMetres() {
    String page = page(EverydayWell.planned(), "/well/w1/tailgate", Map.of("language", "es", "units", "metric"));
    assertThat(page).contains("<h1>Plática de seguridad</h1>", "Nunca se mueva con el mástil arriba",
        "mástil, varillas y malacate a 3.1 m hasta 50 kV", "de memoria", "leído");
  }

  @Test
  void isReachedFromTheWell() {
    assertThat(page(EverydayWell.planned(), "/well/w1", Map.of()))
        .contains("<a href=\"/well/w1/tailgate\">Tailgate sheet</a>");
  }

  private static String page(JobInSteps job, String path, Map<String, String> cookies) {
    Journal journal = Journal.of(job.entries());
    Shelf shelf = new Shelf() {
      @Override
      public List<String> wells() {
        return List.of("w1");
      }

      @Override
      public Journal journal(String well) {
        return journal;
      }
    };
    Reply reply = Desk.answer(new Request("GET", path, Map.of(), cookies), shelf, NOW, new Pen("d1", 1, List.of()));
    assertThat(reply.status()).isEqualTo(200);
    return reply.body();
  }
}
