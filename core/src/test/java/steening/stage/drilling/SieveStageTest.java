package steening.stage.drilling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static steening.field.Hands.SPANISH;
import static steening.field.Hands.US;

import java.util.List;
import org.junit.jupiter.api.Test;
import steening.drawing.Chart;
import steening.drawing.ChartDrawing;
import steening.finding.Finding;
import steening.job.JobInSteps;
import steening.stage.EverydayWell;
import steening.stage.Sheet;

/** Own scenario: the curve of W-FILT-01, as if it came from the sand of the everyday well. */
class SieveStageTest {
  private static JobInSteps sieved(String from, String to, String openings, String finer) {
    return EverydayWell.drilled().then("sieve", "from", from, "to", to, "openings", openings, "finer", finer);
  }

  private static JobInSteps sand() {
    return sieved("118 ft", "138 ft", "0.075 0.15 0.25 0.425 0.85 mm", "4 14 45 80 98 %");
  }

  private static Sheet sheet(JobInSteps job) {
    return job.stage("drilling").sheet(job.job().well());
  }

  @Test
  void aSoundSieveRaisesNothing() {
    assertThat(sand().job().unread()).isEmpty();
    assertThat(sand().findings("drilling")).extracting(Finding::code).containsExactly("drilling.up-hole-velocity");
  }

  /** Sizes: W-FILT-01, 1 %. */
  @Test
  void theSheetHasTheSizesAndTheCurve() {
    Sheet sheet = sheet(sand());
    Sheet.Table table = sheet.tables().stream()
        .filter(t -> t.title().shownTo(US).equals("Sieve analyses")).findFirst().orElseThrow();
    assertThat(table.rows()).hasSize(1);
    assertThat(table.rows().get(0)).extracting(cell -> cell.shownTo(US)).contains("118.00 ft", "0.114 mm", "0.195 mm");
    assertThat(table.heads()).extracting(h -> h.shownTo(US)).contains("D10", "Cu", "Cc");
    Sheet.Table choices = sheet.tables().get(sheet.tables().indexOf(table) + 1);
    assertThat(choices.rows().get(0)).extracting(cell -> cell.shownTo(US))
        .contains("0.781 mm", "1.17 mm", "0.012 in (12 slot)", "0.011 in (11 slot)");
    Sheet.Line grain = sheet.lines().stream()
        .filter(l -> l.label().shownTo(US).startsWith("grain that 30 %")).findFirst().orElseThrow();
    assertThat(grain.working().orElseThrow().quantity("cu").coherent()).isCloseTo(2.7607, within(0.028));
    assertThat(sheet.lines()).extracting(l -> l.label().shownTo(US))
        .anyMatch(l -> l.startsWith("specific capacity to hope for, 118.00 ft to 138.00 ft"));
    Chart chart = sheet.charts().get(0);
    assertThat(chart.across().logarithmic()).isTrue();
    assertThat(chart.down().downward()).isFalse();
    assertThat(chart.points()).extracting(Chart.Point::y).map(Math::round).containsExactly(4L, 14L, 45L, 80L, 98L);
    assertThat(chart.points().get(0).x()).isCloseTo(0.075, within(1e-9));
    assertThat(ChartDrawing.draw(chart, SPANISH)).contains("tamaño del grano, mm");
  }

  @Test
  void everySampleHasItsCurve() {
    Sheet sheet = sheet(sand().then("sieve", "from", "61 ft", "to", "78 ft",
        "openings", "0.075 0.15 0.25 mm", "finer", "30 60 99 %"));
    assertThat(sheet.charts()).hasSize(2);
    assertThat(sheet.lines()).extracting(l -> l.label().shownTo(US))
        .filteredOn(l -> l.startsWith("specific capacity to hope for")).hasSize(1);
  }

  @Test
  void withoutASieveTheSheetIsAsBefore() {
    assertThat(sheet(EverydayWell.drilled()).charts()).isEmpty();
    assertThat(sheet(EverydayWell.drilled()).tables()).extracting(t -> t.title().shownTo(US))
        .doesNotContain("Sieve analyses");
  }

  @Test
  void retainedForFinerIsFoundAndDrawsNothing() {
    JobInSteps job = sieved("118 ft", "138 ft", "0.075 0.15 0.25 mm", "96 86 55 %");
    Finding finding = job.finding("drilling.sieve-unclear").orElseThrow();
    assertThat(finding.text().shownTo(US)).contains("96.0 %", "not percent retained");
    assertThat(finding.text().shownTo(SPANISH)).contains("no el retenido");
    assertThat(finding.entries()).hasSize(1);
    assertThat(sheet(job).charts()).isEmpty();
  }

  @Test
  void aSampleFromBelowTheHoleIsFound() {
    JobInSteps job = sieved("118 m", "138 m", "0.075 0.15 0.25 mm", "4 14 45 %");
    Finding finding = job.finding("drilling.sieve-below-hole").orElseThrow();
    assertThat(finding.text().shownTo(US)).contains("452.76 ft", "142.00 ft");
  }

  @Test
  void upsideDownIsLeftOut() {
    JobInSteps job = sieved("138 ft", "118 ft", "0.075 0.15 0.25 mm", "4 14 45 %");
    assertThat(job.findings("drilling")).extracting(Finding::code).contains("drilling.upside-down");
    assertThat(sheet(job).charts()).isEmpty();
  }

  @Test
  void theSameSievesAreFilledInNextTime() {
    assertThat(DrillingEntries.SIEVE.steady()).isEqualTo(List.of("openings"));
  }

  /** Own figures: the weights of the same curve; 520 g went in, 500 g were found, 3.8 % of 520. */
  @Test
  void weightsAreHeldAgainstTheSample() {
    JobInSteps weighed = weighed("501 g");
    assertThat(weighed.job().unread()).isEmpty();
    assertThat(weighed.findings("drilling")).extracting(Finding::code).containsExactly("drilling.up-hole-velocity");
    assertThat(sheet(weighed).charts()).hasSize(1);
    Finding finding = weighed("520 g").finding("drilling.sieve-loss").orElseThrow();
    assertThat(finding.text().shownTo(US)).isEqualTo(
        "Sieves and pan hold 500 g, the sample weighed 520 g: they differ by 3.8 %.");
    assertThat(finding.text().shownTo(SPANISH)).contains("500 g", "520 g", "3.8 %");
  }

  private static JobInSteps weighed(String sample) {
    return EverydayWell.drilled().then("sieve", "from", "118 ft", "to", "138 ft",
        "openings", "0.075 0.15 0.25 0.425 0.85 mm", "retained", "50 155 175 90 10 g", "pan", "20 g",
        "sample-weight", sample);
  }

  @Test
  void sievesWithoutPercentsOrWeightsAreFound() {
    JobInSteps job = EverydayWell.drilled().then("sieve", "from", "118 ft", "to", "138 ft", "openings", "0.1 0.2 mm");
    assertThat(job.finding("drilling.sieve-unclear").orElseThrow().text().shownTo(US)).contains("Give what passes");
  }
}
