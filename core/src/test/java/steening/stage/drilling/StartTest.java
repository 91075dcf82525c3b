package steening.stage.drilling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.job.JobInSteps;
import steening.journal.Body;
import steening.language.Language;
import steening.language.Reader;
import steening.language.UnitSystem;
import steening.quantity.Unit;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.stage.EverydayWell;
import steening.stage.drilling.fluid.ShutInHead;
import steening.stage.drilling.start.LineClearance;

/** Before the first foot, and a well that flows. Own scenarios, arithmetic checked by hand. */
class StartTest {
  private static final Reader US = Reader.US_ENGLISH;
  private static final Reader METRIC_SPANISH = new Reader(Language.SPANISH, UnitSystem.METRIC);

  /** 29 CFR 1926.1408, Table A (seen), row by row; the rigs' rule by hand: 10 ft + 0.4 in × (kV − 50). */
  @ParameterizedTest
  @CsvSource({
    "12.5, 10, ", "50, 10, ", "69, 15, 10.633", "200, 15, 15", "230, 20, 16", "345, 20, 19.833", "500, 25, 25",
    "750, 35, 33.333", "765, 45, 33.833"
  })
  void theTableOfClearances(String kilovolts, double table, Double rig) {
    Outcome outcome = reckon(LineClearance.RECKONING, "kilovolts", kilovolts);
    assertThat(outcome.quantity("clearance").in(Unit.FOOT)).isCloseTo(table, within(1e-9));
    assertThat(outcome.answers().containsKey("rig-rule")).isEqualTo(rig != null);
    if (rig != null) assertThat(outcome.quantity("rig-rule").in(Unit.FOOT)).isCloseTo(rig, within(0.001));
    assertThat(reckon(LineClearance.RECKONING).quantity("clearance").in(Unit.FOOT)).isCloseTo(20, within(1e-9));
  }

  @Test
  void theMastStaysDownUntilTheLinesAreAnswered() {
    assertThat(asked(EverydayWell.planned())).anyMatch(e -> e.startsWith("walk round the rig before the mast goes up"))
        .anyMatch(e -> e.startsWith("water for the mud") && e.endsWith("1.0 mg/L"));
    JobInSteps answered = EverydayWell.planned().then("walk-round", "lines", "none")
        .then("make-up-water", "source", "public", "chlorine", "1.5 mg/L");
    assertThat(asked(answered)).isEmpty();
    assertThat(codes(answered)).isEmpty();
    assertThat(asked(EverydayWell.rods())).noneMatch(e -> e.startsWith("walk round"));
  }

  @ParameterizedTest
  @CsvSource({
    "18 ft, , true, Overhead line at 18.00 ft from the raised mast; 20.00 ft must be kept while",
    "18 ft, 12.5, false, ''",
    "14 ft, 69, true, Overhead line at 14.00 ft from the raised mast; 15.00 ft must be kept at",
    ", , true, 'Overhead lines were seen, and their distance is not written down; 20.00 ft must be kept.'"
  })
  void aLineNearTheMastStops(String distance, String kilovolts, boolean stops, String said) {
    Body body = Body.of("lines", "seen");
    if (distance != null) body = body.with("distance", distance);
    if (kilovolts != null) body = body.with("kilovolts", kilovolts);
    String[] texts = body.values().entrySet().stream().flatMap(e -> List.of(e.getKey(), e.getValue()).stream())
        .toArray(String[]::new);
    List<Finding> found = EverydayWell.planned().then("walk-round", texts).findings("drilling");
    assertThat(found.isEmpty()).isEqualTo(!stops);
    assertThat(found).allSatisfy(f -> {
      assertThat(f.weight()).isEqualTo(Weight.STOP);
      assertThat(f.text().shownTo(US)).startsWith(said);
      assertThat(f.text().shownTo(METRIC_SPANISH)).contains("hay que guardar");
      assertThat(f.next().orElseThrow().shownTo(US)).contains("mast stays down");
    });
  }

  /** COMAR 26.04.04.16 and South Carolina R.61-71, seen. */
  @ParameterizedTest
  @CsvSource({
    "public, 1.0 mg/L, ", "public, 0.5 mg/L, drilling.water-chlorine", "potable, 1.5 mg/L, drilling.water-chlorine",
    "potable, 3 mg/L, ", "surface, 5 mg/L, drilling.water-surface", "public, , drilling.water-unmeasured"
  })
  void waterForTheMud(String source, String chlorine, String code) {
    JobInSteps job = chlorine == null
        ? EverydayWell.planned().then("make-up-water", "source", source)
        : EverydayWell.planned().then("make-up-water", "source", source, "chlorine", chlorine);
    assertThat(codes(job)).isEqualTo(code == null ? List.of() : List.of(code));
    assertThat(codes(EverydayWell.planned()
        .then("make-up-water", "source", "public", "chlorine", "2 mg/L", "turbidity", "40 NTU")))
        .containsExactly("drilling.water-cloudy");
  }

  /** By hand: 142 ft × 2.530 gal/ft × 2 = 718.6 gal; 40 ft² × 2 ft = 80 ft³ = 598.4 gal. */
  @Test
  void aPitTooSmallForTheHole() {
    JobInSteps small = rig("pit-area", "40 ft2", "pit-depth", "2 ft");
    Finding finding = small.finding("drilling.pit-small").orElseThrow();
    assertThat(finding.text().shownTo(US))
        .startsWith("The mud pit holds 598.4 gal; the planned hole asks for 718.6 gal");
    assertThat(codes(rig("pit-area", "40 ft2", "pit-depth", "3 ft"))).containsExactly("drilling.up-hole-velocity");
  }

  /** Bit and sub measured once: 0.8 ft + 2.5 ft; a rod of 20 ft cannot have gone to 24 ft. */
  @Test
  void theFirstRodWithBitAndSub() {
    JobInSteps rig = rig("bit-length", "0.8 ft", "subs", "2.5 ft");
    assertThat(codes(rig.then("rod", "number", "1", "length", "20 ft", "depth", "23.3 ft")))
        .containsExactly("drilling.up-hole-velocity");
    assertThat(rig.then("rod", "number", "1", "length", "20 ft", "depth", "24 ft").finding("drilling.first-rod")
        .orElseThrow().text().shownTo(US))
        .isEqualTo("After the first rod the depth is entered as 24.00 ft; bit, sub and rod are 23.30 ft long.");
  }

  /** By hand: 4 psi × 2.308 = 9.23 ft, and the gauge 2 ft up. */
  @Test
  void aGaugeTellsTheHead() {
    Outcome head = reckon(ShutInHead.RECKONING, "shut-in", "4 psi", "gauge-height", "2 ft");
    assertThat(head.quantity("head").in(Unit.FOOT)).isCloseTo(11.23, within(0.02));
  }

  @Test
  void aFlowingWellIsSealedWithCement() {
    JobInSteps flows = EverydayWell.drilled()
        .then("flow", "rate", "30 gpm", "shut-in", "4 psi", "gauge-height", "2 ft");
    Finding flowing = flows.finding("drilling.flowing").orElseThrow();
    assertThat(flowing.weight()).isEqualTo(Weight.LOOK);
    assertThat(flowing.text().shownTo(US)).startsWith("The well flows 30.0 gpm with a head of 11.2");
    assertThat(flowing.text().shownTo(METRIC_SPANISH)).startsWith("El pozo fluye 1.89 L/s con una carga de 3.4");
    JobInSteps bentonite = flows.then("grout-mix", "material", "bentonite", "solids", "50 lb", "water", "24 gal");
    assertThat(bentonite.finding("seal.flowing").orElseThrow().weight()).isEqualTo(Weight.STOP);
    assertThat(flows.then("grout-mix", "material", "cement", "solids", "94 lb", "water", "5.2 gal")
        .finding("seal.flowing")).isEmpty();
    JobInSteps much = EverydayWell.drilled().then("flow", "rate", "80 gpm")
        .then("grout-mix", "material", "cement", "solids", "94 lb", "water", "5.2 gal");
    assertThat(much.finding("drilling.flowing").orElseThrow().weight()).isEqualTo(Weight.STOP);
    assertThat(much.finding("seal.flowing").orElseThrow().text().shownTo(US)).contains("70.0 gpm").contains("23.00 ft");
    assertThat(EverydayWell.drilled().then("mud", "weight", "9.9 lb/gal", "head", "12 ft")
        .then("grout-mix", "material", "bentonite", "solids", "50 lb", "water", "24 gal").finding("seal.flowing"))
        .isPresent();
  }

  private static JobInSteps rig(String... more) {
    return EverydayWell.planned().then(
        "drilling", "bit", "7 7/8 in", "rod", "2.875 in", "pump-rate", "110 gpm", more[0], more[1], more[2], more[3]);
  }

  private static List<String> asked(JobInSteps job) {
    return job.expectations("drilling").stream().map(e -> e.what().shownTo(US) + " " + e.figure().shownTo(US)).toList();
  }

  private static List<String> codes(JobInSteps job) {
    return job.findings("drilling").stream().map(Finding::code).toList();
  }

  private static Outcome reckon(Reckoning reckoning, String... texts) {
    return reckoning.of(Inputs.of(Body.of(texts)));
  }
}
