package steening.stage.seal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.job.JobInSteps;
import steening.journal.Body;
import steening.language.Language;
import steening.language.Reader;
import steening.language.UnitSystem;
import steening.quantity.Unit;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.stage.seal.placing.HoseVolume;
import steening.stage.seal.placing.TremieFit;

/**
 * Own scenario, arithmetic checked by hand: 4.5-in casing with bells of 5.25 in in a 7 7/8-in hole, grout from 136 ft.
 * The rules are Minn. 4725.3050, COMAR 26.04.04.20 and NR 812.20, seen.
 */
class TremieTest {
  private static final JobInSteps MIXED =
      OverrunTest.CHIPPED.then("grout-ready", "inside", "water", "held", "chained");

  @Test
  void theBellsLeaveAnInchAndAThird() {
    Outcome fit = fit("hole", "7.875 in", "casing", "4.5 in", "bell", "5.25 in", "outside", "1.66 in");
    assertThat(fit.quantity("gap").in(Unit.INCH)).isCloseTo(1.3125, within(1e-9));
    assertThat(fit.quantity("widest").in(Unit.INCH)).isCloseTo(2.625, within(1e-9));
    assertThat(fit.quantity("left").in(Unit.INCH)).isCloseTo(-0.3475, within(1e-9));
    assertThat(fit.quantity("left-widest").in(Unit.INCH)).isCloseTo(0.965, within(1e-9));
    assertThat(fit.remarks()).isEmpty();
    // not measured: 7/6 of 4.5 in, and said to be from memory
    Outcome taken = fit("hole", "7.875 in", "casing", "4.5 in", "outside", "1.66 in");
    assertThat(taken.quantity("gap").in(Unit.INCH)).isCloseTo(1.3125, within(1e-9));
    assertThat(taken.remarks().get(0).shownTo(Reader.US_ENGLISH)).contains("from memory");
  }

  @Test
  void aFitThatCannotBeIsRefused() {
    assertThatThrownBy(() -> fit("hole", "4 in", "casing", "4.5 in", "outside", "1.66 in"))
        .isInstanceOf(NotReckonable.class);
    assertThatThrownBy(() -> fit("hole", "8 in", "casing", "4.5 in", "bell", "4 in", "outside", "1.66 in"))
        .isInstanceOf(NotReckonable.class);
  }

  @Test
  void hoseAndTremieHoldWhatTheyAreWide() {
    // by hand: 0.0408 × 1.38² × 60 = 4.66 gal, 0.0408 × 1² × 33 = 1.35 gal
    Outcome held = HoseVolume.RECKONING.of(inputs(
        "inside", "1.38 in", "length", "60 ft", "hose-inside", "1 in", "hose-length", "33 ft"));
    assertThat(held.quantity("tremie").in(Unit.GALLON)).isCloseTo(4.662, within(0.002));
    assertThat(held.quantity("hose").in(Unit.GALLON)).isCloseTo(1.346, within(0.001));
    assertThat(held.quantity("held").in(Unit.GALLON)).isCloseTo(6.01, within(0.005));
    assertThatThrownBy(() -> HoseVolume.RECKONING.of(inputs(
        "inside", "1.38 in", "length", "60 ft", "hose-inside", "1 in"))).isInstanceOf(NotReckonable.class);
  }

  @Test
  void aTremieThatDoesNotPassTheBellsIsSaid() {
    Finding tight = tremie(MIXED, "136 ft", "140 ft").finding("seal.tremie-fit").orElseThrow();
    assertThat(tight.weight()).isEqualTo(Weight.LOOK);
    assertThat(tight.text().shownTo(Reader.US_ENGLISH)).isEqualTo("1.31 in at the bells; tremie 1.66 in.");
    assertThat(tight.text().shownTo(new Reader(Language.SPANISH, UnitSystem.METRIC)))
        .isEqualTo("33.3 mm en las campanas; tremie de 42.2 mm.");
    assertThat(tight.cause().orElseThrow().shownTo(Reader.US_ENGLISH)).contains("2.63 in at the widest");
    Finding never = tremie(MIXED, "136 ft", "140 ft", "outside", "2.875 in").finding("seal.tremie-fit").orElseThrow();
    assertThat(never.weight()).isEqualTo(Weight.STOP);
    assertThat(codes(slim(MIXED, "136 ft", "140 ft"))).isEmpty();
  }

  @Test
  void wrongMeasuresAreAskedAbout() {
    assertThat(codes(slim(MIXED, "136 ft", "120 ft"))).containsExactly("seal.tremie-length");
    assertThat(codes(tremie(MIXED, "136 ft", "140 ft", "outside", "1.05 in", "inside", "1.315 in")))
        .containsExactly("seal.tremie-size");
  }

  @Test
  void groutingStartsNearTheBottom() {
    assertThat(codes(slim(MIXED, "127 ft", "140 ft"))).isEmpty();
    Finding high = slim(MIXED, "110 ft", "140 ft").finding("seal.tremie-high").orElseThrow();
    assertThat(high.text().shownTo(Reader.US_ENGLISH))
        .isEqualTo("The tremie ends at 110.00 ft, 26.00 ft above where the grout starts, 136.00 ft.");
    assertThat(codes(slim(MIXED, "138 ft", "140 ft"))).containsExactly("seal.tremie-deep");
  }

  @Test
  void theEndStaysInTheGrout() {
    JobInSteps four = OverrunTest.batch(slim(MIXED, "135 ft", "140 ft"), 4);
    assertThat(codes(four)).isEmpty();
    // by hand: (4 × 26.306 − 60 × 0.0408 × 0.824²) / 1.704 = 60.8 ft of rise: the top is at 75.2 ft
    assertThat(codes(slim(four, "80 ft", "90 ft"))).isEmpty();
    Finding out = slim(four, "55 ft", "60 ft").finding("seal.tremie-out").orElseThrow();
    assertThat(out.text().shownTo(Reader.US_ENGLISH))
        .isEqualTo("The end of the tremie hangs at 55.00 ft, above the grout, which stands at 75.23 ft or lower.");
    assertThat(out.next().orElseThrow().shownTo(Reader.US_ENGLISH)).contains("until air and water are out");
  }

  @Test
  void afterAStopItIsFilledBeforeItGoesIn() {
    JobInSteps out = slim(OverrunTest.batch(slim(MIXED, "135 ft", "140 ft"), 4), "55 ft", "60 ft");
    assertThat(codes(slim(out, "85 ft", "90 ft"))).containsExactly("seal.tremie-again");
    assertThat(codes(tremie(out, "85 ft", "90 ft",
        "outside", "1.05 in", "inside", "0.824 in", "refilled", "yes"))).isEmpty();
  }

  @Test
  void tellsAfterHowManyBagsItReturns() {
    // by hand: 231.7 gal and 140 × 0.0408 × 1.38² = 10.9 gal, over 26.306 = 9.2 bags
    assertThat(tremie(MIXED, "135 ft", "140 ft").expectations("seal"))
        .extracting(e -> e.what().shownTo(Reader.US_ENGLISH) + ": " + e.figure().shownTo(Reader.US_ENGLISH))
        .contains("grout back at the surface, hose and tremie full, after bag: 10");
  }

  @Test
  void theGallonsAreTakenApart() {
    JobInSteps job = OverrunTest.batch(tremie(MIXED, "135 ft", "140 ft"), 4);
    assertThat(SealSheetTest.line(job, "grout in hose and tremie")).isEqualTo("10.9 gal");
    assertThat(SealSheetTest.line(job, "grout in the annulus")).isEqualTo("94.3 gal");
    // by hand: 136 − 94.3 / 1.704, give or take 2 √((0.04 × 55.4)² + 0.5²)
    assertThat(job.expectations("seal").get(0).figure().shownTo(Reader.US_ENGLISH)).isEqualTo("80.63 ft");
    assertThat(job.expectations("seal").get(0).band().orElseThrow().quantity().in(Unit.FOOT))
        .isCloseTo(4.54, within(0.02));
  }

  private static List<String> codes(JobInSteps job) {
    return EverydaySealTest.codes(job);
  }

  /** One that passes the bells. */
  private static JobInSteps slim(JobInSteps job, String end, String length) {
    return tremie(job, end, length, "outside", "1.05 in", "inside", "0.824 in");
  }

  private static JobInSteps tremie(JobInSteps job, String end, String length, String... more) {
    String[] all = new String[4 + Math.max(more.length, 4)];
    String[] rest = more.length == 0 ? new String[] {"outside", "1.66 in", "inside", "1.38 in"} : more;
    System.arraycopy(new String[] {"end", end, "length", length}, 0, all, 0, 4);
    if (rest.length == 2) rest = new String[] {rest[0], rest[1], "inside", "1.38 in"};
    System.arraycopy(rest, 0, all, 4, rest.length);
    return job.then("tremie", all);
  }

  private static Outcome fit(String... namesAndTexts) {
    return TremieFit.RECKONING.of(inputs(namesAndTexts));
  }

  private static Inputs inputs(String... namesAndTexts) {
    return Inputs.of(Body.of(namesAndTexts));
  }
}
