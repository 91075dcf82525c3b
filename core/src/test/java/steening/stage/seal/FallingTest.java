package steening.stage.seal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

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

/** Own scenario, arithmetic checked by hand: grout from 136 ft, sounded at 31 ft, pump off; entries ten minutes apart. */
class FallingTest {
  private static final JobInSteps AT_31 = OverrunTest.TAGGED;

  @Test
  void aFallOfNineFeetAsksWhereItGoes() {
    JobInSteps job = AT_31.then("grout-tape", "reading", "40 ft", "from", "ground", "in-hose", "6 gal");
    Finding falling = job.finding("seal.falling").orElseThrow();
    assertThat(falling.weight()).isEqualTo(Weight.STOP);
    assertThat(falling.text().shownTo(Reader.US_ENGLISH))
        .isEqualTo("With the pump off the top fell 9.00 ft in 10.0 min, from 31.00 ft to 40.00 ft: where is it going?");
    assertThat(falling.text().shownTo(new Reader(Language.SPANISH, UnitSystem.METRIC))).isEqualTo(
        "Con la bomba parada el tope bajó 2.74 m en 10.0 min, de 9.45 m a 12.19 m: ¿a dónde se va?");
    // 9 / 105 of the column in a sixth of an hour
    assertThat(falling.working().orElseThrow().quantity("hourly").in(Unit.PERCENT)).isCloseTo(51.4, within(0.1));
  }

  @Test
  void twoTenthsInAQuarterOfAnHourAreNoLoss() {
    Outcome fall = fall("bottom", "136 ft", "before", "31 ft", "after", "31.2 ft", "minutes", "15 min");
    assertThat(fall.quantity("hourly").in(Unit.PERCENT)).isCloseTo(0.76, within(0.01));
    assertThat(GroutFall.isLoss(fall)).isFalse();
    JobInSteps job = AT_31.then("grout-tape", "reading", "31.2 ft", "from", "ground", "in-hose", "6 gal");
    assertThat(EverydaySealTest.codes(job)).isEqualTo(EverydaySealTest.codes(AT_31));
    assertThat(SealSheetTest.line(job, "fall with the pump off"))
        .isEqualTo("0.20 ft in 10.0 min, 1.1 % of the column in an hour: no loss");
  }

  /** Both typed in the cab at one time; the entry says that an hour lay between. */
  @Test
  void anHourIsTakenAtItsWord() {
    JobInSteps job =
        AT_31.then("grout-tape", "reading", "36 ft", "from", "ground", "in-hose", "6 gal", "after", "after-an-hour");
    assertThat(EverydaySealTest.codes(job)).doesNotContain("seal.falling");
    JobInSteps more =
        AT_31.then("grout-tape", "reading", "36.5 ft", "from", "ground", "in-hose", "6 gal", "after", "after-an-hour");
    assertThat(EverydaySealTest.codes(more)).contains("seal.falling");
    assertThat(more.finding("seal.falling").orElseThrow().text().shownTo(Reader.US_ENGLISH)).contains("in 60.0 min");
  }

  @Test
  void fromTheSurfaceWhereItCameBack() {
    JobInSteps job = EverydaySealTest.GROUTED.then("grout-tape", "reading", "6 ft", "from", "ground");
    assertThat(EverydaySealTest.codes(job)).containsExactly("seal.falling");
  }

  @Test
  void groutThatDoesNotLiftTheTopIsLost() {
    // by hand: 0.0408 × 7.875² × 10 = 25.3 gal; two bags are 52.6
    JobInSteps more = OverrunTest.batch(AT_31, 2).then("grout-tape", "reading", "30.8 ft", "from", "ground");
    Finding lost = more.finding("seal.no-rise").orElseThrow();
    assertThat(lost.weight()).isEqualTo(Weight.STOP);
    assertThat(lost.expected().orElseThrow().quantity().in(Unit.GALLON)).isCloseTo(25.3, within(0.05));
    assertThat(lost.text().shownTo(Reader.US_ENGLISH)).endsWith("and the top is at 30.80 ft: it has not risen.");
    JobInSteps rising = OverrunTest.batch(AT_31, 2).then("grout-tape", "reading", "12 ft", "from", "ground");
    assertThat(EverydaySealTest.codes(rising)).doesNotContain("seal.no-rise");
  }

  @Test
  void whatCannotBeIsRefused() {
    assertThatThrownBy(() -> fall("bottom", "30 ft", "before", "31 ft", "after", "31.2 ft", "minutes", "15 min"))
        .isInstanceOf(NotReckonable.class);
  }

  private static Outcome fall(String... namesAndTexts) {
    return GroutFall.RECKONING.of(Inputs.of(Body.of(namesAndTexts)));
  }
}
