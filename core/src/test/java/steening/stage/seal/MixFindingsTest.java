package steening.stage.seal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.job.JobInSteps;
import steening.language.Language;
import steening.language.Reader;
import steening.language.UnitSystem;
import steening.quantity.Unit;

class MixFindingsTest {
  private static final JobInSteps CHIPPED = EverydaySealTest.CHIPPED;
  private static final JobInSteps BENTONITE =
      CHIPPED.then("grout-mix", "material", "bentonite", "solids", "50 lb", "water", "24 gal");
  private static final JobInSteps CEMENT =
      CHIPPED.then("grout-mix", "material", "cement", "solids", "94 lb", "water", "5.2 gal");

  /** Own scenario: 300 gal by the meter for eleven bags; the 20 % of solids are South Carolina's, R.61-71 (seen). */
  @Test
  void theMeterTellsOfThinGrout() {
    JobInSteps job = BENTONITE.then("grout-batch", "bags", "11", "water", "300 gal", "returns", "yes");
    assertThat(EverydaySealTest.codes(job)).containsExactly("seal.solids");
    Finding solids = job.finding("seal.solids").orElseThrow();
    assertThat(solids.weight()).isEqualTo(Weight.LOOK);
    // by hand: 550 / (550 + 300 × 8.34) = 18.0 %; 3052 / (300 + 550 / 21.684) = 9.38 lb/gal
    assertThat(solids.text().shownTo(Reader.US_ENGLISH))
        .isEqualTo("11 bags with 300.0 gal of water: 18.0 % solids, 9.38 lb/gal; 20.0 % solids are asked for.");
    assertThat(solids.text().shownTo(new Reader(Language.SPANISH, UnitSystem.METRIC)))
        .isEqualTo("11 sacos con 1135.6 L de agua: 18.0 % de sólidos, 1124 kg/m³; se pide 20.0 % de sólidos.");
  }

  @Test
  void aThinRecipeIsSeenBeforeItIsMixed() {
    JobInSteps job = CHIPPED.then("grout-mix", "material", "bentonite", "solids", "50 lb", "water", "30 gal");
    assertThat(EverydaySealTest.codes(job)).containsExactly("seal.solids");
    // printed as 20 %, and meant: 50 lb to 24 gal are 19.99 %
    assertThat(EverydaySealTest.codes(BENTONITE)).isEmpty();
  }

  @Test
  void theRecipeIsHeldAgainstTheMeter() {
    JobInSteps rich = CHIPPED.then("grout-mix", "material", "bentonite", "solids", "50 lb", "water", "14 gal");
    assertThat(EverydaySealTest.codes(rich.then("grout-batch", "bags", "4", "water", "58 gal"))).isEmpty();
    assertThat(EverydaySealTest.codes(rich.then("grout-batch", "bags", "4", "water", "64 gal")))
        .containsExactly("seal.water");
  }

  @Test
  void theBalanceTellsOfWater() {
    JobInSteps job = BENTONITE.then("grout-batch", "bags", "4", "water", "96 gal", "weight", "9.3 lb/gal");
    Finding light = job.finding("seal.light").orElseThrow();
    assertThat(light.text().shownTo(Reader.US_ENGLISH))
        .isEqualTo("The balance says 9.30 lb/gal; this mix should weigh 9.51 lb/gal.");
    // by hand: (9.5098 − 9.3) / (9.3 − 8.34) × 105.2 gal = 23.0 gal
    assertThat(light.cause().orElseThrow().shownTo(Reader.US_ENGLISH))
        .isEqualTo("That is about 23.0 gal of water too much in 4 bags.");
    assertThat(EverydaySealTest.codes(
        BENTONITE.then("grout-batch", "bags", "4", "water", "96 gal", "weight", "9.45 lb/gal"))).isEmpty();
    JobInSteps water =
        BENTONITE.then("grout-batch", "bags", "4", "water", "96 gal", "weight", "8.3 lb/gal", "sure", "weight");
    assertThat(water.finding("seal.light").orElseThrow().cause().orElseThrow().shownTo(Reader.US_ENGLISH))
        .isEqualTo("Grout cannot weigh less than water.");
  }

  /** Published (seen): a 4-in casing full of water floats in neat cement, and cement warms it. */
  @Test
  void cementLiftsAndWarmsTheCasing() {
    assertThat(EverydaySealTest.codes(CEMENT)).containsExactly("seal.fill-first", "seal.uplift", "seal.heat");
    assertThat(CEMENT.finding("seal.heat").orElseThrow().weight()).isEqualTo(Weight.NOTE);
    Finding uplift = CEMENT.finding("seal.uplift").orElseThrow();
    assertThat(uplift.weight()).isEqualTo(Weight.LOOK);
    double pounds = uplift.working().orElseThrow().quantity("closed").in(Unit.POUND) / 109.6;
    // by hand, 4.072 in inside: 0.0408 × (4.5² × 15.65 − 4.072² × 8.34 − (4.5² − 4.072²) × 1.4 × 8.34) = 5.5 lb/ft
    assertThat(pounds).isCloseTo(-5.5, within(0.05));
    assertThat(uplift.next().orElseThrow().shownTo(Reader.US_ENGLISH)).startsWith("Hold it down");
  }

  @Test
  void cementThatHasSetIsNotSpokenOfAgain() {
    JobInSteps done = CEMENT.then("grout-batch", "bags", "22", "water", "114 gal", "returns", "yes");
    assertThat(EverydaySealTest.codes(done)).contains("seal.uplift");
    JobInSteps next = done.then("grout-tape", "reading", "0 ft", "from", "ground", "after", "next-day");
    assertThat(EverydaySealTest.codes(next)).isEmpty();
  }

  @Test
  void aDeepColumnOfCementIsPlacedInLifts() {
    JobInSteps deep = JobInSteps.nothing()
        .then("plan", "hole-diameter", "7.875 in", "hole-depth", "400 ft", "casing-outside", "4.5 in", "casing-wall",
            "0.214 in",
            "stick-up", "1.5 ft", "screen-top", "380 ft", "screen-bottom", "390 ft", "sump", "2 ft", "slot", "20 slot",
            "pack-top", "370 ft", "grout-top", "0 ft", "rate", "12 gpm")
        .then("grout-mix", "material", "cement", "solids", "94 lb", "water", "5.2 gal");
    Finding collapse = deep.finding("seal.collapse").orElseThrow();
    assertThat(collapse.weight()).isEqualTo(Weight.STOP);
    // by hand: 0.05195 × (15.65 − 8.34) × 370 = 140.5 psi
    assertThat(collapse.text().shownTo(Reader.US_ENGLISH)).contains("140.5 psi");
    assertThat(collapse.next().orElseThrow().shownTo(Reader.US_ENGLISH)).startsWith("Place it in lifts of at most ")
        .contains(": 3 of them");
  }

  @Test
  void theSealIsNotBegunOnAPackThatNobodySounded() {
    JobInSteps job = EverydaySealTest.PLANNED.then("pack-bags", "bags", "3").then("chips", "bags", "1");
    assertThat(EverydaySealTest.codes(job)).containsExactly("seal.pack-not-sounded");
  }

  @Test
  void chipsBridgeToo() {
    JobInSteps job = EverydaySealTest.PACKED.then("chips", "bags", "2")
        .then("chips-tape", "reading", "106 ft", "from", "ground");
    assertThat(EverydaySealTest.codes(job)).containsExactly("seal.chips-bridged");
  }

  @Test
  void oddReadingsAreKeptAside() {
    JobInSteps job = BENTONITE.then("grout-batch", "bags", "4", "water", "96 gal");
    assertThat(EverydaySealTest.codes(job.then("grout-tape", "reading", "50 ft", "from", "top-of-casing")))
        .containsExactly("seal.datum-unknown");
    assertThat(EverydaySealTest.codes(job.then("grout-tape", "reading", "-2 ft", "from", "ground")))
        .containsExactly("seal.above-ground");
  }

  @Test
  void nothingIsThrownHoweverLittleIsKnown() {
    JobInSteps bare = JobInSteps.nothing()
        .then("grout-tape", "reading", "3 ft", "from", "top-of-casing")
        .then("grout-batch", "bags", "3", "water", "72 gal")
        .then("chips", "bags", "1").then("chips-tape", "reading", "100 ft", "from", "ground")
        .then("grout-tape", "reading", "3 ft", "from", "ground", "after", "next-day");
    assertThat(EverydaySealTest.codes(bare)).isEqualTo(List.of("seal.datum-unknown", "seal.pack-not-sounded"));
    assertThat(bare.expectations("seal")).isEmpty();
    assertThat(bare.stage("seal").sheet(bare.job().well()).lines()).isNotEmpty();
    assertThat(bare.stage("seal").loads(bare.job().well())).isEmpty();
  }
}
