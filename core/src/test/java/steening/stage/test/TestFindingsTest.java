package steening.stage.test;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static steening.stage.TestedWell.drilled;
import static steening.stage.TestedWell.level;
import static steening.stage.TestedWell.levels;
import static steening.stage.TestedWell.packed;
import static steening.stage.TestedWell.pumping;
import static steening.stage.TestedWell.tested;

import java.util.List;
import org.junit.jupiter.api.Test;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.job.JobInSteps;
import steening.language.Language;
import steening.language.Reader;
import steening.language.UnitSystem;
import steening.quantity.Measure;
import steening.quantity.Unit;
import steening.stage.TestedWell;
import steening.well.Levels;

/** The everyday well and its slips of the pen: own scenario, arithmetic checked by hand. */
class TestFindingsTest {
  private static final Reader SPANISH = new Reader(Language.SPANISH, UnitSystem.METRIC);

  @Test
  void saysNothingOfTheTestedWell() {
    assertThat(tested().findings("test")).isEmpty();
    assertThat(JobInSteps.nothing().findings("test")).isEmpty();
  }

  @Test
  void turnsReadingsFromTheTopOfCasingIntoDepths() {
    Levels levels = tested().job().well().get(Levels.PART);
    assertThat(levels.atRest().orElseThrow().depth().inFeet()).isCloseTo(29.5, within(1e-9));
    assertThat(levels.pumping().orElseThrow().depth().inFeet()).isCloseTo(41.9, within(1e-9));
    assertThat(levels.pumping().orElseThrow().rate().in(Unit.GALLON_PER_MINUTE)).isCloseTo(12, within(1e-9));
  }

  @Test
  void keepsReadingsAsideUntilTheStickUpIsKnown() {
    JobInSteps job = drilled().then("static-level", "level", "31.0 ft", "from", "top-of-casing");
    Finding finding = only(job, "test.datum-unknown");
    assertThat(finding.weight()).isEqualTo(Weight.LOOK);
    assertThat(finding.entries()).hasSize(1);
    assertThat(job.job().well().get(Levels.PART).atRest()).isEmpty();
  }

  /** Cutting the casing does not move the water: a reading keeps the stick-up of its own time. */
  @Test
  void keepsDepthsWhenTheCasingIsCut() {
    JobInSteps cut = tested().then("casing-cut", "stick-up", "1.0 ft");
    assertThat(cut.job().well().get(Levels.PART)).isEqualTo(tested().job().well().get(Levels.PART));
  }

  @Test
  void asksWhichOfTwoDatumsIsMeant() {
    JobInSteps job = levels(packed().then("static-level", "level", "29.5 ft", "from", "ground")
        .then("pumping-start", "rate", "12 gpm"));
    Finding finding = only(job, "test.mixed-datums");
    assertThat(finding.text().shownTo(Reader.US_ENGLISH)).isEqualTo(
        "The static level was read from ground, this one from top of casing: the drawdown is 12.40 ft or 13.90 ft,"
            + " differing by the stick-up 1.50 ft.");
    assertThat(finding.text().shownTo(SPANISH)).isEqualTo(
        "El nivel estático se leyó desde terreno, este desde boca del ademe: el abatimiento es 3.78 m o 4.24 m,"
            + " y difieren en la altura sobre el terreno 0.46 m.");
  }

  @Test
  void stopsAtAPumpingLevelAboveTheStaticLevel() {
    JobInSteps job = levels(packed()
        .then("static-level", "level", "31 m", "from", "top-of-casing").then("pumping-start", "rate", "12 gpm"));
    Finding finding = only(job, "test.level-above-static");
    assertThat(finding.weight()).isEqualTo(Weight.STOP);
    assertThat(said(finding))
        .isEqualTo("The pumping level, 41.90 ft below ground, stands above the static level, 100.21 ft:"
            + " that cannot be.");
    assertThat(finding.cause().orElseThrow().shownTo(Reader.US_ENGLISH))
        .isEqualTo("A unit may have been mistaken: 31 m was typed.");
    assertThat(finding.next().orElseThrow().shownTo(Reader.US_ENGLISH))
        .isEqualTo("Did you mean 31 ft? If so, correct that entry.");
  }

  @Test
  void offersTheOtherUnitOfAPumpingLevelToo() {
    JobInSteps job = packed()
        .then("static-level", "level", "31 ft", "from", "top-of-casing").then("pumping-start", "rate", "12 gpm")
        .then("pumping-level", "minutes", "10 min", "level", "12.67 ft", "from", "top-of-casing");
    assertThat(only(job, "test.level-above-static").next().orElseThrow().shownTo(Reader.US_ENGLISH))
        .isEqualTo("Did you mean 12.67 m? If so, correct that entry.");
  }

  @Test
  void holdsSpecificCapacityToTheNeighbours() {
    JobInSteps job = levels(pumping("45 gpm"));
    Finding finding = only(job, "test.specific-capacity-unlikely");
    assertThat(said(finding)).isEqualTo(
        "Specific capacity 3.63 gpm/ft against the neighbours' median 0.85 gpm/ft: 3.1 of their spreads away.");
    assertThat(finding.cause().orElseThrow().shownTo(Reader.US_ENGLISH)).isEqualTo(
        "A unit may have been mistaken: 45 gpm was typed; 45 L/min is 11.9 gpm and would give 0.96 gpm/ft.");
    assertThat(finding.next().orElseThrow().shownTo(Reader.US_ENGLISH)).startsWith("Did you mean 45 L/min?");
    assertThat(finding.working()).isPresent();
  }

  /** ln(0.96 / 0.85) / ln 1.6 = 0.26: the right rate is no surprise. */
  @Test
  void isContentWithTheRateThatWasMeant() {
    JobInSteps job = levels(pumping("45 L/min"));
    assertThat(job.findings("test")).isEmpty();
    Neighbours neighbours = Neighbours.of(job.job().well()).orElseThrow();
    assertThat(neighbours.distance(Measure.of(0.9587, Unit.GALLON_PER_MINUTE_PER_FOOT)).orElseThrow())
        .isCloseTo(0.256, within(0.001));
  }

  @Test
  void seesTheLevelInTheScreen() {
    JobInSteps job = level(levels(pumping("60 gpm")), 300, "127.5");
    assertThat(codes(job)).contains("test.level-in-screen");
    assertThat(said(finding(job, "test.level-in-screen")))
        .isEqualTo("The pumping level, 126.00 ft, is below the top of the screen, 125.00 ft.");
  }

  @Test
  void seesARateThatWillNotLast() {
    JobInSteps job = pumping("12 gpm");
    JobInSteps steep = level(level(level(job, 10, "60"), 100, "85"), 240, "94.5");
    // slope 25 ft a cycle: 63.5 + 25 × 2.778 = 132.9 ft of drawdown, 29.5 ft below ground at rest
    assertThat(said(finding(steep, "test.rate-will-not-last")))
        .contains("after 100 days, below the top of the screen, 125.00 ft");
    assertThat(codes(tested())).doesNotContain("test.rate-will-not-last");
  }

  @Test
  void notesAShortTest() {
    JobInSteps job = level(level(pumping("12 gpm"), 10, "41.58"), 100, "42.90");
    assertThat(codes(job)).doesNotContain("test.short");
    Finding finding = only(job.then("pumping-stop"), "test.short");
    assertThat(finding.weight()).isEqualTo(Weight.NOTE);
    assertThat(said(finding)).startsWith("Pumped for 1.7 h; 4.0 h at least are asked for in some places (New York");
  }

  @Test
  void notesReadingsOfNothingButCasingWater() {
    JobInSteps job = level(level(pumping("12 gpm"), 1, "34.4"), 3, "38.4")
        .then("pumping-stop");
    assertThat(codes(job)).containsExactlyInAnyOrder("test.short", "test.casing-storage");
  }

  @Test
  void saysWhatIsMissing() {
    assertThat(codes(level(packed().then("static-level", "level", "31.0 ft", "from", "top-of-casing"), 10, "41.58")))
        .containsExactly("test.rate-missing");
    assertThat(codes(level(packed().then("pumping-start", "rate", "12 gpm"), 10, "41.58")))
        .containsExactly("test.static-missing");
  }

  @Test
  void seesMinutesOutOfOrderAndTwice() {
    JobInSteps job = pumping("12 gpm");
    assertThat(said(only(level(level(job, 20, "41.98"), 15, "41.81"), "test.time-order")))
        .isEqualTo("A level at 15.0 min was taken down after the one at 20.0 min.");
    assertThat(codes(level(level(job, 20, "41.98"), 20, "41.99"))).containsExactly("test.time-order");
  }

  @Test
  void beginsAgainWhenThePumpIsStartedAgain() {
    JobInSteps job = levels(level(pumping("20 gpm"), 10, "50")
        .then("pumping-start", "rate", "12 gpm"));
    assertThat(only(job, "test.restarted").weight()).isEqualTo(Weight.NOTE);
    assertThat(job.job().well().get(Levels.PART).pumping().orElseThrow().depth().inFeet())
        .isCloseTo(41.9, within(1e-9));
  }

  @Test
  void seesALineThatSteepens() {
    String[] feet = {"41.0", "41.4", "41.7", "42.0", "43.2", "44.0", "44.5"};
    int[] minutes = {10, 20, 30, 60, 120, 180, 240};
    JobInSteps job = pumping("12 gpm");
    for (int i = 0; i < feet.length; i++) job = level(job, minutes[i], feet[i]);
    Finding finding = only(job, "test.line-steepens");
    assertThat(finding.weight()).isEqualTo(Weight.LOOK);
    // from 20 min on, when the casing gives no more: three readings up to 120 min, three from there
    assertThat(said(finding)).contains("per log cycle until 120.0 min");
  }

  /** The order of entries may be any; nothing is thrown, and what cannot be placed is said. */
  @Test
  void takesEntriesInAnyOrder() {
    JobInSteps job = TestedWell.planned()
        .then("recovery-level", "minutes", "5 min", "level", "33 ft", "from", "top-of-casing")
        .then("pumping-stop").then("pumping-level", "minutes", "0 min", "level", "31 ft", "from", "ground")
        .then("pumping-start", "rate", "12 gpm");
    assertThat(codes(job)).contains("test.datum-unknown", "test.static-missing");
    assertThat(job.stage("test").sheet(job.job().well())).isNotNull();
    assertThat(job.expectations("test")).isEmpty();
  }

  private static Finding only(JobInSteps job, String code) {
    List<Finding> findings = job.findings("test");
    assertThat(findings).extracting(Finding::code).containsExactly(code);
    return findings.get(0);
  }

  private static Finding finding(JobInSteps job, String code) {
    return job.findings("test").stream().filter(f -> f.code().equals(code)).findFirst().orElseThrow();
  }

  private static List<String> codes(JobInSteps job) {
    return job.findings("test").stream().map(Finding::code).toList();
  }

  private static String said(Finding finding) {
    return finding.text().shownTo(Reader.US_ENGLISH);
  }
}
