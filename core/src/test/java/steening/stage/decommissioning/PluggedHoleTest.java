package steening.stage.decommissioning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.job.Job;
import steening.job.JobInSteps;
import steening.language.Language;
import steening.language.Reader;
import steening.language.UnitSystem;
import steening.quantity.Length;
import steening.quantity.Unit;
import steening.reckoning.Outcome;
import steening.stage.EverydayWell;
import steening.stage.Load;
import steening.stage.Progress;
import steening.stage.Stage;
import steening.well.Plug;
import steening.well.Plugs;
import steening.well.Well;

/** The lost hole closed from the bottom up, by hand: 7 7/8 in holds 0.33824 ft³/ft; cement 1.173, chips 0.69 ft³. */
class PluggedHoleTest {
  private static final Reader US = Reader.US_ENGLISH;
  private static final Reader SPANISH_METRIC = new Reader(Language.SPANISH, UnitSystem.METRIC);
  private static final Stage STAGE = new DecommissioningStage();

  @Test
  void anOpenHoleIsAFindingFromTheMomentTheRigMoved() {
    Finding open = LostHole.givenUp().finding("decommissioning.open-hole").orElseThrow();
    assertThat(open.text().shownTo(US))
        .isEqualTo("Hole 1, 88.00 ft deep, was given up on 2026-05-12 and is not plugged.");
    assertThat(open.next()).isPresent();
    assertThat(open.text().shownTo(SPANISH_METRIC)).startsWith("El barreno 1, de 26.82 m, se abandonó el");
    assertThat(STAGE.progress(LostHole.givenUp().job().well())).isEqualTo(Progress.NOT_BEGUN);
  }

  @Test
  void aJobWithoutALostHoleNeedsNoneOfIt() {
    Job job = EverydayWell.drilled().job();
    assertThat(STAGE.progress(job.well())).isEqualTo(Progress.NOT_NEEDED);
    assertThat(STAGE.findings(job.well())).isEmpty();
    assertThat(STAGE.sheet(job.well()).isEmpty()).isTrue();
    assertThat(STAGE.loads(job.well())).isEmpty();
    assertThat(job.cautions(STAGE)).isEmpty();
  }

  /** 85 ft: 28.75 ft³; 41.67 bags of chips, 45.8 with ten percent; 24.5 sacks of cement, 26.96. */
  @Test
  void theTruckNeedsChipsOrCementForIt() {
    List<Load> loads = STAGE.loads(LostHole.givenUp().job().well());
    assertThat(loads).extracting(l -> l.howMany().shownTo(US)).containsExactly("46 bags", "27 bags");
  }

  @Test
  void pluggedToNearTheGroundItIsDoneAndSilent() {
    Job job = LostHole.plugged().job();
    assertThat(STAGE.progress(job.well())).isEqualTo(Progress.DONE);
    assertThat(STAGE.findings(job.well())).isEmpty();
    List<Plug> plugs = job.well().earlier().get(0).get(Plugs.PART).plugs();
    assertThat(plugs).hasSize(2);
    assertThat(plugs.get(0).fill().volume().cubicMetres() / 0.0283168466).isCloseTo(15 * 1.1732, within(0.01));
    assertThat(plugs.get(1).fill().volume().cubicMetres() / 0.0283168466).isCloseTo(17 * 0.69, within(0.001));
  }

  /** 88 − 15 × 1.1732 / 0.33824 = 35.97 ft. */
  @Test
  void theTapeIsExpectedBeforeItIsRead() {
    JobInSteps pumped = LostHole.plug(
        LostHole.decided(), "38 ft", "88 ft", "neat-cement", 15, "water", "78 gal", "by", "tremie");
    assertThat(pumped.expectations("decommissioning").get(0).what().shownTo(US))
        .isEqualTo("tape on the plug in hole 1 after 15 bags, below ground");
    Outcome expected = pumped.expectations("decommissioning").get(0).working();
    assertThat(((Length) expected.quantity(Plugging.TOP)).inFeet()).isCloseTo(35.97, within(0.02));
  }

  /** 3 to 88 ft, nothing in it yet: 41.67 bags of chips and ten percent. */
  @Test
  void theNextStretchIsSaidInBags() {
    assertThat(LostHole.decided().expectations("decommissioning").get(0).figure().shownTo(US)).isEqualTo("46");
  }

  @Test
  void theCrewStaysAtItUntilItIsDoneAndGoesBackToTheSecondHole() {
    assertThat(LostHole.givenUp().then("setback", "source", "stream", "distance", "300 ft", "required", "100 ft")
        .job().present().name()).isEqualTo("drilling");
    assertThat(LostHole.decided().job().present().name()).isEqualTo("decommissioning");
    assertThat(STAGE.nextKind(LostHole.givenUp().job().well())).isEqualTo("decommissioning");
    assertThat(STAGE.nextKind(LostHole.decided().job().well())).isEqualTo("plug");
    JobInSteps pumped = LostHole.plug(LostHole.decided(), "38 ft", "88 ft", "neat-cement", 15);
    assertThat(STAGE.nextKind(pumped.job().well())).isEqualTo("plug-tape");
    assertThat(LostHole.plugged().job().present().name()).isEqualTo("drilling");
  }

  @Test
  void theRecordNamesMaterialBagsAndTheDayItIsDue() {
    Well first = LostHole.plugged().job().well().earlier().get(0);
    List<String> lines = STAGE.sheet(first).lines().stream()
        .map(l -> l.label().shownTo(US) + ": " + l.value().shownTo(US)).toList();
    assertThat(lines).contains(
        "hole 1, plugged on: 2026-05-12",
        "hole 1, record due in Minnesota, Texas, North Carolina: 2026-06-11",
        "hole 1, casing: there is none");
    List<String> cement = STAGE.sheet(first).tables().get(0).rows().get(0).stream().map(c -> c.shownTo(US)).toList();
    assertThat(cement).contains("38.00 ft to 88.00 ft", "neat cement", "15", "36.50 ft");
  }

  /** An entry without a number means the hole that is open and should not be. */
  @Test
  void withoutANumberThePlugGoesIntoTheOpenHole() {
    JobInSteps job = LostHole.givenUp()
        .then("plug", "from", "3 ft", "to", "88 ft", "material", "chips", "bags", "42")
        .then("plug-tape", "reading", "2.5 ft", "from", "ground");
    assertThat(job.job().well().earlier().get(0).get(Plugs.PART).plugs()).hasSize(1);
    assertThat(job.job().well().get(Plugs.PART).plugs()).isEmpty();
    assertThat(STAGE.progress(job.job().well())).isEqualTo(Progress.DONE);
  }

  /** A well of 4 in at the end of its life: the job is over, whatever else was never done. 4.026² in: 0.0884 ft³/ft. */
  @Test
  void aWellClosedForGoodEndsItsJob() {
    JobInSteps job = EverydayWell.cased()
        .then("decommissioning", "why", "replaced", "casing", "left", "cut", "4 ft", "inside", "4.026 in")
        .then("plug", "from", "4 ft", "to", "137 ft", "material", "neat-cement", "bags", "11", "by", "tremie")
        .then("plug-tape", "reading", "0.5 ft", "from", "ground");
    assertThat(job.findings("decommissioning")).extracting(Finding::code)
        .doesNotContain("decommissioning.still-open", "decommissioning.open-hole", "decommissioning.cut-high");
    assertThat(job.job().isDone()).isTrue();
    assertThat(job.job().present().name()).isEqualTo("decommissioning");
    Length bottom = Plugging.of(job.job().well()).bottom();
    assertThat(bottom.in(Unit.FOOT)).isCloseTo(137, within(0.1));
  }

  @Test
  void everyFindingOfThisRoomSaysWhatToDo() {
    JobInSteps bad = LostHole.plug(LostHole.decided(), "10 ft", "80 ft", "sand", 3);
    assertThat(bad.findings("decommissioning")).isNotEmpty()
        .allSatisfy(f -> assertThat(f.next()).isPresent())
        .allSatisfy(f -> assertThat(f.weight()).isNotEqualTo(Weight.STOP));
  }
}
