package steening.stage.drilling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
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
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.stage.EverydayWell;
import steening.stage.drilling.trouble.CirculationLoss;
import steening.stage.drilling.trouble.FishOrRedrill;
import steening.stage.drilling.trouble.FishTop;
import steening.stage.drilling.trouble.HoleFill;

/** Own scenarios, arithmetic checked by hand: mud lost, walls that cave, rods left in the hole. */
class TroubleTest {
  private static final Reader US = Reader.US_ENGLISH;
  private static final Reader METRIC_SPANISH = new Reader(Language.SPANISH, UnitSystem.METRIC);

  /** By hand: 40 ft² × (14 − 0.609) in = 44.64 ft³ = 333.9 gal, in 7.26 min 46 gpm, of 88 gpm 52 %. */
  @Test
  void aFallOfThePitIsALossByTheMinute() {
    Outcome loss = reckon(CirculationLoss.RECKONING, "pit-area", "40 ft2", "pit-drop", "14 in", "minutes", "7.26 min",
        "pump-rate", "88 gpm", "bit", "7.875 in", "drilled", "6 ft");
    assertThat(loss.quantity("fall").in(Unit.INCH)).isCloseTo(0.609, within(0.001));
    assertThat(loss.quantity("lost").in(Unit.GALLON)).isCloseTo(333.9, within(0.1));
    assertThat(loss.quantity("loss-rate").in(Unit.GALLON_PER_MINUTE)).isCloseTo(46, within(0.02));
    assertThat(loss.quantity("share").in(Unit.PERCENT)).isCloseTo(52.3, within(0.05));
    assertThatThrownBy(() -> reckon(CirculationLoss.RECKONING, "pit-area", "40 ft2", "pit-drop", "0.5 in", "minutes",
        "7 min", "pump-rate", "88 gpm", "bit", "7.875 in", "drilled", "6 ft"))
        .isInstanceOf(NotReckonable.class).hasMessageContaining("nothing was lost");
  }

  @Test
  void lostMudIsSaidInBothNumbersWithWhatToTry() {
    JobInSteps rig =
        EverydayWell.planned().then("drilling", "bit", "7 7/8 in", "rod", "2.875 in", "pump-rate", "88 gpm");
    JobInSteps lost = drilledTo(rig, 63)
        .then("circulation-lost", "from", "57 ft", "to", "63 ft", "rate", "46 gpm");
    Finding finding = lost.finding("drilling.circulation-lost").orElseThrow();
    assertThat(finding.weight()).isEqualTo(Weight.LOOK);
    assertThat(finding.text().shownTo(US))
        .isEqualTo("Mud lost at 57.00 ft to 63.00 ft: 46.0 gpm, which is 52.3 % of the pump rate.");
    assertThat(finding.text().shownTo(METRIC_SPANISH))
        .isEqualTo("Lodo perdido de 17.37 m a 19.20 m: 2.90 L/s, o sea 52.3 % del gasto de la bomba.");
    assertThat(finding.next().orElseThrow().shownTo(US)).contains("slow the pump").contains("thicken");
    Finding back = lost.then("circulation-lost", "from", "57 ft", "to", "63 ft", "share", "50 %", "tried", "plugging",
        "came-back", "yes").job().findings().stream().filter(f -> f.code().equals("drilling.circulation-lost"))
        .reduce((a, b) -> b).orElseThrow();
    assertThat(back.weight()).isEqualTo(Weight.NOTE);
    assertThat(back.text().shownTo(US)).contains("44.0 gpm, which is 50.0 %");
    assertThat(back.next().orElseThrow().shownTo(US)).contains("pack and grout to take more");
  }

  @ParameterizedTest
  @CsvSource({
    "nothing, slow the pump", "slower, Thicken the mud", "thicker, none that rots", "plugging, let it stand",
    "waiting, cement or casing", "cemented, drill elsewhere"
  })
  void eachCureIsFollowedByTheNext(String tried, String next) {
    Finding finding = EverydayWell.rods()
        .then("circulation-lost", "from", "57 ft", "to", "63 ft", "tried", tried, "came-back", "no")
        .finding("drilling.circulation-lost").orElseThrow();
    assertThat(finding.text().shownTo(US)).contains("is not written down");
    assertThat(finding.next().orElseThrow().shownTo(US)).contains(next);
  }

  @Test
  void aLossBelowTheHoleIsAMistake() {
    JobInSteps job = EverydayWell.rods().then("circulation-lost", "from", "570 ft", "to", "630 ft");
    assertThat(job.finding("drilling.loss-below-hole")).isPresent();
    assertThat(job.finding("drilling.circulation-lost")).isEmpty();
    assertThat(EverydayWell.rods().then("circulation-lost", "from", "63 ft", "to", "57 ft")
        .finding("drilling.upside-down")).isPresent();
  }

  /** By hand: 4 ft × 0.3382 = 1.353 ft³; 102 × 0.3382 × 1.3 = 44.85 ft³, of which 60 are 1.34 times. */
  @Test
  void fillIsReckoned() {
    Outcome fill = reckon(HoleFill.RECKONING, "depth", "102 ft", "tagged", "98 ft", "diameter", "7.875 in", "shovelled",
        "60 ft3");
    assertThat(fill.quantity("fill").in(Unit.FOOT)).isCloseTo(4, within(1e-9));
    assertThat(fill.quantity("caved").in(Unit.CUBIC_FOOT)).isCloseTo(1.353, within(0.001));
    assertThat(fill.quantity("cuttings").in(Unit.CUBIC_FOOT)).isCloseTo(44.85, within(0.01));
    assertThat(fill.quantity("ratio").coherent()).isCloseTo(1.338, within(0.001));
    assertThatThrownBy(
        () -> reckon(HoleFill.RECKONING, "depth", "98 ft", "tagged", "102 ft", "diameter", "7.875 in"))
        .isInstanceOf(NotReckonable.class);
  }

  @Test
  void fillOnAConnectionGrows() {
    JobInSteps at102 = drilledTo(EverydayWell.setUp(), 102);
    assertThat(codes(at102.then("fill", "tagged", "101.7 ft"))).doesNotContain("drilling.fill");
    JobInSteps filled = at102.then("fill", "tagged", "101 ft").then("fill", "tagged", "98 ft", "shovelled", "60 ft3");
    Finding fill = filled.finding("drilling.fill").orElseThrow();
    assertThat(fill.text().shownTo(US)).isEqualTo("4.00 ft of fill: tagged at 98.00 ft with the hole at 102.00 ft.");
    assertThat(fill.cause().orElseThrow().shownTo(US)).contains("it grows: 1.00 ft the time before");
    assertThat(fill.next().orElseThrow().shownTo(US)).contains("before tripping");
    assertThat(fill.weight()).isEqualTo(Weight.LOOK);
    assertThat(filled.finding("drilling.cuttings-excess")).isPresent();
    JobInSteps on = filled.then("rod", "number", "7", "length", "20 ft", "depth", "122 ft");
    assertThat(on.finding("drilling.fill").orElseThrow().weight()).isEqualTo(Weight.NOTE);
    assertThat(filled.then("fill", "tagged", "102 ft").finding("drilling.fill")).isEmpty();
    assertThat(filled.then("sump", "length", "2 ft").finding("drilling.fill")).isEmpty();
    assertThat(filled.then("fill", "tagged", "130 ft").finding("drilling.tag-below-hole")).isPresent();
  }

  /** The scenario of the brief: fish 72.2 ft, hole 113 ft, top expected at 40.8 ft. */
  @Test
  void theTopOfTheFish() {
    Outcome top = reckon(FishTop.RECKONING, "depth", "113 ft", "lengths", "20 20 20 12.2 ft", "felt-at", "30 ft");
    assertThat(top.quantity("fish").in(Unit.FOOT)).isCloseTo(72.2, within(1e-6));
    assertThat(top.quantity("top").in(Unit.FOOT)).isCloseTo(40.8, within(1e-6));
    assertThat(top.quantity("lower-end").in(Unit.FOOT)).isCloseTo(102.2, within(1e-6));
    assertThat(top.quantity("above-bottom").in(Unit.FOOT)).isCloseTo(10.8, within(1e-6));
    assertThatThrownBy(() -> reckon(FishTop.RECKONING, "depth", "60 ft", "lengths", "72.2 ft"))
        .isInstanceOf(NotReckonable.class);
  }

  /** By hand: (250 + 0.02 × 3000) / (400 + 1500 + 300) = 14.09 %; 2/(5+3) = 25 %; 2/0.1409 − 5 = 9.19 h. */
  @ParameterizedTest
  @CsvSource({"3 h, 25, go on fishing", "9 h, 14.286, go on fishing", "10 h, 13.333, stop and drill again"})
  void fishingPaysUpToAPoint(String failed, double chance, String advice) {
    Outcome outcome = reckon(FishOrRedrill.RECKONING, "hour-cost", "250", "cave-risk", "2 %", "hole-value", "3000",
        "fish-value", "400", "redrill", "1500", "sealing", "300", "failed", failed);
    assertThat(outcome.quantity("pays").in(Unit.PERCENT)).isCloseTo(14.09, within(0.01));
    assertThat(outcome.quantity("chance").in(Unit.PERCENT)).isCloseTo(chance, within(0.001));
    assertThat(outcome.quantity("stop-after").in(Scale.HOURS.us())).isCloseTo(9.19, within(0.01));
    assertThat(outcome.words().get("advice").shownTo(US)).isEqualTo(advice);
  }

  @Test
  void toolsLostStopUntilTheyAreOut() {
    JobInSteps lost = drilledTo(EverydayWell.setUp(), 113)
        .then("tools-lost", "lengths", "20 20 20 12.2 ft", "felt-at", "30 ft", "rods-out", "5");
    Finding fish = lost.finding("drilling.fish").orElseThrow();
    assertThat(fish.weight()).isEqualTo(Weight.STOP);
    assertThat(fish.text().shownTo(US)).isEqualTo("Fish of 72.20 ft in a hole of 113.00 ft: its top is expected at"
        + " 40.80 ft.");
    assertThat(fish.text().shownTo(METRIC_SPANISH))
        .isEqualTo("Quedaron 22.01 m en un barreno de 34.44 m: el tope se espera a 12.44 m.");
    assertThat(lost.finding("drilling.fish-felt").orElseThrow().cause().orElseThrow().shownTo(US)).contains("10.80 ft");
    assertThat(lost.finding("drilling.string-count").orElseThrow().text().shownTo(US))
        .startsWith("6 rods went down and 5 came out, so that 20.00 ft should be left; 72.20 ft is entered.");
    assertThat(lost.finding("drilling.fish-or-redrill")).isEmpty();
    JobInSteps costed = lost.then("fishing-costs", "hour-cost", "250", "cave-risk", "2 %", "hole-value", "3000",
        "fish-value", "400", "redrill", "1500", "sealing", "300").then("fishing", "hours", "3 h", "caught", "no");
    assertThat(costed.finding("drilling.fish-or-redrill").orElseThrow().text().shownTo(US))
        .isEqualTo("After 3.0 h without success the next hour has a chance of 25.0 %; it pays from 14.1 % on.");
    assertThat(costed.finding("drilling.fish-or-redrill").orElseThrow().next().orElseThrow().shownTo(US))
        .isEqualTo("Go on fishing, until 9.2 h in all.");
    assertThat(costed.then("fishing", "hours", "8 h", "caught", "no").finding("drilling.fish-or-redrill").orElseThrow()
        .next().orElseThrow().shownTo(US)).startsWith("Stop fishing and drill again");
    assertThat(codes(costed.then("fishing", "hours", "1 h", "caught", "yes"))).noneMatch(c -> c.startsWith("fish"))
        .doesNotContain("drilling.fish");
  }

  /** Whatever comes first, the well is folded. */
  @Test
  void troubleBeforeAnythingElse() {
    JobInSteps job = JobInSteps.nothing().then("fishing", "hours", "1 h", "caught", "yes")
        .then("fill", "tagged", "12 ft").then("tools-lost", "lengths", "20 ft", "rods-out", "3")
        .then("circulation-lost", "from", "5 ft", "to", "9 ft", "share", "100 %");
    assertThat(codes(job)).contains("drilling.fish", "drilling.circulation-lost", "drilling.tag-below-hole");
    assertThat(job.stage("drilling").sheet(job.job().well()).tables()).hasSize(2);
  }

  /** Rods of 20 ft, the last of them part of the way. */
  private static JobInSteps drilledTo(JobInSteps job, int depth) {
    JobInSteps more = job;
    for (int rod = 1; 20 * (rod - 1) < depth; rod++) {
      more = more.then("rod", "number", "" + rod, "length", "20 ft", "depth", Math.min(20 * rod, depth) + " ft");
    }
    return more;
  }

  private static List<String> codes(JobInSteps job) {
    return job.findings("drilling").stream().map(Finding::code).toList();
  }

  private static Outcome reckon(Reckoning reckoning, String... texts) {
    return reckoning.of(Inputs.of(Body.of(texts)));
  }
}
