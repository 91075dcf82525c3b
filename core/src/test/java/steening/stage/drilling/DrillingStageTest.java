package steening.stage.drilling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import steening.finding.Expectation;
import steening.finding.Finding;
import steening.job.JobInSteps;
import steening.job.Stages;
import steening.journal.Entry;
import steening.language.Language;
import steening.language.Reader;
import steening.language.UnitSystem;
import steening.quantity.Unit;
import steening.stage.EverydayWell;
import steening.stage.Load;
import steening.stage.Progress;
import steening.stage.Sheet;
import steening.stage.Stage;
import steening.well.GroundLog;
import steening.well.Hole;
import steening.well.Stratum;
import steening.well.Well;

class DrillingStageTest {
  private static final Reader US = Reader.US_ENGLISH;
  private static final Reader METRIC_SPANISH = new Reader(Language.SPANISH, UnitSystem.METRIC);
  private static final Stage STAGE = new DrillingStage();

  @Test
  void theEverydayWellHasOneNote() {
    assertThat(EverydayWell.drilled().findings("drilling")).extracting(Finding::code)
        .containsExactly("drilling.up-hole-velocity");
    assertThat(EverydayWell.cased().findings("drilling")).extracting(Finding::code)
        .containsExactly("drilling.up-hole-velocity");
  }

  /** Entry by entry as a crew writes: nothing but the note while rod and log go by turns. */
  @Test
  void isSilentAllTheWayDown() {
    JobInSteps job = EverydayWell.setUp();
    int[] bottoms = {18, 38, 58, 78, 98, 118, 138};
    for (int rod = 1; rod <= 7; rod++) {
      job = job.then("rod", "number", Integer.toString(rod), "length", "20 ft", "depth", 20 * rod + " ft")
          .then("log", "from", rod == 1 ? "0 ft" : bottoms[rod - 2] + " ft", "to", bottoms[rod - 1]
              + " ft", "material", "clay")
          .then("hole", "from", 20 * (rod - 1) + " ft", "to", 20 * rod + " ft", "diameter", "7 7/8 in");
      assertThat(job.findings("drilling")).as("rod %d", rod).extracting(Finding::code)
          .containsExactly("drilling.up-hole-velocity");
    }
  }

  @Test
  void foldsTheHoleAndTheLog() {
    Well well = EverydayWell.drilled().job().well();
    assertThat(well.get(Hole.PART).depth().inFeet()).isEqualTo(142);
    List<Stratum> strata = well.get(GroundLog.PART).strata();
    assertThat(strata).hasSize(7);
    assertThat(strata.get(3).looks().shownTo(Reader.US_ENGLISH)).isEqualTo("gray, fine");
    assertThat(strata.get(5).waterBearing()).isTrue();
    assertThat(EverydayWell.drilled().job().unread()).isEmpty();
  }

  @Test
  void asksForWhatComesNext() {
    assertThat(STAGE.nextKind(EverydayWell.planned().job().well())).isEqualTo("drilling");
    assertThat(STAGE.nextKind(EverydayWell.setUp().job().well())).isEqualTo("rod");
    assertThat(STAGE.nextKind(EverydayWell.rods().job().well())).isEqualTo("log");
    JobInSteps deep =
        EverydayWell.logged(EverydayWell.rods().then("rod", "number", "8", "length", "20 ft", "depth", "142 ft"));
    assertThat(STAGE.nextKind(deep.job().well())).isEqualTo("hole");
    assertThat(STAGE.nextKind(EverydayWell.drilled().job().well())).isEqualTo("mud");
    JobInSteps half = EverydayWell.setUp().then("rod", "number", "1", "length", "20 ft", "depth", "18.5 ft")
        .then("log", "from", "0 ft", "to", "18 ft", "material", "clay");
    assertThat(STAGE.nextKind(half.job().well())).isEqualTo("rod");
  }

  @Test
  void knowsHowFarItIs() {
    assertThat(STAGE.progress(EverydayWell.planned().job().well())).isEqualTo(Progress.NOT_BEGUN);
    assertThat(STAGE.progress(EverydayWell.logged().job().well())).isEqualTo(Progress.UNDER_WAY);
    assertThat(STAGE.progress(EverydayWell.drilled().job().well())).isEqualTo(Progress.DONE);
  }

  @Test
  void expectsTheDepthAfterTheNextRodAndTheLag() {
    JobInSteps job = EverydayWell.setUp().then("rod", "number", "1", "length", "19.95 ft", "depth", "21.2 ft");
    List<Expectation> expectations = job.expectations("drilling");
    assertThat(expectations).hasSize(2);
    assertThat(expectations.get(0).what().shownTo(US)).isEqualTo("hole depth after rod 2");
    assertThat(expectations.get(0).figure().shownTo(US)).isEqualTo("41.15 ft");
    // by hand: 21.2 ft at 50.16 ft/min
    assertThat(expectations.get(1).figure().quantity().in(Unit.MINUTE)).isCloseTo(0.4227, within(0.001));
    assertThat(EverydayWell.cased().expectations("drilling")).isEmpty();
  }

  @Test
  void showsHoleRodsMudAndLog() {
    Sheet sheet = STAGE.sheet(EverydayWell.drilled().job().well());
    assertThat(sheet.tables()).extracting(t -> t.title().shownTo(US))
        .containsExactly("Hole", "Rods", "Mud", "Driller's log");
    assertThat(sheet.lines()).extracting(l -> l.label().shownTo(US) + ": " + l.value().shownTo(US)).contains(
        "up-hole velocity: 50 ft/min", "hole depth: 142.00 ft", "hole volume: 48.03 ft³",
        "mud pit, at least: 718.6 gal");
    assertThat(sheet.tables().get(3).rows().get(3)).extracting(c -> c.shownTo(METRIC_SPANISH))
        .containsExactly("18.59 m", "23.77 m", "arena limosa", "SM", "", "gris, fine");
    assertThat(STAGE.sheet(Well.named("w1")).isEmpty()).isTrue();
  }

  /** By hand: 142 ft of 2.5302 gal/ft is 359.3 gal; three times that at 0.2 lb/gal is 215.6 lb, 5 bags of 50 lb. */
  @Test
  void loadsBitBentoniteAndWater() {
    List<Load> loads = STAGE.loads(EverydayWell.planned().job().well());
    assertThat(loads).extracting(l -> l.what().shownTo(US) + ": " + l.howMany().shownTo(US)).containsExactly(
        "drill bit: 7 7/8 in", "bags of drilling bentonite, 50.0 lb each: 5", "water for the mud: 1077.9 gal");
    assertThat(STAGE.loads(Well.named("w1"))).isEmpty();
  }

  /** Whatever the order, and whatever is missing: the fold does not throw, and every question is answered. */
  @Test
  void bearsAnyOrderOfEntries() {
    List<Entry> entries = new ArrayList<>(EverydayWell.cased().entries());
    Random random = new Random(142);
    for (int trial = 0; trial < 50; trial++) {
      Collections.shuffle(entries, random);
      Well well = Well.named("w1");
      for (Entry entry : entries) {
        well = Stages.ofKind(entry.kind()).orElseThrow().fold(well, entry);
        for (Stage stage : List.of(Stages.named("drilling").orElseThrow(), Stages.named("casing").orElseThrow())) {
          stage.findings(well).forEach(f -> assertThat(f.text().shownTo(US)).isNotBlank());
          assertThat(stage.expectations(well)).allMatch(e -> !e.figure().shownTo(US).isEmpty());
          assertThat(stage.sheet(well)).isNotNull();
          assertThat(stage.kinds()).extracting(k -> k.name()).contains(stage.nextKind(well));
        }
      }
    }
  }
}
