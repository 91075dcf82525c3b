package steening.stage.seal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import steening.job.JobInSteps;
import steening.language.Language;
import steening.language.Reader;
import steening.language.UnitSystem;
import steening.stage.Sheet;

class SealSheetTest {
  @Test
  void listsBatchesAndReadings() {
    JobInSteps job = EverydaySealTest.GROUTED.then("grout-tape", "reading", "0 ft", "from", "ground");
    Sheet sheet = job.stage("seal").sheet(job.job().well());
    assertThat(shown(sheet.tables().get(0))).containsExactly(
        List.of("4", "96.0 gal", "24.0 gal", "20.0 %", "9.50 lb/gal", "no"),
        List.of("4", "96.0 gal", "24.0 gal", "20.0 %", "–", "yes"));
    // by hand: 8 × 26.306 gal = 28.13 ft³ over 24.97 ft³ is 1.127; √(20.25 + 28.13 / 109.6 / 0.005454) = 8.21 in
    assertThat(shown(sheet.tables().get(1))).containsExactly(List.of("8", "0.00 ft", "0.00 ft", "1.13", "8.2 in"));
    assertThat(line(job, "grout pumped")).isEqualTo("8 bags, 192.0 gal of water, 210.4 gal");
    assertThat(line(job, "grout planned")).isEqualTo("187.4 gal, 8 bags, 192.0 gal of water");
    assertThat(job.stage("seal").sheet(job.job().well()).lines())
        .noneMatch(l -> l.label().shownTo(Reader.US_ENGLISH).equals("bags still needed"));
    assertThat(line(job, "chips planned")).isEqualTo("1.14 ft³, 2 bags");
  }

  @Test
  void speaksSpanishAndMetres() {
    JobInSteps job = EverydaySealTest.GROUTED;
    Reader reader = new Reader(Language.SPANISH, UnitSystem.METRIC);
    assertThat(job.stage("seal").sheet(job.job().well()).lines())
        .anySatisfy(l -> assertThat(l.value().shownTo(reader)).isEqualTo("bentonita, 22.7 kg con 90.8 L de agua"));
  }

  @Test
  void saysWhatCanHurt() {
    Sheet sheet = EverydaySealTest.PLANNED.stage("seal").sheet(EverydaySealTest.PLANNED.job().well());
    assertThat(sheet.cautions()).hasSize(5).anyMatch(c -> c.shownTo(Reader.US_ENGLISH).startsWith("Wet cement burns"));
  }

  static String line(JobInSteps job, String label) {
    return job.stage("seal").sheet(job.job().well()).lines().stream()
        .filter(l -> l.label().shownTo(Reader.US_ENGLISH).equals(label)).findFirst().orElseThrow()
        .value().shownTo(Reader.US_ENGLISH);
  }

  private static List<List<String>> shown(Sheet.Table table) {
    return table.rows().stream().map(row -> row.stream().map(s -> s.shownTo(Reader.US_ENGLISH)).toList()).toList();
  }
}
