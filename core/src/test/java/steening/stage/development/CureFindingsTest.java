package steening.stage.development;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import steening.finding.Finding;
import steening.job.JobInSteps;
import steening.language.Language;
import steening.language.Reader;
import steening.language.UnitSystem;
import steening.stage.EverydayWell;

/** Own scenario: at 80 °F and 40 % a 4-in joint cures in 6 h by the slowest table; an entry every ten minutes. */
class CureFindingsTest {
  private static final JobInSteps CASED =
      EverydayWell.set(EverydayWell.lowered().then("cemented", "temperature", "80 °F", "humidity", "40 %"));

  @Test
  void noAirLiftBeforeTheCementHasCured() {
    Finding early = air(CASED, "air-lift").finding("development.before-cure").orElseThrow();
    assertThat(early.text().shownTo(Reader.US_ENGLISH))
        .startsWith("Development by air-lift: 0.3 h after the last joint was cemented; the cement takes 6.0 h, until ");
    assertThat(early.next().orElseThrow().shownTo(new Reader(Language.SPANISH, UnitSystem.METRIC)))
        .startsWith("Pare hasta entonces");
    assertThat(air(CASED, "bailing").finding("development.before-cure")).isEmpty();
    assertThat(air(EverydayWell.cased(), "air-lift").finding("development.before-cure")).isEmpty();
  }

  @Test
  void isSilentOnceItHasCured() {
    JobInSteps waited = CASED;
    for (int i = 0; i < 40; i++) waited = waited.then("development-tape", "reading", "115 ft", "from", "ground");
    assertThat(air(waited, "air-lift").finding("development.before-cure")).isEmpty();
  }

  private static JobInSteps air(JobInSteps job, String method) {
    return job.then("development", "method", method, "minutes", "30 min");
  }
}
