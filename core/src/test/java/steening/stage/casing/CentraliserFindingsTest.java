package steening.stage.casing;

import static org.assertj.core.api.Assertions.assertThat;
import static steening.field.Hands.US;

import java.util.List;
import org.junit.jupiter.api.Test;
import steening.field.Hands;
import steening.field.Reading;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.job.JobInSteps;
import steening.language.Reader;
import steening.stage.EverydayWell;
import steening.stage.Sheet;

/**
 * Own scenario: the screen stands from 125 to 135 ft, the string ends at 137 ft. The rule: common practice, no source.
 */
class CentraliserFindingsTest {
  private static final JobInSteps LOWERED = EverydayWell.lowered();

  @Test
  void oneAboveAndOneBelowIsSilentAndListed() {
    JobInSteps held = with("136 ft", "124 ft", "60 ft");
    assertThat(held.findings("casing")).isEmpty();
    Sheet sheet = held.stage("casing").sheet(held.job().well());
    assertThat(sheet.tables().stream().filter(t -> t.title().english().equals("Centralisers")).findFirst().orElseThrow()
            .rows().stream().map(row -> row.get(0).shownTo(Reader.US_ENGLISH)))
        .containsExactly("60.00 ft", "124.00 ft", "136.00 ft");
  }

  @Test
  void aCrewThatEntersNoneIsNotAsked() {
    assertThat(EverydayWell.cased().findings("casing")).isEmpty();
  }

  @Test
  void notesWhichSideIsMissing() {
    assertThat(only(with("124 ft"))).isEqualTo("No centraliser below the screen, which ends at 135.00 ft.");
    assertThat(only(with("136 ft"))).isEqualTo("No centraliser above the screen, which begins at 125.00 ft.");
    assertThat(only(with("130 ft")))
        .isEqualTo("The screen, from 125.00 ft to 135.00 ft, has no centraliser above and none below.");
    Finding note = with("130 ft").finding("casing.screen-not-centred").orElseThrow();
    assertThat(note.weight()).isEqualTo(Weight.NOTE);
    assertThat(note.text().shownTo(Hands.SPANISH)).startsWith("La rejilla, de 38.10 m a 41.15 m");
  }

  @Test
  void oneBelowTheStringIsASlip() {
    List<Finding> findings = with("124 ft", "163 ft").findings("casing");
    assertThat(findings).extracting(Finding::code).containsExactly("casing.centraliser-off-string");
    assertThat(findings.get(0).text().shownTo(Reader.US_ENGLISH))
        .isEqualTo("A centraliser is entered at 163.00 ft; the string ends at 137.00 ft.");
  }

  @Test
  void beforeTheStringIsSetNobodyKnows() {
    assertThat(LOWERED.then("centraliser", "depth", "124 ft").findings("casing")).isEmpty();
  }

  @Test
  void impossibleAndUnusualFiguresAreAskedAbout() {
    assertThat(CasingEntries.CENTRALISER_DEPTH.read("-4", US, false)).isInstanceOf(Reading.Refused.class);
    assertThat(CasingEntries.CENTRALISER_DEPTH.read("1,5", US, false)).isInstanceOf(Reading.Asked.class);
    assertThat(CementCure.TEMPERATURE.read("200", US, false)).isInstanceOf(Reading.Refused.class);
    assertThat(CementCure.TEMPERATURE.read("13", US, false)).as("meant as 13 °C").isInstanceOfSatisfying(
        Reading.Asked.class, asked -> assertThat(asked.meanings()).contains("13 °C"));
    assertThat(CementCure.HUMIDITY.read("170 %", US, false)).isInstanceOf(Reading.Refused.class);
    assertThat(CementCure.HUMIDITY.read("0.7", US, false)).as("a share for a percentage")
        .isInstanceOf(Reading.Asked.class);
  }

  private static JobInSteps with(String... depths) {
    JobInSteps job = LOWERED;
    for (String depth : depths) job = job.then("centraliser", "depth", depth);
    return EverydayWell.set(job);
  }

  private static String only(JobInSteps job) {
    assertThat(job.findings("casing")).extracting(Finding::code).containsExactly("casing.screen-not-centred");
    return job.findings("casing").get(0).text().shownTo(Reader.US_ENGLISH);
  }
}
