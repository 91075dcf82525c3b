package steening.stage.test;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static steening.stage.TestedWell.level;
import static steening.stage.TestedWell.packed;
import static steening.stage.TestedWell.pumping;
import static steening.stage.TestedWell.tested;

import java.util.List;
import org.junit.jupiter.api.Test;
import steening.drawing.Chart;
import steening.finding.Expectation;
import steening.job.JobInSteps;
import steening.language.Language;
import steening.language.Reader;
import steening.language.Shown;
import steening.language.UnitSystem;
import steening.quantity.Figure;
import steening.quantity.Unit;
import steening.stage.Progress;
import steening.stage.Sheet;

/** What the everyday test has to show, and what it expects: own scenario, arithmetic checked by hand. */
class TestSheetTest {
  private static final JobInSteps RESTED = packed().then("static-level", "level", "31.0 ft", "from", "top-of-casing");

  @Test
  void showsTheFiguresOfTheTest() {
    Sheet sheet = sheet(tested());
    assertThat(shown(sheet, "static water level, below ground")).isEqualTo("29.50 ft");
    assertThat(shown(sheet, "specific capacity")).isEqualTo("0.97 gpm/ft");
    assertThat(shown(sheet, "time of casing storage")).isEqualTo("9.3 min");
    assertThat(shown(sheet, "drawdown per log cycle")).isEqualTo("1.32 ft");
    // 263.857 × 12 / 1.3190: three readings lie 0.002 ft off the line of two
    assertThat(shown(sheet, "transmissivity")).isEqualTo("2401 gpd/ft");
    assertThat(shown(sheet, "drawdown after 100 days at this rate")).isEqualTo("16.06 ft");
    assertThat(shown(sheet, "level then, below ground")).isEqualTo("45.56 ft");
    assertThat(sheet.lines().stream().filter(l -> l.working().isPresent())).hasSizeGreaterThanOrEqualTo(5);
  }

  @Test
  void tellsEachReadingBesideTheLine() {
    Sheet.Table table = sheet(tested()).tables().get(0);
    List<String> last = table.rows().get(2).stream().map(s -> s.shownTo(Reader.US_ENGLISH)).toList();
    assertThat(last).containsExactly("240.0 min", "43.40 ft", "top of casing", "12.40 ft", "12.40 ft");
    List<String> spanish = table.heads().stream().map(h -> h.shownTo(new Reader(Language.SPANISH, UnitSystem.METRIC)))
        .toList();
    assertThat(spanish).containsExactly("minutos", "nivel leído", "leído desde", "abatimiento", "la recta ahí");
  }

  @Test
  void drawsTheReadingsOverTheLogarithmOfTime() {
    Chart chart = sheet(level(level(pumping("12 gpm"), 1, "34.38"), 5, "40.13"))
        .charts().get(0);
    assertThat(chart.across().logarithmic()).isTrue();
    assertThat(chart.down().downward()).isTrue();
    assertThat(chart.line()).as("casing water only").isEmpty();
    Chart whole = sheet(tested()).charts().get(0);
    assertThat(whole.points()).hasSize(3).allMatch(Chart.Point::used);
    assertThat(whole.line().orElseThrow().get(1).x()).isCloseTo(240, within(1e-9));
  }

  /** s = 12 / 0.85 = 14.1 ft; one spread of 1.6 deeper is 8.5 ft more. */
  @Test
  void expectsADrawdownFromTheNeighbours() {
    Expectation expected = only(RESTED);
    assertThat(expected.figure().shownTo(Reader.US_ENGLISH)).isEqualTo("14.12 ft");
    assertThat(expected.band().orElseThrow().shownTo(Reader.US_ENGLISH)).isEqualTo("8.47 ft");
    assertThat(only(pumping("6 gpm")).figure().shownTo(Reader.US_ENGLISH))
        .isEqualTo("7.06 ft");
  }

  @Test
  void expectsTheNextLevelFromTheLineSoFar() {
    JobInSteps job = pumping("12 gpm");
    for (String[] one : new String[][] {{"10", "41.58"}, {"15", "41.81"}, {"20", "41.98"}, {"30", "42.21"}}) {
      job = level(job, Integer.parseInt(one[0]), one[1]);
    }
    Expectation expected = only(job);
    assertThat(expected.what().shownTo(Reader.US_ENGLISH))
        .isEqualTo("pumping water level at 45.0 min, from top of casing");
    // 31.0 + 10.58 + 1.32 log 4.5 = 42.44
    assertThat(expected.figure().quantity().in(Unit.FOOT)).isCloseTo(42.44, within(0.02));
    assertThat(expected.band().orElseThrow().quantity().in(Unit.FOOT)).isBetween(0.005, 0.1);
    assertThat(expected.working().working(Reader.US_ENGLISH).lines()).anyMatch(l -> l.formula().equals("z₀ + s"));
    assertThat(tested().expectations("test")).as("after the stop").isEmpty();
  }

  @Test
  void knowsHowFarItIs() {
    assertThat(progress(packed())).isEqualTo(Progress.NOT_BEGUN);
    assertThat(progress(RESTED)).isEqualTo(Progress.UNDER_WAY);
    assertThat(progress(tested())).isEqualTo(Progress.DONE);
    assertThat(next(packed())).isEqualTo("static-level");
    assertThat(next(RESTED)).isEqualTo("pumping-start");
    assertThat(next(pumping("12 gpm"))).isEqualTo("pumping-level");
    assertThat(next(tested())).isEqualTo("recovery-level");
  }

  @Test
  void reckonsTheRecovery() {
    JobInSteps job = tested();
    for (String[] one : new String[][] {{"10", "32.85"}, {"20", "32.47"}, {"60", "31.92"}, {"120", "31.63"}}) {
      job = job.then("recovery-level", "minutes", one[0] + " min", "level", one[1] + " ft", "from", "top-of-casing");
    }
    assertThat(job.findings("test")).isEmpty();
    Figure recovered = (Figure) value(sheet(job), "transmissivity from the recovery");
    assertThat(recovered.quantity().in(Unit.GALLON_PER_DAY_PER_FOOT)).as("as pumping said")
        .isCloseTo(2400, withinPercentage(2));
    assertThat(sheet(job).tables()).hasSize(2);
  }

  private static Progress progress(JobInSteps job) {
    return job.stage("test").progress(job.job().well());
  }

  private static String next(JobInSteps job) {
    return job.stage("test").nextKind(job.job().well());
  }

  private static Expectation only(JobInSteps job) {
    List<Expectation> expectations = job.expectations("test");
    assertThat(expectations).hasSize(1);
    return expectations.get(0);
  }

  private static Sheet sheet(JobInSteps job) {
    return job.stage("test").sheet(job.job().well());
  }

  private static String shown(Sheet sheet, String label) {
    return value(sheet, label).shownTo(Reader.US_ENGLISH);
  }

  private static Shown value(Sheet sheet, String label) {
    return sheet.lines().stream()
        .filter(l -> l.label().shownTo(Reader.US_ENGLISH).equals(label))
        .findFirst().orElseThrow(() -> new AssertionError(label)).value();
  }
}
