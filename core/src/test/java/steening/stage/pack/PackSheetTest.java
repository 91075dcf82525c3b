package steening.stage.pack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import steening.drawing.Chart;
import steening.job.JobInSteps;
import steening.language.Reader;
import steening.stage.Sheet;

class PackSheetTest {
  @Test
  void putsEveryReadingOnTheSheet() {
    Sheet.Table table = BridgedPackTest.BROKEN.stage("pack").sheet(BridgedPackTest.BROKEN.job().well()).tables().get(0);
    assertThat(table.rows()).extracting(row -> row.stream().map(s -> s.shownTo(Reader.US_ENGLISH)).toList())
        .containsExactly(
        List.of("3", "91.10 ft", "90.90 ft", "0.20 ft", "7.96 in"),
        List.of("6", "84.60 ft", "84.32 ft", "0.28 ft", "7.91 in"),
        List.of("9", "71.20 ft", "77.73 ft", "-6.53 ft", "6.39 in"),
        List.of("9", "77.90 ft", "77.73 ft", "0.17 ft", "7.83 in"));
  }

  @Test
  void drawsTheTapeOverTheBags() {
    Chart chart = BridgedPackTest.NINE.stage("pack").sheet(BridgedPackTest.NINE.job().well()).charts().get(0);
    assertThat(chart.points()).extracting(Chart.Point::x).containsExactly(3.0, 6.0, 9.0);
    assertThat(chart.line().orElseThrow()).hasSize(10);
    assertThat(chart.line().orElseThrow().get(0)).isEqualTo(new Chart.Point(0, 97, true));
    assertThat(chart.line().orElseThrow().get(9).y()).isCloseTo(77.7, within(0.05));
  }

  @Test
  void saysWhatCanHurt() {
    Sheet sheet = EverydayPackTest.PLANNED.stage("pack").sheet(EverydayPackTest.PLANNED.job().well());
    assertThat(sheet.cautions()).hasSize(3).anyMatch(c -> c.shownTo(Reader.US_ENGLISH).startsWith("Sand dust"));
  }

  static String line(JobInSteps job, String label) {
    return job.stage("pack").sheet(job.job().well()).lines().stream()
        .filter(l -> l.label().shownTo(Reader.US_ENGLISH).equals(label)).findFirst().orElseThrow()
        .value().shownTo(Reader.US_ENGLISH);
  }
}
