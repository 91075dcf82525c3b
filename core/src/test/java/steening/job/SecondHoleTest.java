package steening.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import steening.finding.Expectation;
import steening.journal.Body;
import steening.journal.Entry;
import steening.journal.Journal;
import steening.language.Language;
import steening.language.Reader;
import steening.language.UnitSystem;
import steening.quantity.Length;
import steening.stage.EverydayWell;
import steening.stage.Progress;
import steening.well.CasingString;
import steening.well.GroundLog;
import steening.well.Hole;
import steening.well.MovedOver;
import steening.well.Plan;
import steening.well.Well;

/** Own scenario, arithmetic by hand: the rods part at 88 ft, the rig moves 12 ft and begins again. Invented. */
class SecondHoleTest {
  private static final Reader SPANISH_METRIC = new Reader(Language.SPANISH, UnitSystem.METRIC);

  private static JobInSteps lost() {
    return EverydayWell.setUp()
        .then("rod", "number", "1", "length", "20 ft", "depth", "20 ft")
        .then("rod", "number", "2", "length", "20 ft", "depth", "88 ft")
        .then("log", "from", "0 ft", "to", "38 ft", "material", "sandy-clay")
        .then("log", "from", "38 ft", "to", "88 ft", "material", "clay");
  }

  private static JobInSteps moved() {
    return lost().then(
        "moved-over", "depth", "88 ft", "why", "lost-tools", "distance", "12 ft", "direction", "north-east");
  }

  @Test
  void theNextHoleBeginsAnewUnderTheSameJob() {
    Job job = moved().job();
    assertThat(job.well().get(Hole.PART).isBegun()).isFalse();
    assertThat(job.well().get(GroundLog.PART).strata()).isEmpty();
    assertThat(job.well().get(Plan.PART).isMade()).isTrue();
    assertThat(job.well().number()).isEqualTo(2);
    assertThat(job.present().name()).isEqualTo("drilling");
    assertThat(job.present().progress(job.well())).isEqualTo(Progress.NOT_BEGUN);
  }

  /** Nobody had written the hole down, only the rods: it is as deep as was said and as wide as the bit. */
  @Test
  void theOldHolesDepthIsKnown() {
    Well first = moved().job().well().earlier().get(0);
    assertThat(first.get(Hole.PART).depth()).isEqualTo(Length.feet(88));
    assertThat(first.get(Hole.PART).bore().reaches().get(0).diameter().inInches()).isEqualTo(7.875);
    assertThat(first.get(GroundLog.PART).strata()).hasSize(2);
    assertThat(first.get(MovedOver.AWAY).orElseThrow().why()).isEqualTo(MovedOver.Why.LOST_TOOLS);
  }

  @Test
  void aDepthThatContradictsTheRodsIsAsked() {
    JobInSteps short20 = lost().then(
        "moved-over", "depth", "68 ft", "why", "caved", "distance", "12 ft", "direction", "east");
    assertThat(short20.finding("drilling.depth-given-up").orElseThrow().text().shownTo(Reader.US_ENGLISH))
        .isEqualTo("Hole 1 was given up at 68.00 ft; what was written while drilling says 88.00 ft.");
    assertThat(moved().finding("drilling.depth-given-up")).isEmpty();
  }

  @Test
  void theOldLogSaysWhereTheGroundWillChange() {
    List<Expectation> expected = moved()
        .then("drilling", "bit", "7 7/8 in", "rod", "2.875 in", "pump-rate", "110 gpm")
        .then("rod", "number", "1", "length", "20 ft", "depth", "20 ft").expectations("drilling");
    assertThat(expected.get(0).what().shownTo(Reader.US_ENGLISH)).isEqualTo("clay, by the log of hole 1");
    assertThat(expected.get(0).figure().shownTo(Reader.US_ENGLISH)).isEqualTo("38.00 ft");
    assertThat(expected.get(0).what().shownTo(SPANISH_METRIC)).isEqualTo("arcilla, según el registro del barreno 1");
  }

  /** What happened before the moving belongs to the old hole, whenever it was typed. */
  @Test
  void aLateEntryGoesToTheHoleOfItsTime() {
    List<Entry> entries = new ArrayList<>(moved().then("log", "from", "0 ft", "to", "5 ft", "material", "clay").entries());
    Entry last = entries.get(entries.size() - 1);
    entries.add(new Entry(
        "late", "w1", "d1", 99, "crew", entries.get(1).happenedAt(), last.recordedAt().plusMinutes(60), "hole", 1,
        Body.of("from", "0 ft", "to", "90 ft", "diameter", "9 in"), List.of()));
    Well well = Job.of("w1", Journal.of(entries)).well();
    assertThat(well.earlier().get(0).get(Hole.PART).depth()).isEqualTo(Length.feet(90));
    assertThat(well.get(Hole.PART).isBegun()).isFalse();
    assertThat(well.get(GroundLog.PART).strata()).hasSize(1);
  }

  @Test
  void withoutTheMovingThereIsOneHole() {
    List<Entry> entries = new ArrayList<>(moved().entries());
    Entry moving = entries.get(entries.size() - 1);
    entries.add(new Entry(
        "w", "w1", "d1", 99, "crew", moving.happenedAt(), moving.recordedAt().plusMinutes(5), Entry.WITHDRAWAL, 1,
        Body.EMPTY, List.of(moving.id())));
    Well well = Job.of("w1", Journal.of(entries)).well();
    assertThat(well.earlier()).isEmpty();
    assertThat(well.get(GroundLog.PART).strata()).hasSize(2);
  }

  /** 110 ft less the 12 that the rig moved may be 98; 300 ft stay enough. */
  @Test
  void setbacksMayHaveShrunkByAsMuchAsTheRigMoved() {
    JobInSteps measured = JobInSteps.nothing()
        .then("setback", "source", "septic-tank", "distance", "110 ft", "required", "100 ft")
        .then("setback", "source", "stream", "distance", "300 ft", "required", "100 ft")
        .then("moved-over", "depth", "88 ft", "why", "dry", "distance", "12 ft", "direction", "west");
    assertThat(measured.findings("site")).extracting(f -> f.code()).containsExactly("site.setback-moved");
    assertThat(measured.findings("site").get(0).measured().orElseThrow().shownTo(Reader.US_ENGLISH))
        .isEqualTo("98.00 ft");
    JobInSteps again = measured.then("setback", "source", "septic-tank", "distance", "104 ft", "required", "100 ft");
    assertThat(again.findings("site")).isEmpty();
  }

  @Test
  void aWholeWellAfterALostHoleHasTheFindingsOfAWholeWell() {
    JobInSteps job = moved();
    for (Entry entry : EverydayWell.drilled().entries()) {
      if (entry.kind().equals("plan")) continue;
      List<String> body = new ArrayList<>();
      entry.body().values().forEach((name, text) -> body.addAll(List.of(name, text)));
      job = job.then(entry.kind(), body.toArray(String[]::new));
    }
    assertThat(job.findings("drilling")).extracting(f -> f.code()).containsExactly("drilling.up-hole-velocity");
    assertThat(job.job().well().get(CasingString.PART).pieces()).isEmpty();
  }
}
