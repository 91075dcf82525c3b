package steening.stage.pack;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import steening.finding.Expectation;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.job.JobInSteps;
import steening.language.Reader;
import steening.stage.Progress;

/** Own scenario, arithmetic checked by hand: the everyday well, and what can go wrong with its pack. */
class EverydayPackTest {
  static final JobInSteps PLANNED = JobInSteps.nothing()
      .then("plan", "hole-diameter", "7.875 in", "hole-depth", "142 ft", "casing-outside", "4.5 in",
          "casing-wall", "0.214 in", "stick-up", "1.5 ft", "screen-top", "125 ft", "screen-bottom", "135 ft",
          "sump", "2 ft", "slot", "20 slot",
          "pack-top", "115 ft", "chips-top", "110 ft", "grout-top", "0 ft", "rate", "12 gpm");
  static final JobInSteps DRILLED = PLANNED.then("hole", "from", "0 ft", "to", "142 ft", "diameter", "7.875 in");

  @Test
  void loadsSeventeenBags() {
    assertThat(PLANNED.stage("pack").loads(PLANNED.job().well()))
        .extracting(l -> l.what().shownTo(Reader.US_ENGLISH) + ": " + l.howMany().shownTo(Reader.US_ENGLISH))
        .containsExactly(
            "pack sand, bags of 0.50 ft³: 17 bags",
            "the same by what holes here take, nine times in ten enough: 18 bags");
    assertThat(PackSheetTest.line(PLANNED, "planned")).isEqualTo("6.70 ft³, 14 bags");
    assertThat(PLANNED.stage("pack").progress(PLANNED.job().well())).isEqualTo(Progress.NOT_BEGUN);
  }

  @Test
  void everyReadingOfAGoodPackIsSilent() {
    JobInSteps job = DRILLED;
    String[] bags = {"3", "3", "3", "3", "2"};
    String[] tapes = {"137.6 ft", "131.4 ft", "124.8 ft", "118.2 ft", "114.0 ft"};
    for (int i = 0; i < bags.length; i++) {
      job = job.then("pack-bags", "bags", bags[i]);
      assertThat(job.findings("pack")).isEmpty();
      assertThat(job.stage("pack").nextKind(job.job().well())).isEqualTo("pack-tape");
      job = job.then("pack-tape", "reading", tapes[i], "from", "ground");
      assertThat(job.findings("pack")).as(tapes[i]).isEmpty();
    }
    assertThat(job.stage("pack").progress(job.job().well())).isEqualTo(Progress.DONE);
    assertThat(job.expectations("pack")).isEmpty();
  }

  @Test
  void expectsTheTapeBeforeItIsLetDown() {
    JobInSteps job = DRILLED;
    // by hand: 13.41 bags × 1.14 = 15.3; 13.41 × (1.14 + 1.28 × 0.12) = 17.3, so 18
    assertThat(told(job.expectations("pack"))).containsExactly(
        "tape after bag 3: 137.57 ft",
        "bags of pack still needed: 15.3 in the mean, nine times in ten no more than: 18");
    // by hand: 137 − (3.5 − 1.691) / 0.2278 = 129.06, 137 − (5 − 1.691) / 0.2278 = 122.47; seven bags less than before
    assertThat(told(job.then("pack-bags", "bags", "7").expectations("pack")))
        .containsExactly(
            "tape after bag 7: 129.06 ft",
            "tape after bag 10: 122.47 ft",
            "bags of pack still needed: 8.3 in the mean, nine times in ten no more than: 11");
  }

  @Test
  void asksForTheTapeAfterMoreThanThreeBags() {
    JobInSteps four = DRILLED.then("pack-bags", "bags", "3").then("pack-bags", "bags", "1");
    assertThat(four.findings("pack")).singleElement().satisfies(f -> {
      assertThat(f.code()).isEqualTo("pack.untagged");
      assertThat(f.weight()).isEqualTo(Weight.LOOK);
      assertThat(f.text().shownTo(Reader.US_ENGLISH)).startsWith("4 bags went in since the tape was last read");
    });
  }

  @Test
  void seesAWashout() {
    JobInSteps job = DRILLED.then("pack-bags", "bags", "6").then("pack-tape", "reading", "131.3 ft", "from", "ground")
        .then("pack-bags", "bags", "3").then("pack-tape", "reading", "127.8 ft", "from", "ground");
    Finding washout = job.finding("pack.washout").orElseThrow();
    assertThat(washout.weight()).isEqualTo(Weight.LOOK);
    // by hand: √(20.25 + 1.5 / 3.5 / 0.005454) = 9.94 in, ratio 1.5 / (3.5 × 0.2278) = 1.88
    assertThat(washout.text().shownTo(Reader.US_ENGLISH)).isEqualTo(
        "Between 127.80 ft and 131.30 ft the hole took sand for 9.94 in across; the bit was 7 7/8 in."
            + " That is 1.88 times what was reckoned.");
    assertThat(job.findings("pack")).hasSize(1);
    JobInSteps lost = job.then("circulation-lost", "from", "128 ft", "to", "131 ft");
    assertThat(lost.finding("pack.washout").orElseThrow().cause().orElseThrow().shownTo(Reader.US_ENGLISH))
        .isEqualTo("Mud was lost there while drilling, at 128.00 ft to 131.00 ft: a washout is likely.");
  }

  @Test
  void takesTheSoundedBottomForTheBottom() {
    JobInSteps caved = DRILLED.then("pack-tape", "reading", "139 ft", "from", "ground").then("pack-bags", "bags", "3");
    assertThat(caved.findings("pack")).isEmpty();
    // 2 ft of full bore are gone: by hand 137 − (1.5 − 0.6765) / 0.2278
    assertThat(told(caved.expectations("pack")).get(0)).isEqualTo("tape after bag 3: 133.38 ft");
  }

  @Test
  void watchesTheHeightAboveTheScreen() {
    assertThat(codes(sealed("121.9 ft"))).isEmpty();
    assertThat(codes(sealed("123.5 ft"))).containsExactly("pack.low");
    assertThat(codes(sealed("125.8 ft"))).containsExactly("pack.short");
    assertThat(sealed("125.8 ft").finding("pack.short").orElseThrow().weight()).isEqualTo(Weight.STOP);
    assertThat(codes(standing("111.5 ft", "15"))).containsExactly("pack.high");
    // one bag above the planned height is only a whole bag
    assertThat(codes(standing("113.9 ft", "14"))).isEmpty();
  }

  @Test
  void isShortWhenThePlannedBagsAreInAndTheScreenIsStillBare() {
    JobInSteps job = DRILLED.then("pack-bags", "bags", "14").then("pack-tape", "reading", "126 ft", "from", "ground");
    assertThat(job.finding("pack.short")).isPresent();
  }

  private static JobInSteps standing(String tape, String bags) {
    return DRILLED.then("pack-bags", "bags", bags).then("pack-tape", "reading", tape, "from", "ground");
  }

  private static JobInSteps sealed(String tape) {
    String bags = tape.startsWith("121") ? "10" : tape.startsWith("123") ? "9" : "8";
    return standing(tape, bags).then("chips", "bags", "2");
  }

  private static List<String> codes(JobInSteps job) {
    return job.findings("pack").stream().map(Finding::code).toList();
  }

  private static List<String> told(List<Expectation> expectations) {
    return expectations.stream()
        .map(e -> e.what().shownTo(Reader.US_ENGLISH) + ": " + e.figure().shownTo(Reader.US_ENGLISH)).toList();
  }
}
