package steening.stage.pump;

import static org.assertj.core.api.Assertions.assertThat;
import static steening.stage.TestedWell.tested;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import steening.finding.Finding;
import steening.job.JobInSteps;
import steening.language.Language;
import steening.language.Reader;
import steening.language.UnitSystem;

/** The everyday well, tested at 12 gpm down to 41.90 ft, in casing of 4.072 in. Curves are invented. */
class EquipmentFindingsTest {
  private static final Reader SPANISH = new Reader(Language.SPANISH, UnitSystem.METRIC);
  private static final List<String> GOOD = List.of(
      "model", "submersible", "horsepower", "1 hp", "setting", "85 ft", "rate", "10 gpm", "cut-in", "40 psi",
      "cut-out", "60 psi", "tank", "80 gal", "precharge", "38 psi", "pipe-inside", "1.049 in", "pipe-length", "170 ft",
      "tank-rise", "6 ft", "voltage", "230 V", "current", "8 A", "cable", "10", "cable-length", "100 ft");

  /** 240 ft at 5 gpm and 90 at 15: at 40 psi about 11 gpm, under the 12 of the test. 0.86 % are lost in the cable. */
  @Test
  void saysNothingWhereCurveMotorAndCableSuit() {
    assertThat(codes("curve-flows", "5; 15 gpm", "curve-heads", "240; 90 ft")).isEmpty();
    assertThat(codes()).isEmpty();
  }

  @Test
  void seesAPumpThatGivesMoreAtCutInThanTheTestHeld() {
    JobInSteps job = pump("curve-flows", "5; 20 gpm", "curve-heads", "300; 150 ft");
    Finding finding = only(job, "pump.over-pumps");
    assertThat(finding.text().shownTo(Reader.US_ENGLISH))
        .startsWith("At cut-in this pump gives 1").endsWith("12.0 gpm.");
    assertThat(finding.text().shownTo(SPANISH)).contains("0.76 L/s");
    assertThat(finding.working()).isPresent();
  }

  @Test
  void saysWhyACurveCannotBeReckonedWith() {
    assertThat(codes("curve-flows", "10 gpm", "curve-heads", "200 ft")).containsExactly("pump.off-curve");
    assertThat(codes("curve-flows", "2; 10 gpm", "curve-heads", "100; 50 ft")).containsExactly("pump.off-curve");
  }

  /** 2 × 8 × 500 × 3.14 / 1000 = 25.1 V of 230: 10.9 %. */
  @Test
  void seesACableThatIsTooThin() {
    Finding finding = only(pump("cable", "14", "cable-length", "500 ft"), "pump.cable-drop");
    assertThat(finding.text().shownTo(Reader.US_ENGLISH))
        .isEqualTo("10.9 % of the voltage is lost in the cable; motor makers allow 5.0 %.");
  }

  /** 1 gpm past 2 in of motor in 4.072 in of casing is 0.032 ft/s. */
  @Test
  void seesAMotorThatIsNotCooled() {
    JobInSteps job = pump("rate", "1 gpm", "motor-outside", "2 in");
    assertThat(only(job, "pump.motor-hot").text().shownTo(Reader.US_ENGLISH)).contains("0.032 ft/s", "0.250 ft/s");
  }

  private static List<String> codes(String... more) {
    return pump(more).findings("pump").stream().map(Finding::code).toList();
  }

  private static Finding only(JobInSteps job, String code) {
    assertThat(job.findings("pump")).extracting(Finding::code).containsExactly(code);
    return job.findings("pump").get(0);
  }

  /** The last text of a field counts. */
  private static JobInSteps pump(String... more) {
    List<String> texts = new ArrayList<>(GOOD);
    for (int i = 0; i < more.length; i += 2) {
      int at = texts.indexOf(more[i]);
      if (at >= 0) texts.set(at + 1, more[i + 1]);
      else texts.addAll(List.of(more[i], more[i + 1]));
    }
    return tested().then("pump", texts.toArray(String[]::new));
  }
}
