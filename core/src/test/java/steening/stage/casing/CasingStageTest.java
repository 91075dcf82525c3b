package steening.stage.casing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import steening.finding.Expectation;
import steening.job.JobInSteps;
import steening.language.Language;
import steening.language.Reader;
import steening.language.UnitSystem;
import steening.stage.EverydayWell;
import steening.stage.Load;
import steening.stage.Progress;
import steening.stage.Sheet;
import steening.stage.Stage;
import steening.well.CasingString;
import steening.well.Well;

/** Own scenario, arithmetic checked by hand. */
class CasingStageTest {
  private static final Reader US = Reader.US_ENGLISH;
  private static final Reader METRIC_SPANISH = new Reader(Language.SPANISH, UnitSystem.METRIC);
  private static final Stage STAGE = new CasingStage();

  @Test
  void theEverydayStringIsSilent() {
    assertThat(EverydayWell.cased().findings("casing")).isEmpty();
    assertThat(EverydayWell.cased().job().unread()).isEmpty();
  }

  /** Piece by piece as a crew writes: nothing on the way either. */
  @Test
  void isSilentAllTheWayDown() {
    JobInSteps job = EverydayWell.cased();
    for (int entries = 1; entries <= job.entries().size(); entries++) {
      assertThat(new JobInSteps(job.entries().subList(0, entries)).findings("casing")).as("after %d entries", entries)
          .isEmpty();
    }
  }

  @Test
  void foldsTheString() {
    CasingString string = EverydayWell.cased().job().well().get(CasingString.PART);
    assertThat(string.length().inFeet()).isEqualTo(138.5);
    assertThat(string.bottom().orElseThrow().inFeet()).isEqualTo(137);
    assertThat(string.screenTop().orElseThrow().inFeet()).isEqualTo(125);
    assertThat(string.outside().orElseThrow().inInches()).isEqualTo(4.5);
    assertThat(string.inside().orElseThrow().inInches()).isEqualTo(4.072);
  }

  @Test
  void takesDiameterAndWallFromThePlanWhereTheStringHasNone() {
    Well well = EverydayWell.lowered().then("cut-piece", "length", "6.50 ft").then("string-set", "stick-up", "1.5 ft")
        .job().well();
    assertThat(well.get(CasingString.PART).inside().orElseThrow().inInches()).isEqualTo(4.072);
    JobInSteps planless = JobInSteps.nothing().then("joint", "number", "1", "overall", "20 ft")
        .then("string-set", "stick-up", "1 ft");
    assertThat(planless.findings("casing")).extracting(f -> f.code()).containsExactly("casing.diameter-unknown");
  }

  @Test
  void aBellIsFilledByTheNextSpigot() {
    JobInSteps job = JobInSteps.nothing();
    for (int i = 1; i <= 9; i++) job =
        job.then("joint", "number", Integer.toString(i), "overall", "20.33 ft", "bell", "0.33 ft");
    assertThat(job.job().well().get(CasingString.PART).length().inFeet()).isEqualTo(180);
  }

  @Test
  void aCutChangesTheStickUpOnly() {
    CasingString string = EverydayWell.cased().then("casing-cut", "stick-up", "1.0 ft").job().well()
        .get(CasingString.PART);
    assertThat(string.stickUp().orElseThrow().inFeet()).isEqualTo(1.0);
    assertThat(string.bottom().orElseThrow().inFeet()).isEqualTo(137);
    assertThat(string.screenTop().orElseThrow().inFeet()).isEqualTo(125);
  }

  /** A piece that is written down late still counts, under the stick-up the string was set with. */
  @Test
  void aPieceEnteredLateLowersTheBottom() {
    JobInSteps late = EverydayWell.cased().then("casing-cut", "stick-up", "1.0 ft")
        .then("joint", "number", "7", "overall", "20 ft");
    CasingString string = late.job().well().get(CasingString.PART);
    assertThat(string.bottom().orElseThrow().inFeet()).isEqualTo(157);
    assertThat(string.stickUp().orElseThrow().inFeet()).isEqualTo(1.0);
    assertThat(late.findings("casing")).extracting(f -> f.code()).contains("casing.piece-after-set");
  }

  @Test
  void asksForThePiecesInTheirOrder() {
    JobInSteps job = EverydayWell.drilled();
    assertThat(next(job)).isEqualTo("sump");
    job = job.then("sump", "length", "2 ft");
    assertThat(next(job)).isEqualTo("screen");
    job = job.then("screen", "length", "10 ft", "slot", "20 slot");
    assertThat(next(job)).isEqualTo("joint");
    job = EverydayWell.joints(job);
    assertThat(next(job)).isEqualTo("cut-piece");
    job = job.then("cut-piece", "length", "6.50 ft");
    assertThat(next(job)).isEqualTo("string-set");
    assertThat(next(EverydayWell.cased())).isEqualTo("casing-cut");
    assertThat(next(JobInSteps.nothing())).isEqualTo("sump");
  }

  /** The cut piece is known before the saw: 138.50 − 2 − 10 = 126.50; six joints of 20 ft; 6.50 left. */
  @Test
  void expectsWhatIsStillToCome() {
    JobInSteps begun = EverydayWell.drilled().then("sump", "length", "2 ft");
    assertThat(shown(begun)).containsExactly(
        "casing still to come 126.50 ft", "whole joints still to come 6", "length of the cut piece 6.50 ft");
    assertThat(shown(EverydayWell.lowered())).containsExactly(
        "casing still to come 6.50 ft", "whole joints still to come 0", "length of the cut piece 6.50 ft");
    JobInSteps long5 = begun.then("screen", "length", "10 ft", "slot", "20 slot")
        .then("joint", "number", "1", "overall", "20.10 ft");
    // by hand: 126.50 − 20.10 = 106.40; five more of 20.10 are 100.50
    assertThat(shown(long5)).containsExactly(
        "casing still to come 106.40 ft", "whole joints still to come 5", "length of the cut piece 5.90 ft");
    assertThat(shown(EverydayWell.drilled())).isEmpty();
  }

  @Test
  void expectsTheStickUpOnceTheStringIsWhole() {
    JobInSteps whole = EverydayWell.lowered().then("cut-piece", "length", "6.75 ft");
    assertThat(shown(whole)).containsExactly("stick-up when the string is set 1.75 ft");
    assertThat(shown(EverydayWell.cased())).isEmpty();
  }

  @Test
  void knowsHowFarItIs() {
    assertThat(STAGE.progress(EverydayWell.drilled().job().well())).isEqualTo(Progress.NOT_BEGUN);
    assertThat(STAGE.progress(EverydayWell.lowered().job().well())).isEqualTo(Progress.UNDER_WAY);
    assertThat(STAGE.progress(EverydayWell.cased().job().well())).isEqualTo(Progress.DONE);
  }

  @Test
  void showsStringScreenAndTally() {
    Sheet sheet = STAGE.sheet(EverydayWell.cased().job().well());
    assertThat(sheet.lines()).extracting(l -> l.label().shownTo(US) + ": " + l.value().shownTo(US)).contains(
        "length of the string: 138.50 ft", "string bottom below ground: 137.00 ft", "stick-up: 1.50 ft",
        "casing volume per length: 0.677 gal/ft");
    assertThat(sheet.tables()).hasSize(2);
    assertThat(sheet.tables().get(0).rows().get(0)).extracting(c -> c.shownTo(US))
        .containsExactly("125.00 ft", "135.00 ft", "10.00 ft", "0.020 in (20 slot)");
    Sheet.Table tally = sheet.tables().get(1);
    assertThat(tally.rows()).hasSize(9);
    assertThat(tally.rows().get(2)).extracting(c -> c.shownTo(US))
        .containsExactly("Joint 1", "19.98 ft", "0.00 ft", "19.98 ft", "31.98 ft", "105.02 ft");
    assertThat(tally.rows().get(8)).extracting(c -> c.shownTo(US)).endsWith("138.50 ft", "-1.50 ft");
    assertThat(tally.rows().get(1)).extracting(c -> c.shownTo(METRIC_SPANISH)).startsWith("Rejilla").contains("3.05 m");
    assertThat(STAGE.sheet(Well.named("w1")).isEmpty()).isTrue();
  }

  /** 126.50 ft of casing are 6.3 joints of 20 ft: seven, and one to spare. */
  @Test
  void loadsEightJoints() {
    List<Load> loads = STAGE.loads(EverydayWell.planned().job().well());
    assertThat(loads).extracting(l -> l.what().shownTo(US) + ": " + l.howMany().shownTo(US)).containsExactly(
        "joints of casing 4 1/2 in, 20.00 ft each, one to spare: 8",
        "screen 4 1/2 in, slot 0.020 in (20 slot): 10.00 ft",
        "sump and cap 4 1/2 in: 2.00 ft");
    assertThat(loads.get(0).what().shownTo(METRIC_SPANISH)).startsWith("tubos de ademe de 114.3 mm");
    assertThat(STAGE.loads(Well.named("w1"))).isEmpty();
  }

  /** Own scenario: top of screen 150 ft, stick-up 1.5 ft: 151.5 ft are 7.6 joints; eight, and one to spare. */
  @Test
  void loadsNineJointsForTheDeeperWell() {
    Well well = JobInSteps.nothing().then("plan",
        "hole-diameter", "7 7/8 in", "hole-depth", "165 ft", "casing-outside", "4.5 in", "casing-wall", "0.214 in",
        "stick-up", "1.5 ft", "screen-top", "150 ft", "screen-bottom", "160 ft", "sump", "2 ft", "slot", "20 slot",
        "pack-top", "140 ft", "grout-top", "0 ft", "rate", "10 gpm").job().well();
    assertThat(STAGE.loads(well).get(0).howMany().shownTo(US)).isEqualTo("9");
  }

  private static String next(JobInSteps job) {
    return STAGE.nextKind(job.job().well());
  }

  private static List<String> shown(JobInSteps job) {
    return job.expectations("casing").stream().map(CasingStageTest::shown).toList();
  }

  private static String shown(Expectation expectation) {
    return expectation.what().shownTo(US) + " " + expectation.figure().shownTo(US);
  }
}
