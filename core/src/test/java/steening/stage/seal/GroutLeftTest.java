package steening.stage.seal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import steening.finding.Expectation;
import steening.finding.Finding;
import steening.job.JobInSteps;
import steening.language.Language;
import steening.language.Reader;
import steening.language.UnitSystem;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;

/** Own scenario, the washout that takes 60 % more grout; arithmetic checked by hand. */
class GroutLeftTest {
  private static final JobInSteps TAGGED = OverrunTest.TAGGED;

  /**
   * 283.4 gal over 105 ft: ratio 1.585, y = 0.2000; c = 0.32 × 0.3623 = 0.116, v = 0.1886117 (0.06722/105 + 2
   * (0.15/105)²) = 0.000122; w = 0.002078/0.002200 = 0.9447; q = 0.0545 + w 0.1455 = 0.1920, R = 1.556.
   */
  @Test
  void weighsWhatTheGroutFoundAgainstTheUsual() {
    Outcome left = GroutLeft.RECKONING.of(Inputs.none()
        .with(GroutLeft.HOLE, "7.875 in").with(GroutLeft.CASING, "4.5 in").with(GroutLeft.BOTTOM, "136 ft")
        .with(GroutLeft.BAGS, "11").with(GroutLeft.IN_HOSE, "6 gal").with(GroutLeft.FOUND, "31 ft")
        .with(GroutLeft.TO, "0 ft"));
    assertThat(left.quantity("ratio").coherent()).isCloseTo(1.556, within(0.003));
    // 52.82 gal as drilled in bags of 26.31: 2.007, times 1.556 is 3.12
    assertThat(left.quantity("as-drilled").coherent()).isCloseTo(2.007, within(0.002));
    assertThat(left.quantity("mean").coherent()).isCloseTo(3.13, within(0.02));
    assertThat(left.quantity("bags").coherent()).isEqualTo(4);
    assertThat(left.figure("water").shownTo(Reader.US_ENGLISH)).isEqualTo("96.0 gal");
  }

  /** Pack that took 1.30 over 30 ft: half of what it says of the ground is believed of the ground above. */
  @Test
  void carriesThePackIntoTheGroundAbove() {
    Inputs inputs = Inputs.none()
        .with(GroutLeft.HOLE, "7.875 in").with(GroutLeft.CASING, "4.5 in").with(GroutLeft.BOTTOM, "110 ft")
        .with(GroutLeft.BAGS, "1").with(GroutLeft.FOUND, "96 ft").with(GroutLeft.TO, "0 ft");
    Outcome alone = GroutLeft.RECKONING.of(inputs);
    Outcome carried = GroutLeft.RECKONING.of(
        inputs.with(GroutLeft.PACK_RATIO, "1.30").with(GroutLeft.PACK_STRETCH, "30 ft"));
    assertThat(carried.quantity("ratio").coherent()).isGreaterThan(alone.quantity("ratio").coherent());
    double p = 0.054513;
    double a = 0.0020784;
    double c = 0.32 * 0.22;
    double v = 0.1886117 * (c * c * 5 / 30 + 2 * 0.005 * 0.005);
    double w = a / (a + v);
    double q = p + w * (Math.log10(1.30) - p);
    assertThat(carried.term("ratio").quantity().coherent()).isLessThan(1.30);
    assertThat(carried.working(Reader.US_ENGLISH).lines())
        .filteredOn(l -> l.symbol().equals("R′")).extracting(l -> Double.parseDouble(l.value()))
        .first().satisfies(r -> assertThat(r).isCloseTo(Math.pow(10, p + 0.5 * (q - p)), within(0.0005)));
  }

  @Test
  void saysHowManyMoreAndWhetherTheTruckHasThem() {
    Expectation left = TAGGED.expectations("seal").get(0);
    assertThat(left.what().shownTo(Reader.US_ENGLISH)).startsWith("bags of grout still needed: 3.1 in the mean");
    assertThat(left.figure().shownTo(Reader.US_ENGLISH)).isEqualTo("4");
    Finding counted = TAGGED.then("on-truck", "grout", "0").finding("seal.truck").orElseThrow();
    assertThat(counted.text().shownTo(Reader.US_ENGLISH)).isEqualTo(
        "Bags of grout still needed: 3.1; nine times in ten no more than 4 bags."
            + " On the truck by the last count: 0 bags; short 4.");
    assertThat(counted.next().orElseThrow().shownTo(new Reader(Language.SPANISH, UnitSystem.METRIC)))
        .startsWith("En orden: mande por los sacos, y 363.4 L de agua");
    assertThat(TAGGED.then("on-truck", "grout", "4").finding("seal.truck")).isEmpty();
  }

  /** Counted before the grout is begun, a truck that cannot reach is said at once; the plan's load is not doubted. */
  @Test
  void saysAtTheCountThatTheTruckIsShort() {
    assertThat(OverrunTest.CHIPPED.finding("seal.truck")).isEmpty();
    assertThat(OverrunTest.CHIPPED.then("on-truck", "grout", "8").finding("seal.truck")).isPresent();
    assertThat(OverrunTest.CHIPPED.then("on-truck", "grout", "14").finding("seal.truck")).isEmpty();
    JobInSteps used = OverrunTest.batch(OverrunTest.CHIPPED.then("on-truck", "grout", "14"), 3);
    assertThat(used.finding("seal.truck")).isEmpty();
  }

  @Test
  void chipsAreCountedToo() {
    JobInSteps packed = JobInSteps.nothing()
        .then("plan", "hole-diameter", "7.875 in", "hole-depth", "142 ft", "casing-outside", "4.5 in",
            "casing-wall", "0.214 in", "stick-up", "1.5 ft", "screen-top", "125 ft", "screen-bottom", "135 ft",
            "sump", "2 ft", "slot", "20 slot", "pack-top", "115 ft", "chips-top", "110 ft", "grout-top", "0 ft",
            "rate", "10 gpm")
        .then("pack-bags", "bags", "14").then("pack-tape", "reading", "115 ft", "from", "ground");
    Finding finding = packed.then("on-truck", "chips", "1").finding("seal.chips-truck").orElseThrow();
    assertThat(finding.text().shownTo(Reader.US_ENGLISH))
        .isEqualTo("The chips still take 2 bags as drilled; on the truck by the last count: 1 bag.");
    assertThat(packed.then("on-truck", "chips", "2").finding("seal.chips-truck")).isEmpty();
  }
}
