package steening.stage.development;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import steening.finding.Expectation;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.job.JobInSteps;
import steening.language.Language;
import steening.language.Reader;
import steening.language.UnitSystem;
import steening.quantity.Unit;
import steening.stage.Progress;
import steening.stage.Sheet;
import steening.stage.TestedWell;

/** Own scenario: the everyday well, developed well and badly. */
class DevelopmentFindingsTest {
  private static final JobInSteps PACKED = TestedWell.packed();

  private static JobInSteps developed(String... sand) {
    JobInSteps job = PACKED;
    for (String millilitres : sand) job =
        job.then("development", "method", "air-lift", "minutes", "30 min", "sand", millilitres + " mL");
    return job;
  }

  private static JobInSteps pumped(JobInSteps job, String rate, String level) {
    return job.then("development", "method", "over-pumping", "minutes", "30 min", "rate", rate, "level", level,
        "from", "top-of-casing");
  }

  @Test
  void saysNothingOfACleanWell() {
    JobInSteps job = developed("1.6", "0.9", "0.06", "0.05", "0.04", "0.04", "0.03")
        .then("development-tape", "reading", "116.7 ft", "from", "top-of-casing");
    assertThat(job.findings("development")).isEmpty();
    assertThat(start(job).findings("development")).isEmpty();
    assertThat(JobInSteps.nothing().findings("development")).isEmpty();
  }

  /** 0.10 mL five times from 5 gal: 8.45 mg/L. */
  @Test
  void looksAtSandWhenTheTestBegins() {
    JobInSteps job = developed("3.0", "0.10", "0.10", "0.10", "0.10", "0.10");
    assertThat(job.findings("development")).extracting(Finding::code).as("still developing")
        .containsExactly("development.not-a-matter-of-time");
    Finding finding = only(start(job), "development.sand");
    assertThat(finding.weight()).isEqualTo(Weight.LOOK);
    assertThat(finding.text().shownTo(Reader.US_ENGLISH))
        .isEqualTo("The test began with 8.5 mg/L of sand, the mean of 5 readings; 5.0 mg/L is the limit for a house.");
    assertThat(finding.entries()).hasSize(5);
    assertThat(finding.working().orElseThrow().working(Reader.US_ENGLISH).lines())
        .anyMatch(l -> l.formula().equals("(c₁ + c₂ + c₃ + c₄ + c₅) / 5"));
  }

  /** What was measured after the pump was started does not excuse what was not there before. */
  @Test
  void holdsTheTestToTheReadingsBeforeIt() {
    JobInSteps job = start(developed("0.20"))
        .then("development", "method", "over-pumping", "minutes", "30 min", "sand", "0 mL");
    assertThat(only(job, "development.sand").entries()).hasSize(1);
  }

  /** 115 to 121.5 ft at 0.2278 ft³/ft: 1.48 ft³, three bags of half a cubic foot. */
  @Test
  void countsTheBagsForAPackThatWentDown() {
    JobInSteps job = PACKED.then("development-tape", "reading", "123.0 ft", "from", "top-of-casing");
    Finding finding = only(job, "development.pack-settled");
    assertThat(finding.weight()).isEqualTo(Weight.LOOK);
    assertThat(finding.text().shownTo(Reader.US_ENGLISH))
        .isEqualTo("The pack went down by 6.50 ft during development, from 115.00 ft to 121.50 ft."
            + " It still stands 3.50 ft above the screen.");
    assertThat(finding.next().orElseThrow().shownTo(Reader.US_ENGLISH))
        .isEqualTo("Top up with 3 bags (1.48 ft³) and sound it again.");
    assertThat(finding.next().orElseThrow().shownTo(new Reader(Language.SPANISH, UnitSystem.METRIC)))
        .isEqualTo("Rellene con 3 sacos (0.042 m³) y sondéelo de nuevo.");
  }

  @Test
  void stopsAtABareScreen() {
    JobInSteps job = PACKED.then("development-tape", "reading", "128.0 ft", "from", "top-of-casing");
    assertThat(only(job, "development.pack-settled").weight()).isEqualTo(Weight.STOP);
  }

  @Test
  void isContentOnceThePackIsToppedUp() {
    JobInSteps job = PACKED.then("development-tape", "reading", "123.0 ft", "from", "top-of-casing")
        .then("pack-bags", "bags", "3", "weight", "50 lb").then("pack-tape", "reading", "115.2 ft", "from", "ground");
    assertThat(job.findings("development")).isEmpty();
  }

  @Test
  void leavesTheScatterOfTwoTapesAlone() {
    assertThat(PACKED.then("development-tape", "reading", "116.9 ft", "from", "top-of-casing").findings("development"))
        .isEmpty();
  }

  /** 18/(50.0 − 31.0) = 0.947; 18/(48.1 − 31.0) = 1.053: 11 % more. */
  @Test
  void notesAWellThatIsStillOpeningUp() {
    JobInSteps rested = PACKED.then("static-level", "level", "31.0 ft", "from", "top-of-casing");
    JobInSteps job = pumped(pumped(rested, "18 gpm", "50.0 ft"), "18 gpm", "48.1 ft");
    Finding finding = only(job, "development.still-rising");
    assertThat(finding.weight()).isEqualTo(Weight.NOTE);
    assertThat(finding.text().shownTo(Reader.US_ENGLISH))
        .isEqualTo("Specific capacity rose by 11.1 % in the last cycle, from 0.95 gpm/ft to 1.05 gpm/ft.");
    assertThat(pumped(job, "18 gpm", "47.9 ft").findings("development")).as("1 % more").isEmpty();
  }

  @Test
  void looksAtALevelInTheScreen() {
    JobInSteps job = pumped(PACKED, "55 gpm", "128.0 ft");
    assertThat(only(job, "development.level-in-screen").text().shownTo(Reader.US_ENGLISH))
        .isEqualTo("The level was drawn down to 126.50 ft, below the top of the screen, 125.00 ft.");
    assertThat(pumped(job, "18 gpm", "50.0 ft").findings("development")).isEmpty();
  }

  @Test
  void keepsReadingsAsideUntilTheStickUpIsKnown() {
    JobInSteps job = TestedWell.drilled().then("development-tape", "reading", "116.7 ft", "from", "top-of-casing");
    assertThat(only(pumped(job, "18 gpm", "50.0 ft"), "development.datum-unknown").entries()).hasSize(2);
  }

  /** Half a pail takes half the sand: 5 mg/L × 18.93 L / 1600 = 0.059 mL. */
  @Test
  void expectsSandUnderTheLimitAndThePackWhereItWas() {
    List<Expectation> expected = PACKED.expectations("development");
    assertThat(expected.get(0).figure().quantity().in(Unit.MILLILITRE)).isBetween(0.0591, 0.0592);
    assertThat(expected.get(1).figure().shownTo(Reader.US_ENGLISH)).isEqualTo("115.00 ft");
    assertThat(start(PACKED).expectations("development")).isEmpty();
  }

  @Test
  void showsTheCyclesSideBySide() {
    JobInSteps job = pumped(developed("0.40"), "18 gpm", "50.0 ft")
        .then("static-level", "level", "31.0 ft", "from", "top-of-casing");
    Sheet sheet = job.stage("development").sheet(job.job().well());
    assertThat(cells(sheet, 0)).containsExactly("air-lift", "30.0 min", "–", "–", "–", "–", "0.40 mL", "33.8 mg/L");
    assertThat(cells(sheet, 1))
        .containsExactly("over-pumping", "30.0 min", "18.0 gpm", "48.50 ft", "0.95 gpm/ft", "–", "–", "–");
    assertThat(job.stage("development").progress(job.job().well())).isEqualTo(Progress.UNDER_WAY);
    assertThat(job.stage("development").progress(start(job).job().well())).isEqualTo(Progress.DONE);
  }

  private static List<String> cells(Sheet sheet, int row) {
    return sheet.tables().get(0).rows().get(row).stream().map(s -> s.shownTo(Reader.US_ENGLISH)).toList();
  }

  private static JobInSteps start(JobInSteps job) {
    return job.then("pumping-start", "rate", "12 gpm");
  }

  private static Finding only(JobInSteps job, String code) {
    List<Finding> findings = job.findings("development");
    assertThat(findings).extracting(Finding::code).containsExactly(code);
    return findings.get(0);
  }
}
