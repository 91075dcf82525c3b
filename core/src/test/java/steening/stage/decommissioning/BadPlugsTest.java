package steening.stage.decommissioning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import steening.field.Hands;
import steening.field.Reading;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.job.Job;
import steening.job.JobInSteps;
import steening.journal.Entry;
import steening.journal.Journal;
import steening.language.Reader;

/** What goes wrong with plugs, and what is typed wrong about them: a sentence each. Invented. */
class BadPlugsTest {
  private static final Reader US = Reader.US_ENGLISH;

  private static JobInSteps plug(String from, String to, String material, int bags, String... more) {
    return LostHole.plug(LostHole.decided(), from, to, material, bags, more);
  }

  private static JobInSteps tape(JobInSteps job, String reading) {
    return job.then("plug-tape", "hole", "1", "reading", reading, "from", "ground");
  }

  private static JobInSteps closing(String... more) {
    JobInSteps job = LostHole.givenUp();
    String[] body = new String[6 + more.length];
    System.arraycopy(new String[] {"hole", "1", "why", "given-up", "casing", "left"}, 0, body, 0, 6);
    System.arraycopy(more, 0, body, 6, more.length);
    return job.then("decommissioning", body);
  }

  static Stream<Map.Entry<String, JobInSteps>> mistakes() {
    return Map.ofEntries(
        Map.entry("upside-down", plug("80 ft", "10 ft", "chips", 5)),
        Map.entry("overlap", LostHole.plug(plug("40 ft", "88 ft", "chips", 24), "10 ft", "60 ft", "neat-cement", 14)),
        Map.entry("plug-too-deep", plug("3 ft", "98 ft", "chips", 47)),
        Map.entry("too-many-bags", plug("40 ft", "88 ft", "chips", 80)),
        Map.entry("too-few-bags", plug("3 ft", "88 ft", "chips", 12)),
        Map.entry("plug-low", tape(plug("40 ft", "88 ft", "chips", 24), "62 ft")),
        Map.entry("bridged", tape(plug("40 ft", "88 ft", "chips", 15), "30 ft")),
        Map.entry("tape-above-ground", tape(plug("40 ft", "88 ft", "chips", 24), "-2 ft")),
        Map.entry("datum-unknown", plug("40 ft", "88 ft", "chips", 24)
            .then("plug-tape", "hole", "1", "reading", "39 ft", "from", "top-of-casing")),
        Map.entry("not-a-seal", plug("3 ft", "88 ft", "gravel", 58)),
        Map.entry("poured-fast", plug("40 ft", "88 ft", "chips", 24, "minutes", "24 min")),
        Map.entry("no-tremie", plug("40 ft", "88 ft", "neat-cement", 14, "by", "poured")),
        Map.entry("wet-cement", plug("40 ft", "88 ft", "neat-cement", 14, "water", "112 gal")),
        Map.entry("thin-slurry", plug("40 ft", "88 ft", "bentonite-slurry", 5, "water", "150 gal")),
        Map.entry("still-open", plug("40 ft", "88 ft", "chips", 24)),
        Map.entry("no-such-hole", LostHole.givenUp().then(
            "plug", "hole", "5", "from", "3 ft", "to", "88 ft", "material", "chips", "bags", "42")),
        Map.entry("cut-high", closing("cut", "1 ft")),
        Map.entry("blocked", closing("obstruction", "66 ft")),
        Map.entry("chlorine", closing("chlorine", "10 mg/L"))).entrySet().stream();
  }

  @ParameterizedTest
  @MethodSource("mistakes")
  void eachHasASentence(Map.Entry<String, JobInSteps> mistake) {
    List<Finding> found = mistake.getValue().findings("decommissioning").stream()
        .filter(f -> f.code().equals("decommissioning." + mistake.getKey())).toList();
    assertThat(found).as(mistake.getKey()).hasSize(1);
    assertThat(found.get(0).text().shownTo(US)).doesNotContain("{");
    assertThat(found.get(0).next()).isPresent();
  }

  /** 15 bags fill 30.6 ft, to 57.4; the tape at 30 leaves 27 ft of void. */
  @Test
  void aBridgeStopsThePouring() {
    Finding bridge = tape(plug("40 ft", "88 ft", "chips", 15), "30 ft").finding("decommissioning.bridged")
        .orElseThrow();
    assertThat(bridge.weight()).isEqualTo(Weight.STOP);
    assertThat(bridge.text().shownTo(US))
        .isEqualTo("In hole 1, after 15 bags, the tape finds the plug at 30.00 ft; 57.40 ft was expected.");
  }

  /** A plug above ground is not taken at all. */
  @Test
  void aDepthAboveGroundIsRefused() {
    assertThat(PlugVolume.FROM.read("-4 ft", Hands.US, true)).isInstanceOf(Reading.Refused.class);
  }

  @Test
  void sandBetweenTwoSealsIsANoteAndMudIsNot() {
    assertThat(weightOf("sand")).isEqualTo(Weight.NOTE);
    assertThat(weightOf("mud")).isEqualTo(Weight.LOOK);
  }

  private static Weight weightOf(String fill) {
    JobInSteps job = LostHole.plug(plug("70 ft", "88 ft", "chips", 9), "20 ft", "70 ft", fill, 34);
    return LostHole.plug(job, "3 ft", "20 ft", "chips", 9).finding("decommissioning.not-a-seal").orElseThrow().weight();
  }

  /** Lots on one bottom are one plug, with one expected tape. */
  @Test
  void lotsOfOnePlugAddUp() {
    JobInSteps job = LostHole.plug(plug("60 ft", "88 ft", "chips", 10), "60 ft", "88 ft", "chips", 4);
    assertThat(job.expectations("decommissioning")).hasSize(1);
    assertThat(job.expectations("decommissioning").get(0).what().shownTo(US)).contains("after 14 bags");
  }

  /** Whatever comes first: nothing throws, and every answer is a sentence. */
  @Test
  void entriesInAnyOrderAreFolded() {
    List<Entry> entries = LostHole.plugged().entries();
    for (int skip = 0; skip < entries.size(); skip++) {
      List<Entry> fewer = new ArrayList<>(entries);
      fewer.remove(skip);
      Job job = Job.of("w1", Journal.of(fewer));
      assertThat(job.findings()).allSatisfy(f -> assertThat(f.text().shownTo(US)).doesNotContain("{0}"));
      assertThat(job.present()).isNotNull();
    }
  }
}
