package steening.stage.seal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import steening.finding.Finding;
import steening.job.JobInSteps;
import steening.journal.Body;
import steening.journal.Entry;
import steening.journal.Moment;
import steening.language.Language;
import steening.language.Reader;
import steening.language.UnitSystem;
import steening.quantity.Unit;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;

class ChipsFallTest {
  /** Remembered: about 1 ft/s, ± 40 %, so that 200 ft take over three minutes. */
  @Test
  void fallsAboutAFootASecond() {
    Outcome outcome = reckon("height", "200 ft", "bags", "2");
    assertThat(outcome.quantity("velocity").in(Unit.FOOT_PER_SECOND)).isCloseTo(1.0, within(0.1));
    assertThat(outcome.quantity("wait").in(Unit.MINUTE)).isBetween(200 / 60.0, 200 / 60.0 / 0.6);
    assertThat(outcome.quantity("pouring").in(Unit.MINUTE)).isEqualTo(10);
    assertThat(outcome.answers()).doesNotContainKey("deepest");
  }

  /** By hand: √(4 × 9.807 × 0.009525 / (3 × 1.2)) = 0.322 m/s, were water not thick at all. */
  @Test
  void hardlyFeelsHowThickTheWaterIs() {
    assertThat(reckon("height", "35 m", "bags", "1").quantity("velocity").in(Unit.METRE_PER_SECOND))
        .isCloseTo(0.322, within(0.005));
  }

  @Test
  void warnsWhereTheySwellOnTheWay() {
    Outcome outcome = reckon("height", "400 ft", "bags", "4", "swells", "5 min");
    // by hand: 0.6 × 1.05 ft/s × 300 s
    assertThat(outcome.quantity("deepest").in(Unit.FOOT)).isCloseTo(189, within(3.0));
    assertThat(outcome.remarks()).hasSize(1);
    assertThat(reckon("height", "100 ft", "bags", "4", "swells", "5 min").remarks()).isEmpty();
  }

  @Test
  void saysHowLongToWaitBeforeTheTape() {
    JobInSteps poured = EverydaySealTest.PACKED.then("chips", "bags", "2");
    Moment last = poured.entries().get(poured.entries().size() - 1).happenedAt();
    // by hand: 115 ft / 1.05 ft/s / 0.6 = 182.5 s, and 4 min at most
    assertThat(poured.stage("seal").clocks(poured.job().well())).hasSize(1).allSatisfy(clock -> {
      assertThat(clock.until().minutesSince(last)).isEqualTo(4);
      assertThat(clock.what().shownTo(Reader.US_ENGLISH)).startsWith("the last chips have landed");
      assertThat(clock.what().shownTo(new Reader(Language.SPANISH, UnitSystem.METRIC))).startsWith("los últimos");
    });
    assertThat(EverydaySealTest.CHIPPED.stage("seal").clocks(EverydaySealTest.CHIPPED.job().well())).isEmpty();
  }

  /** Own scenario: eight bags ten minutes after two, where three minutes a bag make 24. */
  @Test
  void findsChipsPouredTooFast() {
    JobInSteps fast = EverydaySealTest.PACKED.then("chips", "bags", "2").then("chips", "bags", "8");
    Finding finding = fast.finding("seal.chips-fast").orElseThrow();
    assertThat(finding.text().shownTo(Reader.US_ENGLISH))
        .isEqualTo("8 bags of chips went in within 10.0 min; not less than 24.0 min is advised.");
    assertThat(EverydaySealTest.PACKED.then("chips", "bags", "2").then("chips", "bags", "3").finding("seal.chips-fast"))
        .isEmpty();
  }

  @Test
  void findsATapeThatWasTooEarly() {
    assertThat(tapedAfter(1).finding("seal.chips-tape-early").orElseThrow().text().shownTo(Reader.US_ENGLISH))
        .startsWith("The tape went down 1.0 min after the last bag");
    assertThat(tapedAfter(0).finding("seal.chips-tape-early")).isEmpty();
    assertThat(tapedAfter(4).finding("seal.chips-tape-early")).isEmpty();
  }

  private static JobInSteps tapedAfter(int minutes) {
    JobInSteps poured = EverydaySealTest.PACKED.then("chips", "bags", "2");
    List<Entry> entries = new ArrayList<>(poured.entries());
    Moment at = entries.get(entries.size() - 1).happenedAt().plusMinutes(minutes);
    Body body = Body.of("reading", "109.6 ft", "from", "ground");
    entries.add(new Entry("tape", "w1", "d1", 99, "crew", at, at, "chips-tape", 1, body, List.of()));
    return new JobInSteps(entries);
  }

  private static Outcome reckon(String... namesAndTexts) {
    return ChipsFall.RECKONING.of(Inputs.of(Body.of(namesAndTexts)));
  }
}
