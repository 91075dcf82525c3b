package steening.stage.development;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import steening.drawing.Chart;
import steening.finding.Expectation;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.job.JobInSteps;
import steening.language.Language;
import steening.language.Reader;
import steening.language.UnitSystem;
import steening.quantity.Unit;
import steening.stage.Sheet;
import steening.stage.TestedWell;

/** Own scenario: the everyday well developed until every criterion is met, and one that never will. Checked by hand. */
class StopRuleTest {
  private static final Reader SPANISH = new Reader(Language.SPANISH, UnitSystem.METRIC);
  private static final JobInSteps RESTED =
      TestedWell.packed().then("static-level", "level", "31.0 ft", "from", "top-of-casing");

  private static JobInSteps cycle(JobInSteps job, String level, String turbidity, String sand) {
    return job.then("development", "method", "over-pumping", "minutes", "30 min", "rate", "18 gpm", "level", level,
        "from", "top-of-casing", "turbidity", turbidity, "sand", sand);
  }

  private static JobInSteps airLifted(JobInSteps job, String... litresAndSand) {
    for (String sand : litresAndSand) job =
        job.then("development", "method", "air-lift", "minutes", "60 min", "sand", sand, "water", "100 L");
    return job;
  }

  private static JobInSteps clean() {
    JobInSteps job = RESTED;
    String[] sand = {"1.6 mL", "0.5 mL", "0.06 mL", "0.05 mL", "0.04 mL", "0.04 mL", "0.03 mL"};
    for (String one : sand) job = cycle(job, "50.0 ft", "3 NTU", one);
    return job.then("development-tape", "reading", "116.7 ft", "from", "top-of-casing");
  }

  /** 107.5 ft of water in 4.072 in (4.5 less two walls of 0.214): 72.7 gal; seven times 30 min at 18 gpm: 3780 gal. */
  @Test
  void seesEveryCriterionMet() {
    JobInSteps job = clean();
    assertThat(column(job, 3)).containsOnly("met").hasSize(6);
    assertThat(column(job, 2)).contains("3.0 NTU", "the limit is reached", "0.0 %", "3780.0 gal");
    assertThat(line(job, "enough developed?")).isEqualTo("developed: all criteria are met");
    assertThat(job.findings("development")).isEmpty();
  }

  @Test
  void namesWhatIsMissing() {
    JobInSteps job = airLifted(TestedWell.packed(), "1 mL");
    assertThat(column(job, 3)).containsOnly("unknown");
    assertThat(column(job, 2)).containsExactly("1 of 5 readings", "needs three readings of one method",
        "not measured", "sound the pack after the next cycles", "needs the static level",
        "needs the static level and the casing");
    assertThat(line(job, "enough developed?")).isEqualTo("0 met, none unmet; 6 were not measured");
    assertThat(sheet(TestedWell.packed()).tables()).isEmpty();
  }

  /** 8 NTU over 5; level up from 50.0 to 48.1 ft: 11 % more; mean of the sand far over 5 mg/L. */
  @Test
  void tellsMetFromUnmet() {
    JobInSteps job = RESTED;
    for (String level : List.of("52.0 ft", "51.9 ft", "51.8 ft", "50.0 ft", "48.1 ft")) {
      job = cycle(job, level, "8 NTU", "0.5 mL");
    }
    assertThat(column(job, 3)).containsExactly("unmet", "unmet", "unmet", "unknown", "unmet", "met");
    assertThat(line(job, "enough developed?")).isEqualTo("go on: 1 met, 4 unmet, 1 unknown");
  }

  /** How much mud went is not known, so that the volume alone decides nothing. */
  @Test
  void doesNotGuessWhatWasLost() {
    JobInSteps job = clean().then("circulation-lost", "from", "80 ft", "to", "90 ft");
    assertThat(column(job, 2)).anyMatch(s -> s.endsWith("mud was lost, how much is not known"));
  }

  /** 6.8125, 2.96875 and 1.85 mL of 100 L are 109, 47.5 and 29.6 mg/L; from the middle on it halves in 87.9 min. */
  @Test
  void saysWhenHoursDoNotHelp() {
    JobInSteps job = airLifted(RESTED, "6.8125 mL", "2.96875 mL", "1.85 mL");
    List<Finding> findings = job.findings("development");
    assertThat(findings).extracting(Finding::code).containsExactly("development.not-a-matter-of-time");
    assertThat(findings.get(0).weight()).isEqualTo(Weight.LOOK);
    assertThat(findings.get(0).entries()).hasSize(3);
    assertThat(findings.get(0).text().shownTo(Reader.US_ENGLISH))
        .isEqualTo("29.6 mg/L of sand after 3.0 h; half-life 87.9 min and lengthening: not a matter of time.");
    assertThat(findings.get(0).text().shownTo(SPANISH))
        .isEqualTo("29.6 mg/L de arena tras 3.0 h; vida media 87.9 min y creciendo: no es cuestión de tiempo.");
    assertThat(job.then("pumping-start", "rate", "12 gpm").findings("development")).extracting(Finding::code)
        .containsExactly("development.sand");
  }

  /** 5, 2.5 and 1.25 mL halve every hour towards nothing: 10 mg/L next. */
  @Test
  void expectsTheNextReading() {
    JobInSteps job = airLifted(RESTED, "5 mL", "2.5 mL", "1.25 mL");
    List<Expectation> expected = job.expectations("development");
    Expectation next = expected.get(expected.size() - 1);
    assertThat(next.figure().quantity().in(Unit.MILLIGRAM_PER_LITRE)).isCloseTo(10, within(0.001));
    assertThat(next.what().shownTo(SPANISH)).isEqualTo("arena tras otros 60.0 min como los últimos");
    assertThat(job.findings("development")).isEmpty();
  }

  /** The curve is laid through the method now at work; what came before is drawn, and not counted. */
  @Test
  void drawsTheSandOverPumpedTime() {
    JobInSteps job = RESTED.then(
        "development", "method", "surging", "minutes", "60 min", "sand", "9 mL", "water", "100 L");
    Chart chart = sheet(airLifted(job, "5 mL", "2.5 mL", "1.25 mL")).charts().get(0);
    assertThat(chart.points()).extracting(Chart.Point::used).containsExactly(false, true, true, true);
    assertThat(chart.points()).extracting(Chart.Point::x).containsExactly(60.0, 120.0, 180.0, 240.0);
    Chart.Point end = chart.line().orElseThrow().get(32);
    assertThat(end.y()).isCloseTo(20, within(0.001));
    assertThat(sheet(job).charts()).isEmpty();
  }

  private static Sheet sheet(JobInSteps job) {
    return job.stage("development").sheet(job.job().well());
  }

  private static List<String> column(JobInSteps job, int column) {
    List<Sheet.Table> tables = sheet(job).tables();
    return tables.get(tables.size() - 1).rows().stream().map(r -> r.get(column).shownTo(Reader.US_ENGLISH)).toList();
  }

  private static String line(JobInSteps job, String label) {
    return sheet(job).lines().stream().filter(l -> l.label().shownTo(Reader.US_ENGLISH).equals(label))
        .map(l -> l.value().shownTo(Reader.US_ENGLISH)).findFirst().orElseThrow();
  }
}
