package steening.stage.casing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import steening.field.Field;
import steening.field.Reading;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.job.JobInSteps;
import steening.job.Stages;
import steening.language.Language;
import steening.language.Reader;
import steening.language.UnitSystem;
import steening.stage.EverydayWell;

/** Own scenarios; the numbers in the sentences are checked by hand. */
class CasingFindingsTest {
  private static final Reader US = Reader.US_ENGLISH;
  private static final Reader METRIC_SPANISH = new Reader(Language.SPANISH, UnitSystem.METRIC);

  @Test
  void aScreenAgainstClayStopsWithTheDepths() {
    JobInSteps job = EverydayWell.set(EverydayWell.lowered(ground("medium-sand", "130 ft", "clay")));
    Finding finding = job.finding("casing.screen-in-clay").orElseThrow();
    assertThat(finding.weight()).isEqualTo(Weight.STOP);
    assertThat(finding.text().shownTo(US))
        .isEqualTo("The screen from 125.00 ft to 135.00 ft stands against clay from 130.00 ft to 135.00 ft.");
    assertThat(finding.text().shownTo(METRIC_SPANISH))
        .isEqualTo("La rejilla de 38.10 m a 41.15 m queda frente a arcilla, de 39.62 m a 41.15 m.");
    assertThat(codes(job)).containsExactly("casing.screen-in-clay");
  }

  /** Known as soon as the clay is logged, while the string still lies on the ground. */
  @Test
  void aPlannedScreenAgainstClayStopsBeforeAnythingIsLowered() {
    Finding finding = ground("medium-sand", "130 ft", "clay").finding("casing.screen-in-clay").orElseThrow();
    assertThat(finding.text().shownTo(US))
        .startsWith("The screen planned from 125.00 ft to 135.00 ft would stand against clay");
  }

  @Test
  void aScreenInGroundThatGivesLittleWaterIsLookedAt() {
    JobInSteps job = EverydayWell.set(EverydayWell.lowered(ground("coarse-sand", "132 ft", "silty-sand")));
    Finding finding = job.finding("casing.screen-not-in-water").orElseThrow();
    assertThat(finding.weight()).isEqualTo(Weight.LOOK);
    assertThat(finding.text().shownTo(US)).contains("against silty sand from 132.00 ft to 135.00 ft");
  }

  /** The driller's judgement counts for more than the name of the ground. */
  @Test
  void waterTheDrillerSawSoftensIt() {
    JobInSteps planned = EverydayWell.planned();
    JobInSteps sandstone = planned.then("log", "from", "0 ft", "to", "142 ft", "material", "sandstone", "water", "yes");
    assertThat(sandstone.findings("casing")).isEmpty();
    JobInSteps shale = planned.then("log", "from", "0 ft", "to", "142 ft", "material", "shale", "water", "yes");
    assertThat(shale.finding("casing.screen-in-clay").orElseThrow().weight()).isEqualTo(Weight.LOOK);
  }

  /** Eight loaded, two left, and seven joints in the tally. */
  @Test
  void theTruckIsASecondCount() {
    JobInSteps seven = EverydayWell.lowered().then("joint", "number", "7", "overall", "6.50 ft");
    Finding finding = seven.then("string-set", "stick-up", "1.5 ft", "loaded", "8", "left", "2")
        .finding("casing.tally-against-truck").orElseThrow();
    assertThat(finding.weight()).isEqualTo(Weight.LOOK);
    assertThat(finding.text().shownTo(US)).isEqualTo("8 joints loaded, 2 left: 6 were run. The tally says 7.");
  }

  /** The rest of the joint that the piece was cut from may be counted as left, or not. */
  @ParameterizedTest
  @CsvSource({"0, true", "1, false", "2, false", "3, true"})
  void theOffcutMayBeCountedEitherWay(String left, boolean found) {
    JobInSteps job = EverydayWell.lowered().then("cut-piece", "length", "6.50 ft")
        .then("string-set", "stick-up", "1.5 ft", "loaded", "8", "left", left);
    assertThat(job.finding("casing.tally-against-truck").isPresent()).isEqualTo(found);
  }

  @Test
  void jointNumbersFollowEachOther() {
    JobInSteps job = EverydayWell.planned()
        .then("joint", "number", "1", "overall", "20 ft")
        .then("joint", "number", "3", "overall", "20 ft")
        .then("joint", "number", "3", "overall", "20 ft");
    assertThat(job.findings("casing")).filteredOn(f -> f.code().equals("casing.joint-number"))
        .extracting(f -> f.text().shownTo(US)).containsExactly("Joint 3 follows joint 1.", "Joint 3 follows joint 3.");
  }

  /** The hole was entered as 124 ft for 142 ft. */
  @Test
  void aStringDeeperThanTheHoleStops() {
    JobInSteps shallow = EverydayWell.logged().then("hole", "from", "0 ft", "to", "124 ft", "diameter", "7 7/8 in");
    Finding planned = shallow.then("sump", "length", "2 ft").finding("casing.string-deeper-than-hole").orElseThrow();
    assertThat(planned.weight()).isEqualTo(Weight.STOP);
    assertThat(planned.text().shownTo(US)).isEqualTo("The string is planned to 137.00 ft, the hole ends at 124.00 ft.");
    Finding set = EverydayWell.set(EverydayWell.lowered(shallow)).finding("casing.string-deeper-than-hole")
        .orElseThrow();
    assertThat(set.text().shownTo(US)).isEqualTo("The string ends at 137.00 ft, the hole at 124.00 ft.");
  }

  @ParameterizedTest
  @CsvSource({"145.0 ft, false", "145.1 ft, true", "142 m, true"})
  void aStringFarOffBottomIsANote(String depth, boolean found) {
    JobInSteps deep = EverydayWell.logged().then("hole", "from", "0 ft", "to", depth, "diameter", "7 7/8 in");
    JobInSteps job = EverydayWell.set(EverydayWell.lowered(deep));
    assertThat(job.finding("casing.off-bottom").isPresent()).isEqualTo(found);
    job.finding("casing.off-bottom").ifPresent(f -> assertThat(f.weight()).isEqualTo(Weight.NOTE));
  }

  @Test
  void casingLargerThanTheHoleStops() {
    JobInSteps job = EverydayWell.set(EverydayWell.lowered(EverydayWell.logged()
        .then("hole", "from", "0 ft", "to", "60 ft", "diameter", "7 7/8 in")
        .then("hole", "from", "60 ft", "to", "142 ft", "diameter", "4.25 in")));
    Finding finding = job.finding("casing.larger-than-hole").orElseThrow();
    assertThat(finding.weight()).isEqualTo(Weight.STOP);
    assertThat(finding.text().shownTo(US))
        .isEqualTo("The casing is 4 1/2 in across, the hole between 60.00 ft and 142.00 ft only 4 1/4 in.");
  }

  /** A screen of 10 in for 10 ft: 2 + 0.83 + 126.50 = 129.33, and the string ends at 127.83. */
  @Test
  void tenInchesOfScreenForTenFeet() {
    JobInSteps job = EverydayWell.set(EverydayWell.joints(
        EverydayWell.drilled().then("sump", "length", "2 ft").then("screen", "length", "10 in", "slot", "20 slot")));
    assertThat(codes(job)).containsExactly("casing.screen-length", "casing.bottom-off-plan");
    Finding length = job.finding("casing.screen-length").orElseThrow();
    assertThat(length.text().shownTo(US)).isEqualTo("0.83 ft of screen lowered, 10.00 ft planned.");
    assertThat(length.cause().orElseThrow().shownTo(US)).isEqualTo("Inches for feet.");
    assertThat(job.finding("casing.bottom-off-plan").orElseThrow().text().shownTo(US))
        .isEqualTo(
            "The string ends at 127.83 ft, planned is 137.00 ft. It adds up to 129.33 ft, planned is 138.50 ft.");
  }

  /** The string stopped 6.4 ft high: its pieces add up, its stick-up does not. */
  @Test
  void aStringThatHangsOnALedge() {
    JobInSteps job = EverydayWell.lowered().then("cut-piece", "length", "6.50 ft")
        .then("string-set", "stick-up", "7.9 ft");
    assertThat(codes(job)).containsExactly("casing.bottom-off-plan");
    assertThat(job.findings("casing").get(0).cause().orElseThrow().shownTo(US)).contains("ledge");
  }

  @Test
  void aScreenInAnotherPlaceOfAStringOfTheRightLength() {
    JobInSteps job = EverydayWell.drilled().then("sump", "length", "3 ft")
        .then("screen", "length", "10 ft", "slot", "20 slot");
    job = EverydayWell.joints(job).then("cut-piece", "length", "5.50 ft").then("string-set", "stick-up", "1.5 ft");
    assertThat(codes(job)).containsExactly("casing.screen-off-plan");
    assertThat(job.finding("casing.screen-off-plan").orElseThrow().text().shownTo(US))
        .isEqualTo("The screen stands from 124.00 ft to 134.00 ft, planned is 125.00 ft to 135.00 ft.");
  }

  @ParameterizedTest
  @CsvSource({"0.040 in, true", "20 slot, false", "0.5 mm, false", "0.25 mm, true"})
  void theSlotIsHeldAgainstThePlan(String slot, boolean found) {
    JobInSteps job = EverydayWell.drilled().then("sump", "length", "2 ft")
        .then("screen", "length", "10 ft", "slot", slot);
    assertThat(job.finding("casing.slot-off-plan").isPresent()).isEqualTo(found);
  }

  /** By hand: 12 gpm through 10 ft of 3 in²/ft, 0.2083 ft², enter at 0.128 ft/s. */
  @Test
  void aScreenTooTightForTheRate() {
    JobInSteps job = EverydayWell.drilled().then("sump", "length", "2 ft")
        .then("screen", "length", "10 ft", "slot", "20 slot", "open-area", "3 in2/ft");
    Finding finding = job.finding("casing.entrance-velocity").orElseThrow();
    assertThat(finding.text().shownTo(US))
        .isEqualTo("At 12.0 gpm the water enters the screen at 0.128 ft/s; 0.100 ft/s is not to be exceeded.");
    assertThat(finding.working()).isPresent();
  }

  @Test
  void aCutCannotLengthenTheCasing() {
    JobInSteps job = EverydayWell.cased().then("casing-cut", "stick-up", "1.0 ft");
    assertThat(codes(job)).isEmpty();
    assertThat(
        job.then("casing-cut", "stick-up", "2.0 ft").finding("casing.cut-longer").orElseThrow().text().shownTo(US))
        .isEqualTo("After the cut 2.00 ft stand above ground; before it 1.00 ft did.");
  }

  /** What an expert sees in these slips before they are kept. */
  @ParameterizedTest
  @CsvSource({"screen, length, 10 in, 10 ft", "screen, slot, 20 in, 20 slot", "joint, overall, 20 m, 20 ft"})
  void aSlipOfUnitsIsAskedAbout(String kind, String name, String typed, String meant) {
    Field field = Stages.kind(kind).orElseThrow().field(name).orElseThrow();
    assertThat(field.read(typed, US, false))
        .isInstanceOfSatisfying(Reading.Asked.class, asked -> assertThat(asked.meanings()).contains(meant));
  }

  /** Sand below topsoil to a depth, something else under it. */
  private static JobInSteps ground(String sand, String depth, String below) {
    return EverydayWell.rods()
        .then("log", "from", "0 ft", "to", "118 ft", "material", "clay")
        .then("log", "from", "118 ft", "to", depth, "material", sand)
        .then("log", "from", depth, "to", "142 ft", "material", below)
        .then("hole", "from", "0 ft", "to", "142 ft", "diameter", "7 7/8 in");
  }

  private static List<String> codes(JobInSteps job) {
    return job.findings("casing").stream().map(Finding::code).toList();
  }
}
