package steening.stage.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import steening.job.JobInSteps;
import steening.language.Language;
import steening.language.Reader;
import steening.language.UnitSystem;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.stage.EverydayWell;
import steening.stage.Sheet;

/** Own scenario, arithmetic checked by hand. */
class GroundOfEarlierWellsTest {
  private static final JobInSteps LOOSE = EverydayWell.planned()
      .then("usual-ground", "mean-ratio", "1.30", "spread", "0.15", "wells", "Mill Lane");

  /**
   * Three wells of 1.20, 1.30, 1.40 beside the usual 1.14 ± 0.12 that weighs four: m = (4 × 1.14 + 3.90) / 7 = 1.2086;
   * s² = (0.0576 + 0.02 + 12/7 × 0.0256) / 7 × 8/7 = 0.019836.
   */
  @Test
  void drawsAFewWellsTowardTheUsual() {
    Outcome found =
        GroundOfEarlierWells.RECKONING.of(Inputs.none().with(GroundOfEarlierWells.RATIOS, "1.2; 1.3; 1.4"));
    assertThat(found.quantity("mean-of-these").coherent()).isCloseTo(1.30, within(1e-9));
    assertThat(found.quantity("mean-ratio").coherent()).isCloseTo(1.2086, within(0.0001));
    assertThat(found.quantity("spread").coherent()).isCloseTo(Math.sqrt(0.019836), within(0.0001));
  }

  @Test
  void oneWellMovesItLittleAndManyMoveItFar() {
    double one = mean("1.40");
    double many = mean("1.40; ".repeat(19) + "1.40");
    assertThat(one).isCloseTo((4 * 1.14 + 1.40) / 5, within(1e-9));
    assertThat(many).isGreaterThan(1.35);
  }

  @Test
  void changesWhatTheWellIsExpectedToTake() {
    assertThat(loads(EverydayWell.planned())).contains("bags of grout by what holes here take");
    double anywhere = EverydayWell.planned().expectations("pack").stream()
        .filter(e -> e.what().shownTo(Reader.US_ENGLISH).startsWith("bags of pack")).findFirst().orElseThrow()
        .figure().quantity().coherent();
    double loose = LOOSE.expectations("pack").stream()
        .filter(e -> e.what().shownTo(Reader.US_ENGLISH).startsWith("bags of pack")).findFirst().orElseThrow()
        .figure().quantity().coherent();
    assertThat(loose).isGreaterThan(anywhere);
  }

  @Test
  void saysWhatItReckonsWithAndFromWhichWells() {
    Sheet sheet = new PlanStage().sheet(LOOSE.job().well());
    assertThat(sheet.lines()).extracting(l -> l.value().shownTo(new Reader(Language.SPANISH, UnitSystem.METRIC)))
        .contains("1.30, más o menos 0.15", "Mill Lane");
  }

  private static double mean(String ratios) {
    return GroundOfEarlierWells.RECKONING.of(Inputs.none().with(GroundOfEarlierWells.RATIOS, ratios))
        .quantity("mean-ratio").coherent();
  }

  private static String loads(JobInSteps job) {
    StringBuilder all = new StringBuilder();
    steening.job.Stages.all().forEach(s -> s.loads(job.job().well())
        .forEach(l -> all.append(l.what().shownTo(Reader.US_ENGLISH)).append('\n')));
    return all.toString();
  }
}
