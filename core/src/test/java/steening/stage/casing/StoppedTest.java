package steening.stage.casing;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import steening.field.Reading;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.job.JobInSteps;
import steening.language.Language;
import steening.language.Reader;
import steening.language.UnitSystem;
import steening.quantity.Unit;
import steening.reckoning.Outcome;
import steening.stage.EverydayWell;

/** Own scenario, arithmetic checked by hand: the everyday string of 138.50 ft, planned to 137 ft with 1.5 ft above. */
class StoppedTest {
  private static final Reader US = Reader.US_ENGLISH;
  private static final JobInSteps WHOLE = EverydayWell.lowered().then("cut-piece", "length", "6.50 ft");

  /** By hand: 138.5 − 7.9 = 130.6; screen 118.6 to 128.6, in sand from 118 to 138. */
  @Test
  void saysHowHighItHangsAndWhereTheScreenWouldStand() {
    JobInSteps high = WHOLE.then("string-stopped", "above", "7.9 ft");
    Finding finding = high.finding("casing.stopped-high").orElseThrow();
    assertThat(finding.weight()).isEqualTo(Weight.LOOK);
    assertThat(finding.text().shownTo(US)).isEqualTo(
        "The string stopped 6.40 ft high: it ends at 130.60 ft, and was to end at 137.00 ft."
            + " The screen would stand from 118.60 ft to 128.60 ft.");
    assertThat(finding.next().orElseThrow().shownTo(US)).endsWith("Left here, 6.40 ft is cut off.");
    assertThat(line(high, "stopped, still above the ground")).isEqualTo("7.90 ft");
  }

  /** By hand: 138.5 − 20 = 118.5; screen 106.5 to 116.5, all of it in clay from 78 to 118. */
  @Test
  void stopsWhereTheScreenWouldStandInClay() {
    JobInSteps high = WHOLE.then("string-stopped", "above", "20 ft");
    Finding finding = high.finding("casing.stopped-high").orElseThrow();
    assertThat(finding.weight()).isEqualTo(Weight.STOP);
    assertThat(finding.text().shownTo(US)).endsWith("against clay from 106.50 ft to 116.50 ft.");
    Reader spanish = new Reader(Language.SPANISH, UnitSystem.METRIC);
    assertThat(finding.next().orElseThrow().shownTo(spanish)).endsWith("No la deje aquí.");
    assertThat(finding.text().shownTo(spanish)).contains("frente a arcilla de 32.46 m a 35.51 m");
  }

  @Test
  void isSilentOnceItWentOnOrIsSet() {
    JobInSteps high = WHOLE.then("string-stopped", "above", "7.9 ft");
    assertThat(high.then("string-stopped", "above", "1.5 ft").finding("casing.stopped-high")).isEmpty();
    assertThat(high.then("string-set", "stick-up", "1.5 ft").finding("casing.stopped-high")).isEmpty();
    JobInSteps moved =
        EverydayWell.lowered().then("string-stopped", "above", "12 ft").then("cut-piece", "length", "6.5 ft");
    assertThat(moved.finding("casing.stopped-high")).isEmpty();
    assertThat(JobInSteps.nothing().then("string-stopped", "above", "7.9 ft").findings("casing")).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"-3 ft", "400 ft"})
  void refusesWhatCannotStandAboveTheGround(String typed) {
    assertThat(Stopped.ABOVE.read(typed, US, false)).isNotInstanceOf(Reading.Taken.class);
  }

  @Test
  void keepsWhatIsLeftOfTheCutJoint() {
    JobInSteps cut = EverydayWell.lowered().then("cut-piece", "length", "6.50 ft", "cut-from", "20.01 ft");
    assertThat(line(cut, "left over from the cut joint")).isEqualTo("13.51 ft");
    assertThat(cut.findings("casing")).isEmpty();
    JobInSteps slip = EverydayWell.lowered().then("cut-piece", "length", "6.50 ft", "cut-from", "5 ft");
    assertThat(slip.finding("casing.cut-longer-than-joint")).isPresent();
  }

  @Test
  void everySymbolMeansOneThing() {
    Outcome outcome = WHOLE.then("string-stopped", "above", "7.9 ft").finding("casing.stopped-high").orElseThrow()
        .working().orElseThrow();
    assertThat(outcome.working(US).lines().stream().map(l -> l.symbol()).toList()).doesNotHaveDuplicates();
    assertThat(outcome.quantity("high").in(Unit.FOOT)).isBetween(6.39, 6.41);
  }

  private static String line(JobInSteps job, String label) {
    return job.stage("casing").sheet(job.job().well()).lines().stream()
        .filter(l -> l.label().shownTo(US).equals(label)).findFirst().orElseThrow().value().shownTo(US);
  }
}
