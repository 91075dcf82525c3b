package steening.stage.drilling;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
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
import steening.stage.drilling.log.LogEntries;

/** Own scenarios; the numbers in the sentences are checked by hand. */
class DrillingFindingsTest {
  private static final Reader US = Reader.US_ENGLISH;
  private static final Reader METRIC_SPANISH = new Reader(Language.SPANISH, UnitSystem.METRIC);

  @Test
  void slowMudIsANoteThatSaysWhatSmallRigsRelyOn() {
    Finding finding = EverydayWell.setUp().finding("drilling.up-hole-velocity").orElseThrow();
    assertThat(finding.weight()).isEqualTo(Weight.NOTE);
    assertThat(finding.text().shownTo(US)).startsWith("The mud rises at 50 ft/min; 100 ft/min is advised.")
        .contains("viscosity");
    assertThat(finding.text().shownTo(METRIC_SPANISH))
        .startsWith("El lodo sube a 15.3 m/min; se aconsejan 30.5 m/min.");
    assertThat(
        EverydayWell.planned().then("drilling", "bit", "7 7/8 in", "rod", "4.5 in", "pump-rate", "220 gpm")
            .findings("drilling")).isEmpty();
  }

  @Test
  void aHoleEnteredShallowerThanTheLogStops() {
    Finding finding = hole("124 ft").finding("drilling.hole-shallower-than-log").orElseThrow();
    assertThat(finding.weight()).isEqualTo(Weight.STOP);
    assertThat(finding.text().shownTo(US))
        .isEqualTo("The hole is entered as 124.00 ft deep, but the log goes to 142.00 ft.");
    assertThat(finding.entries()).isNotEmpty();
  }

  /** The hole was entered as it was drilled, and drilling went on: nothing is wrong until something is lowered. */
  @Test
  void aHoleThatIsStillBeingDrilledIsNoMistake() {
    JobInSteps on = EverydayWell.setUp()
        .then("rod", "number", "1", "length", "20 ft", "depth", "20 ft")
        .then("log", "from", "0 ft", "to", "20 ft", "material", "clay")
        .then("hole", "from", "0 ft", "to", "20 ft", "diameter", "7 7/8 in")
        .then("rod", "number", "2", "length", "20 ft", "depth", "40 ft")
        .then("log", "from", "20 ft", "to", "38 ft", "material", "coarse-sand");
    assertThat(codes(on)).containsExactly("drilling.up-hole-velocity");
    JobInSteps lowered = on.then("sump", "length", "2 ft");
    assertThat(lowered.finding("drilling.hole-shallower-than-log").orElseThrow().weight()).isEqualTo(Weight.STOP);
    assertThat(codes(lowered)).contains("drilling.rods-against-hole");
  }

  @Test
  void metresForFeetStop() {
    JobInSteps job = hole("142 m");
    Finding finding = job.finding("drilling.metres-for-feet").orElseThrow();
    assertThat(finding.weight()).isEqualTo(Weight.STOP);
    assertThat(finding.text().shownTo(US))
        .startsWith("The hole is entered as 465.88 ft, but 142.00 ft is known otherwise");
    assertThat(codes(job)).containsExactly("drilling.up-hole-velocity", "drilling.metres-for-feet");
    assertThat(hole("43.28 ft").finding("drilling.metres-for-feet")).isPresent();
  }

  /** 43.3 ft is logged so far of a hole that is as deep as planned: the ratio is near 3.28, and means nothing. */
  @Test
  void aRatioOf328IsNoMistakeWhereSomethingElseAgrees() {
    JobInSteps job = EverydayWell.setUp()
        .then("hole", "from", "0 ft", "to", "142 ft", "diameter", "7 7/8 in")
        .then("log", "from", "0 ft", "to", "43.3 ft", "material", "clay");
    assertThat(codes(job)).containsExactly("drilling.up-hole-velocity", "drilling.log-short");
  }

  @ParameterizedTest
  @CsvSource({"143.0 ft, false", "143.2 ft, true", "150 ft, true"})
  void aLogThatEndsAboveTheBottomIsLookedAt(String depth, boolean found) {
    assertThat(hole(depth).finding("drilling.log-short").isPresent()).isEqualTo(found);
  }

  @Test
  void gapsAndOverlapsOfTheLog() {
    JobInSteps job = EverydayWell.setUp()
        .then("log", "from", "2 ft", "to", "38 ft", "material", "clay")
        .then("log", "from", "36 ft", "to", "61 ft", "material", "clay")
        .then("log", "from", "65 ft", "to", "80 ft", "material", "coarse-sand")
        .then("log", "from", "80.05 ft", "to", "90 ft", "material", "clay");
    assertThat(job.findings("drilling")).filteredOn(f -> f.code().startsWith("drilling.log"))
        .extracting(f -> f.code() + " " + f.text().shownTo(US))
        .containsExactly(
            "drilling.log-gap Nothing is logged between 0.00 ft and 2.00 ft.",
            "drilling.log-overlap Two log entries share 36.00 ft to 38.00 ft.",
            "drilling.log-gap Nothing is logged between 61.00 ft and 65.00 ft.");
  }

  @Test
  void fromAndToTheWrongWayRound() {
    JobInSteps job = EverydayWell.setUp()
        .then("log", "from", "38 ft", "to", "3 ft", "material", "clay")
        .then("hole", "from", "20 ft", "to", "20 ft", "diameter", "7 7/8 in");
    assertThat(codes(job)).containsExactly("drilling.up-hole-velocity", "drilling.upside-down", "drilling.upside-down");
    assertThat(job.job().unread()).isEmpty();
  }

  @Test
  void aStretchOfHoleLeftOut() {
    JobInSteps job = EverydayWell.setUp()
        .then("hole", "from", "0 ft", "to", "60 ft", "diameter", "7 7/8 in")
        .then("hole", "from", "80 ft", "to", "142 ft", "diameter", "7 7/8 in");
    assertThat(job.finding("drilling.hole-gap").orElseThrow().text().shownTo(US))
        .isEqualTo("The hole's diameter between 60.00 ft and 80.00 ft is not known.");
    assertThat(job.stage("drilling").sheet(job.job().well()).lines()).isNotEmpty();
  }

  @Test
  void rodsMiscountedOrMismeasured() {
    JobInSteps job = EverydayWell.setUp()
        .then("rod", "number", "1", "length", "20 ft", "depth", "20 ft")
        .then("rod", "number", "3", "length", "20 ft", "depth", "60 ft");
    assertThat(codes(job)).containsExactly("drilling.up-hole-velocity", "drilling.rod-number", "drilling.rod-depth");
    Finding depth = job.finding("drilling.rod-depth").orElseThrow();
    assertThat(depth.text().shownTo(US))
        .isEqualTo("After rod 3 the depth is entered as 60.00 ft; 20.00 ft and a rod of 20.00 ft make 40.00 ft.");
    assertThat(depth.working()).isPresent();
  }

  /** The last rod may be half way down; the one before may not. */
  @Test
  void aRodHalfWayDown() {
    JobInSteps half = EverydayWell.setUp()
        .then("rod", "number", "1", "length", "20 ft", "depth", "20 ft")
        .then("rod", "number", "2", "length", "20 ft", "depth", "31 ft");
    assertThat(half.finding("drilling.rod-depth")).isEmpty();
    assertThat(half.then("rod", "number", "3", "length", "20 ft", "depth", "51 ft").finding("drilling.rod-depth"))
        .isPresent();
  }

  @Test
  void rodsAndHoleThatDisagree() {
    assertThat(hole("165 ft").finding("drilling.rods-against-hole").orElseThrow().text().shownTo(US))
        .isEqualTo("The rods went to 140.00 ft, the hole is entered as 165.00 ft.");
    assertThat(hole("124 ft").finding("drilling.rods-against-hole")).isPresent();
    assertThat(hole("142 ft").finding("drilling.rods-against-hole")).isEmpty();
  }

  @Test
  void heavyAndSandyMudAsLastRead() {
    JobInSteps dirty = EverydayWell.setUp().then("mud", "weight", "9.4 lb/gal", "sand", "4 %");
    assertThat(codes(dirty)).containsExactly("drilling.up-hole-velocity", "drilling.mud-heavy", "drilling.mud-sandy");
    assertThat(dirty.finding("drilling.mud-heavy").orElseThrow().text().shownTo(US))
        .isEqualTo("The mud weighs 9.40 lb/gal; up to 9.00 lb/gal is usual.");
    assertThat(dirty.finding("drilling.mud-sandy").orElseThrow().text().shownTo(METRIC_SPANISH))
        .startsWith("El lodo lleva 4.0 % de arena");
    assertThat(codes(dirty.then("mud", "weight", "9.0 lb/gal", "sand", "2 %")))
        .containsExactly("drilling.up-hole-velocity");
    assertThat(codes(dirty.then("mud", "weight", "8.8 lb/gal")))
        .containsExactly("drilling.up-hole-velocity", "drilling.mud-sandy");
  }

  /**
   * By hand: 6 ft and a rod of 20 ft are 8.794 ft³; over a pit of 50 ft² 2.11 in. The pit fell 14 in: 50 × 11.89/12 ft³
   * = 370.6 gal.
   */
  @Test
  void aPitThatFallsFurtherThanTheHoleExplains() {
    JobInSteps job = EverydayWell.planned()
        .then("drilling", "bit", "7 7/8 in", "rod", "2.875 in", "pump-rate", "110 gpm", "pit-area", "50 ft2")
        .then("log", "from", "0 ft", "to", "57 ft", "material", "clay")
        .then("mud", "weight", "8.8 lb/gal", "pit-drop", "4 in")
        .then("log", "from", "57 ft", "to", "63 ft", "material", "gravel")
        .then("mud", "weight", "8.8 lb/gal", "pit-drop", "14 in");
    List<Finding> lost = job.findings("drilling").stream().filter(f -> f.code().equals("drilling.lost-circulation"))
        .toList();
    assertThat(lost).hasSize(1);
    assertThat(lost.get(0).weight()).isEqualTo(Weight.LOOK);
    assertThat(lost.get(0).text().shownTo(US)).startsWith("The mud pit fell 14 in;")
        .contains("explain 2.111 in at most");
    assertThat(lost.get(0).working().orElseThrow().figure("lost").shownTo(US)).isEqualTo("370.6 gal");
  }

  @Test
  void withoutTheAreaOfThePitTheLeastPitIsTaken() {
    JobInSteps job = EverydayWell.setUp()
        .then("log", "from", "0 ft", "to", "57 ft", "material", "clay")
        .then("mud", "weight", "8.8 lb/gal", "pit-drop", "20 in")
        .then("log", "from", "57 ft", "to", "63 ft", "material", "gravel")
        .then("mud", "weight", "8.8 lb/gal", "pit-drop", "14 in");
    Finding lost = job.finding("drilling.lost-circulation").orElseThrow();
    // by hand: least pit 2 × 83 ft / 4 ft = 41.5 times the hole's area; 26 ft over that is 0.6265 ft
    assertThat(lost.text().shownTo(US)).contains("fell 14 in").contains("7.518 in at most");
    assertThat(lost.working().orElseThrow().answers()).doesNotContainKey("lost");
  }

  /** What an expert sees in these slips before they are kept. */
  @ParameterizedTest
  @CsvSource(
      {"hole, diameter, 7.875 ft, 7.875 in", "plan, hole-diameter, 7.875 ft, 7.875 in",
          "drilling, bit, 7.875 ft, 7.875 in"})
  void aSlipOfUnitsIsAskedAbout(String kind, String name, String typed, String meant) {
    Field field = Stages.kind(kind).orElseThrow().field(name).orElseThrow();
    assertThat(field.read(typed, US, false))
        .isInstanceOfSatisfying(Reading.Asked.class, asked -> assertThat(asked.meanings()).contains(meant));
  }

  @Test
  void aMaterialThatIsNoneIsRefusedWithTheList() {
    Map<Field, Reading> readings = LogEntries.LOG.read(Map.of("from", "0", "to", "3", "material", "moon dust"), US);
    assertThat(readings.get(LogEntries.MATERIAL)).isInstanceOfSatisfying(
        Reading.Refused.class, refused -> assertThat(refused.sentence().shownTo(US)).contains("sandy-clay"));
  }

  private static JobInSteps hole(String depth) {
    return EverydayWell.logged().then("hole", "from", "0 ft", "to", depth, "diameter", "7 7/8 in");
  }

  private static List<String> codes(JobInSteps job) {
    return job.findings("drilling").stream().map(Finding::code).toList();
  }
}
