package steening.stage.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import steening.field.Reading;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.job.Notebook;
import steening.journal.Body;
import steening.language.Language;
import steening.language.Reader;
import steening.language.UnitSystem;
import steening.quantity.Length;
import steening.quantity.Unit;
import steening.quantity.Volume;
import steening.stage.Progress;
import steening.stage.Sheet;
import steening.well.Plan;

/** Own scenario of an everyday well. */
class PlanFindingsTest {
  private static final PlanStage STAGE = new PlanStage();
  private static final Reader SPANISH_METRIC = new Reader(Language.SPANISH, UnitSystem.METRIC);
  private static final String[] GOOD = {
    "hole-diameter", "7 7/8 in", "hole-depth", "142 ft", "casing-outside", "4.5 in", "casing-wall", "0.214 in",
    "stick-up", "1.5 ft", "screen-top", "125 ft", "screen-bottom", "135 ft", "sump", "2 ft", "slot", "20 slot",
    "pack-top", "115 ft", "chips-top", "110 ft", "grout-top", "0 ft", "rate", "12 gpm"
  };

  @Test
  void findsNothingInAGoodPlan() {
    assertThat(planned().codes("plan")).isEmpty();
    assertThat(new Notebook().codes("plan")).isEmpty();
    assertThat(planned("sump", "7 ft").codes("plan")).isEmpty();
    assertThat(planned("hole-diameter", "7.5 in").codes("plan")).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "hole-depth, 124 ft, plan.screen-outside",
    "hole-depth, 134.9 ft, plan.screen-outside",
    "hole-depth, 136 ft, plan.string-too-deep",
    "screen-top, 135 ft, plan.screen-upside-down",
    "screen-bottom, 120 ft, plan.screen-upside-down",
    "pack-top, 126 ft, plan.pack-low",
    "pack-top, 123 ft, plan.pack-short",
    "chips-top, 116 ft, plan.chips-low",
    "grout-top, 111 ft, plan.grout-low",
    "hole-diameter, 4.5 in, plan.hole-small",
    "hole-diameter, 4 in, plan.hole-small",
    "hole-diameter, 7 1/4 in, plan.annulus-thin",
    "casing-wall, 2.25 in, plan.wall-thick"
  })
  void findsEachContradiction(String name, String text, String code) {
    assertThat(planned(name, text).codes("plan")).containsExactly(code);
  }

  /** The slip of 124 for 142: both numbers stand in the sentence. */
  @Test
  void givesBothNumbers() {
    Finding finding = planned("hole-depth", "124 ft").finding("plan.screen-outside");
    assertThat(finding.weight()).isEqualTo(Weight.STOP);
    assertThat(finding.text().shownTo(Reader.US_ENGLISH))
        .isEqualTo("bottom of screen at 135.00 ft, hole depth at 124.00 ft: the first must not be the deeper.");
    assertThat(finding.text().shownTo(SPANISH_METRIC))
        .isEqualTo(
            "fondo de la rejilla a 41.15 m, profundidad del barreno a 37.80 m: lo primero no debe quedar más abajo.");
    Finding string = planned("hole-depth", "136 ft").finding("plan.string-too-deep");
    assertThat(string.text().shownTo(Reader.US_ENGLISH))
        .isEqualTo("Screen and sump end at 137.00 ft; the hole is 136.00 ft deep.");
    assertThat(string.working()).isPresent();
  }

  /** 1.5 in on every side: South Carolina R.61-71 (seen); 7 1/4 in round 4.5 in leaves 1 3/8. */
  @Test
  void namesTheRulesThatDiffer() {
    Finding finding = planned("hole-diameter", "7 1/4 in").finding("plan.annulus-thin");
    assertThat(finding.weight()).isEqualTo(Weight.LOOK);
    assertThat(finding.text().shownTo(Reader.US_ENGLISH))
        .startsWith("1 3/8 in of annulus on each side; 1 1/2 in are wanted");
    assertThat(finding.cause().get().shownTo(Reader.US_ENGLISH)).contains("2 in (Michigan)")
        .contains("4 in larger (New York)");
  }

  @Test
  void goesByThePackThatWasAskedFor() {
    assertThat(planned("pack-top", "122 ft").codes("plan")).isEmpty();
    List<String> body = new ArrayList<>(List.of(GOOD));
    body.addAll(List.of("pack-above-least", "12 ft"));
    Notebook strict = new Notebook().write("plan", body.toArray(String[]::new));
    assertThat(strict.finding("plan.pack-short").text().shownTo(Reader.US_ENGLISH))
        .isEqualTo("Pack planned 10.00 ft above the screen; at least 12.00 ft are wanted.");
  }

  @Test
  void takesNoGroutAboveTheGround() {
    Reading reading = Plan.GROUT_TOP.read("-1 ft", Reader.US_ENGLISH, true);
    assertThat(((Reading.Refused) reading).sentence().shownTo(Reader.US_ENGLISH))
        .isEqualTo("top of grout: -1.00 ft is outside 0.00 ft to 6000.00 ft. Example: 0 ft.");
  }

  /** Own scenario, by hand: (7.875 − 4.5)/2 and 135 + 2 + 1.5. */
  @Test
  void showsWhatFollowsFromThePlan() {
    Sheet sheet = STAGE.sheet(planned().well());
    assertThat(sheet.lines()).hasSize(13 + 2);
    assertThat(value(sheet, "annulus on each side")).isEqualTo("1 11/16 in");
    assertThat(value(sheet, "length of the casing string")).isEqualTo("138.50 ft");
    assertThat(STAGE.sheet(new Notebook().well())).isEqualTo(Sheet.EMPTY);
    assertThat(STAGE.progress(planned().well())).isEqualTo(Progress.DONE);
    assertThat(STAGE.progress(new Notebook().well())).isEqualTo(Progress.NOT_BEGUN);
  }

  @Test
  void fallsBackOnWhatIsUsual() {
    Plan plan = planned().well().get(Plan.PART);
    assertThat(plan.bagVolume().in(Unit.CUBIC_FOOT)).isEqualTo(0.5);
    assertThat(plan.chipsBagVolume().in(Unit.CUBIC_FOOT)).isEqualTo(0.69);
    assertThat(plan.groutSolids().in(Unit.POUND)).isEqualTo(50);
    assertThat(plan.groutWater()).isEqualTo(Volume.of(24, Unit.GALLON));
    assertThat(plan.overage()).isEqualTo(0.25);
    assertThat(plan.packAboveLeast()).isEqualTo(Length.feet(3));
    assertThat(plan.packAboveMost()).isEqualTo(Length.feet(10));
    assertThat(new Plan(Body.EMPTY).packAboveMost()).isEqualTo(Length.feet(5));
    assertThat(plan.collapseSafety()).isEqualTo(2);
    assertThat(new Plan(Body.of("overage", "10 %", "bag-volume", "0.45 ft3")).overage()).isEqualTo(0.1);
  }

  private static String value(Sheet sheet, String label) {
    return sheet.lines().stream()
        .filter(l -> l.label().shownTo(Reader.US_ENGLISH).equals(label))
        .map(l -> l.value().shownTo(Reader.US_ENGLISH))
        .findFirst().orElseThrow();
  }

  private static Notebook planned(String... namesAndTexts) {
    List<String> all = new ArrayList<>(List.of(GOOD));
    for (int i = 0; i < namesAndTexts.length; i += 2) all.set(all.indexOf(namesAndTexts[i]) + 1, namesAndTexts[i + 1]);
    return new Notebook().write("plan", all.toArray(String[]::new));
  }
}
