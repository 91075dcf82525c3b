package steening.stage.casing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.job.JobInSteps;
import steening.language.Language;
import steening.language.Reader;
import steening.language.UnitSystem;
import steening.stage.EverydayWell;
import steening.stage.Sheet;
import steening.well.Cure;

/**
 * Own scenario, arithmetic checked by hand. An entry happens ten minutes after the one before. At 80 °F and 40 % a 4-in
 * joint takes 6 h by the slowest table.
 */
class CementingTest {
  private static final Reader US = Reader.US_ENGLISH;
  private static final Reader METRIC_SPANISH = new Reader(Language.SPANISH, UnitSystem.METRIC);
  private static final JobInSteps WARM =
      EverydayWell.set(EverydayWell.lowered().then("cemented", "temperature", "80 °F", "humidity", "40 %"));

  @Test
  void theClockRunsFromTheLastPiece() {
    Cure cure = cure(WARM);
    int pieces = (int) WARM.entries().stream().takeWhile(e -> !e.kind().equals("cut-piece")).count() + 1;
    assertThat(cure.joined().toString()).isEqualTo(WARM.entries().get(pieces - 1).happenedAt().toString());
    assertThat(cure.until().minutesSince(cure.joined())).isEqualTo(6 * 60);
    assertThat(shown(WARM, "casing", US)).contains("no blow, air lift or grout before " + cure.clock());
    assertThat(shown(WARM, "seal", METRIC_SPANISH))
        .contains("no antes de que cure el cemento de las uniones " + cure.clock());
    assertThat(WARM.findings("casing")).isEmpty();
  }

  /** At 80 °F in dry air: set 1 h and 30 min; cure 6 h, 1.5 h and 6 h. */
  @Test
  void showsWhatEachTableSays() {
    Sheet.Table tables = WARM.stage("casing").sheet(WARM.job().well()).tables().stream()
        .filter(t -> t.title().english().startsWith("The makers' tables")).findFirst().orElseThrow();
    assertThat(tables.rows().stream().map(row -> row.get(0).shownTo(US) + ": " + row.get(1).shownTo(US)))
        .containsExactly(
            "set, technical manual: 60.0 min", "set, application guide: 30.0 min", "cure, technical manual: 6.0 h",
            "cure, application guide: 1.5 h", "cure, cure chart: 6.0 h");
    JobInSteps unsaid = EverydayWell.cased().then("cemented", "temperature", "80 °F");
    assertThat(shown(unsaid, "casing", US)).contains(
        "no blow, air lift or grout before " + cure(unsaid).clock() + "; half as long again in damp air");
  }

  /** A temperature written down after the string was set does not move the clock. */
  @Test
  void itDoesNotMatterWhenTheAirIsWrittenDown() {
    JobInSteps late = EverydayWell.cased().then("cemented", "temperature", "80 °F", "humidity", "40 %");
    assertThat(cure(late).joined()).isEqualTo(
        late.entries().stream().filter(e -> e.kind().equals("cut-piece")).findFirst().orElseThrow().happenedAt());
  }

  @Test
  void anotherDayIsSaidWithItsDate() {
    JobInSteps cold = EverydayWell.cased().then("cemented", "temperature", "30 °F", "humidity", "70 %");
    assertThat(cure(cold).until().minutesSince(cure(cold).joined())).as("72 h and half of it").isEqualTo(108 * 60);
    assertThat(cure(cold).clock()).startsWith("2026-05-1").contains(" ");
  }

  @Test
  void withoutCementThereIsNoClock() {
    assertThat(EverydayWell.cased().job().well().get(Cure.PART)).isEmpty();
    assertThat(shown(EverydayWell.cased(), "casing", US)).noneMatch(line -> line.contains("before"));
  }

  @Test
  void aStringWithoutPiecesIsTimedFromWhenItWasSet() {
    JobInSteps bare = JobInSteps.nothing().then("cemented", "temperature", "80 °F")
        .then("string-set", "stick-up", "1.5 ft", "outside", "4.5 in", "wall", "0.237 in");
    assertThat(cure(bare).joined()).isEqualTo(bare.entries().get(1).happenedAt());
  }

  @Test
  void beyondTheTablesTheLabelIsAskedFor() {
    JobInSteps hot = EverydayWell.cased().then("cemented", "temperature", "110 °F");
    assertThat(hot.job().well().get(Cure.PART)).isEmpty();
    assertThat(hot.findings("casing")).extracting(Finding::code).containsExactly("casing.cure-unknown");
    assertThat(hot.findings("casing").get(0).text().shownTo(METRIC_SPANISH)).contains("43.3 °C");
  }

  @Test
  void chipsBeforeTheCureAreSeen() {
    JobInSteps early = sounded(WARM).then("chips", "bags", "2");
    Finding finding = early.finding("seal.before-cure").orElseThrow();
    assertThat(finding.weight()).isEqualTo(Weight.LOOK);
    assertThat(finding.text().shownTo(US)).matches(
        "The seal was begun 0\\.\\d h after the last joint was cemented; the cement takes 6\\.0 h,"
            + " until \\d\\d:\\d\\d\\.");
    assertThat(finding.entries()).containsExactly(early.entries().get(early.entries().size() - 1).id());
  }

  @Test
  void groutAfterTheCureIsNot() {
    JobInSteps waiting = WARM;
    while (waiting.entries().get(waiting.entries().size() - 1).happenedAt().minutesSince(cure(WARM).until()) < 0) {
      waiting = waiting.then("pack-tape", "reading", "115 ft", "from", "ground");
    }
    assertThat(waiting.then("chips", "bags", "2").finding("seal.before-cure")).isEmpty();
    assertThat(sounded(EverydayWell.cased()).then("chips", "bags", "2").finding("seal.before-cure")).isEmpty();
  }

  private static JobInSteps sounded(JobInSteps job) {
    return job.then("pack-tape", "reading", "115 ft", "from", "ground");
  }

  private static Cure cure(JobInSteps job) {
    return job.job().well().get(Cure.PART).orElseThrow();
  }

  private static List<String> shown(JobInSteps job, String stage, Reader reader) {
    Sheet sheet = job.stage(stage).sheet(job.job().well());
    return sheet.lines().stream().map(l -> l.label().shownTo(reader) + " " + l.value().shownTo(reader)).toList();
  }
}
