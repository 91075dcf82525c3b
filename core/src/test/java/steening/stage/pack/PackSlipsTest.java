package steening.stage.pack;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import steening.field.Field;
import steening.field.Reading;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.job.JobInSteps;
import steening.job.Stages;
import steening.language.Language;
import steening.language.Reader;
import steening.language.UnitSystem;
import steening.well.Fill;

/** Slips of hand and eye: what is asked in the form, and what the tape gives away later. */
class PackSlipsTest {
  private static final JobInSteps DRILLED = EverydayPackTest.DRILLED;

  /** Own scenario: 113 typed for 13. */
  @Test
  void aBagCountThatWouldStandAboveGroundIsAsked() {
    assertThat(read("pack-bags", "bags", "113").get("bags")).isInstanceOf(Reading.Asked.class);
    Finding count = DRILLED.then("pack-bags", "bags", "113", "sure", "bags").finding("pack.count").orElseThrow();
    assertThat(count.weight()).isEqualTo(Weight.STOP);
    // by hand: 137 − (56.5 − 1.691) / 0.2278 = −103.6
    assertThat(count.text().shownTo(Reader.US_ENGLISH))
        .isEqualTo("113 bags would fill the annulus to 103.60 ft above the ground.");
    assertThat(count.cause().orElseThrow().shownTo(Reader.US_ENGLISH))
        .isEqualTo("A slip of the finger: 13 instead of 113?");
  }

  @Test
  void theSlipIsFoundInTheLotThatHasIt() {
    JobInSteps job = DRILLED.then("pack-bags", "bags", "3").then("pack-tape", "reading", "137.6 ft", "from", "ground")
        .then("pack-bags", "bags", "131");
    Finding count = job.finding("pack.count").orElseThrow();
    assertThat(count.entries()).containsExactly("pack-bags-5");
    assertThat(count.cause().orElseThrow().shownTo(Reader.US_ENGLISH))
        .startsWith("A slip of the finger: 11 instead of 131?");
  }

  /** Own scenario: 50 kg typed for 50 lb makes 13.4 planned bags 29.5. */
  @Test
  void kilogramsForPoundsAreAskedAndSeen() {
    assertThat(read("pack-bags", "bags", "14", "weight", "50 kg").get("weight")).isInstanceOfSatisfying(
        Reading.Asked.class, asked -> assertThat(asked.meanings()).contains("50 lb"));
    Finding size = DRILLED.then("pack-bags", "bags", "3", "weight", "50 kg", "sure", "weight").finding("pack.bag-size")
        .orElseThrow();
    assertThat(size.weight()).isEqualTo(Weight.LOOK);
    assertThat(size.text().shownTo(Reader.US_ENGLISH)).isEqualTo(
        "3 bags of 1.10 ft³ each: that is 6.6 of the planned bags of 0.50 ft³. The plan takes 13.4.");
    assertThat(size.cause().orElseThrow().shownTo(Reader.US_ENGLISH)).isEqualTo("Kilograms for pounds?");
    assertThat(DRILLED.then("pack-bags", "bags", "3", "weight", "50 lb").findings("pack")).isEmpty();
  }

  @Test
  void theVolumeOnTheBagComesBeforeItsWeight() {
    JobInSteps job = DRILLED.then("pack-bags", "bags", "2", "weight", "50 lb", "bag-volume", "0.48 ft3");
    assertThat(PackSheetTest.line(job, "volume in")).isEqualTo("0.96 ft³");
  }

  @Test
  void aTapeFromACasingOfUnknownHeightIsKeptAside() {
    JobInSteps job = DRILLED.then("pack-bags", "bags", "3")
        .then("pack-tape", "reading", "139.1 ft", "from", "top-of-casing");
    assertThat(codes(job)).containsExactly("pack.datum-unknown");
    assertThat(job.job().well().get(Fill.PACK).tags()).isEmpty();
  }

  @Test
  void oddReadingsAreSeen() {
    JobInSteps three = DRILLED.then("pack-bags", "bags", "3")
        .then("pack-tape", "reading", "137.6 ft", "from", "ground");
    JobInSteps six = three.then("pack-bags", "bags", "3");
    assertThat(codes(six.then("pack-tape", "reading", "-1.2 ft", "from", "ground")))
        .containsExactly("pack.above-ground");
    assertThat(codes(six.then("pack-tape", "reading", "144 ft", "from", "ground"))).containsExactly("pack.below-hole");
    assertThat(codes(six.then("pack-tape", "reading", "137.5 ft", "from", "ground"))).containsExactly("pack.repeated");
    assertThat(codes(six.then("pack-tape", "reading", "139.2 ft", "from", "ground"))).containsExactly("pack.deeper");
    // sounded again after the same bags, it may go deeper: sand settles, bridges break
    assertThat(codes(three.then("pack-tape", "reading", "138.0 ft", "from", "ground"))).isEmpty();
  }

  @Test
  void nothingIsThrownHoweverLittleIsKnown() {
    JobInSteps bare = JobInSteps.nothing().then("pack-bags", "bags", "3")
        .then("pack-tape", "reading", "90 ft", "from", "ground")
        .then("pack-bags", "bags", "5").then("pack-tape", "reading", "80 ft", "from", "top-of-casing");
    assertThat(codes(bare)).containsExactly("pack.datum-unknown", "pack.untagged");
    assertThat(bare.expectations("pack")).isEmpty();
    assertThat(bare.stage("pack").sheet(bare.job().well()).lines()).isNotEmpty();
    JobInSteps tight = JobInSteps.nothing()
        .then("plan", "hole-diameter", "4.5 in", "hole-depth", "90 ft", "casing-outside", "4.5 in",
        "casing-wall", "0.2 in", "stick-up", "0 ft", "screen-top", "70 ft", "screen-bottom", "80 ft", "sump", "10 ft",
        "slot",
        "20 slot", "pack-top", "60 ft", "grout-top", "0 ft", "rate", "5 gpm")
        .then("pack-bags", "bags", "3").then("pack-tape", "reading", "80 ft", "from", "ground");
    assertThat(codes(tight)).containsExactly("pack.short");
    assertThat(tight.expectations("pack")).isEmpty();
  }

  @Test
  void badInputIsAnsweredWithASentence() {
    assertThat(read("pack-bags", "bags", "none").get("bags")).isInstanceOfSatisfying(Reading.Refused.class, r ->
        assertThat(r.sentence().shownTo(Reader.US_ENGLISH)).isEqualTo("bags: \"none\" is not understood. Example: 3."));
    assertThat(read("pack-tape", "reading", "", "from", "ground").get("reading"))
        .isInstanceOfSatisfying(Reading.Refused.class, r ->
        assertThat(r.sentence().shownTo(new Reader(Language.SPANISH, UnitSystem.METRIC)))
            .isEqualTo("Falta lectura de la sonda. Ejemplo: 91.1 ft."));
    assertThat(read("pack-tape", "reading", "7000 ft", "from", "ground").get("reading"))
        .isNotInstanceOf(Reading.Taken.class);
  }

  private static Map<String, Reading> read(String kind, String... typed) {
    Map<String, String> texts = new TreeMap<>();
    for (int i = 0; i < typed.length; i += 2) texts.put(typed[i], typed[i + 1]);
    Map<String, Reading> readings = new TreeMap<>();
    for (Map.Entry<Field, Reading> one : Stages.kind(kind).orElseThrow().read(texts, Reader.US_ENGLISH).entrySet()) {
      readings.put(one.getKey().name(), one.getValue());
    }
    return readings;
  }

  private static List<String> codes(JobInSteps job) {
    return job.findings("pack").stream().map(Finding::code).toList();
  }
}
