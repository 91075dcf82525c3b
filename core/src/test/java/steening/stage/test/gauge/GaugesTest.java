package steening.stage.test.gauge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import steening.journal.Body;
import steening.quantity.Unit;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;

/** Own scenarios, arithmetic checked by hand; the published tables are in the cases. */
class GaugesTest {
  /** 5 gal three times in 90.3 s: 9.967 gpm; half a second each of 30.1 s is 1.66 %. */
  @Test
  void aVesselIsAsGoodAsTheHandOnTheWatch() {
    Outcome outcome = of(BucketRate.RECKONING, "vessel", "5 gal", "fill-times", "29.8; 30.4; 30.1 s");
    assertThat(gpm(outcome, "rate")).isCloseTo(9.96678, within(1e-5));
    assertThat(gpm(outcome, "least-rate")).isCloseTo(9.96678 * (1 - 1.5 / 90.3), within(1e-5));
    assertThat(outcome.quantity("spread").in(Unit.PERCENT)).isCloseTo(1.993, within(1e-3));
    assertThat(outcome.remarks()).isEmpty();
  }

  @Test
  void fillsApartOrFewAreRemarkedAndShortOnesRefused() {
    assertThat(of(BucketRate.RECKONING, "vessel", "5 gal", "fill-times", "30; 36; 30 s").remarks()).hasSize(1);
    assertThat(of(BucketRate.RECKONING, "vessel", "5 gal", "fill-times", "30 s").remarks()).hasSize(1);
    refused(BucketRate.RECKONING, "too short for a watch", "vessel", "1 gal", "fill-times", "4; 4; 5 s");
  }

  @Test
  void weirsRefuseHeadsTheyWereNotMadeFor() {
    refused(VNotchWeir.RECKONING, "holds from", "notch", "90", "weir-head", "1.2 in");
    refused(VNotchWeir.RECKONING, "holds from", "notch", "60", "weir-head", "20 in");
    refused(RectangularWeir.RECKONING, "more than a third", "crest", "1 ft", "weir-head", "5 in");
  }

  @Test
  void theNarrowNotchPassesOverHalfOfTheRightOne() {
    double right = gpm(of(VNotchWeir.RECKONING, "notch", "90", "weir-head", "3 in"), "rate");
    Outcome narrow = of(VNotchWeir.RECKONING, "notch", "60", "weir-head", "3 in");
    assertThat(gpm(narrow, "rate") / right).isCloseTo(0.5774, within(0.02));
    assertThat(gpm(narrow, "rate-shen")).isCloseTo(gpm(narrow, "rate"), within(0.6));
    assertThat(narrow.answers()).doesNotContainKey("rate-half-power");
  }

  /** 7.22 × 0.70 × 4.9087 × √9 = 74.43 gpm. */
  @Test
  void aPlatesOwnKIsTakenAsItStands() {
    Outcome own = of(OrificeRate.RECKONING, "discharge-pipe", "4 in", "orifice", "2.5 in", "tube-head", "9 in",
        "orifice-k", "0.70");
    assertThat(gpm(own, "rate")).isCloseTo(74.43, within(0.05));
    refused(OrificeRate.RECKONING, "orifice is 0.875 of the pipe", "discharge-pipe", "4 in", "orifice", "3.5 in",
        "tube-head", "9 in");
    refused(OrificeRate.RECKONING, "holds from", "discharge-pipe", "4 in", "orifice", "2.5 in", "tube-head", "2 in");
  }

  @Test
  void aShortJetIsNoMeasurement() {
    refused(PipeJet.RECKONING, "does not fill the pipe", "discharge-pipe", "2 in", "jet-reach", "4 in", "jet-drop",
        "13 in");
  }

  /** 100 gal in 10 min: 10 gpm; 2 % and 0.1 gal of 100 are 2.1 %. */
  @Test
  void aMeterIsReadTwice() {
    Outcome outcome = of(MeterRate.RECKONING, "meter-first", "1204.5 gal", "meter-second", "1304.5 gal", "meter-time",
        "10 min");
    assertThat(gpm(outcome, "rate")).isCloseTo(10, within(1e-9));
    assertThat(gpm(outcome, "most-rate")).isCloseTo(10.21, within(1e-9));
    refused(MeterRate.RECKONING, "nothing passed", "meter-first", "10 gal", "meter-second", "10 gal", "meter-time",
        "10 min");
    refused(MeterRate.RECKONING, "ten marks", "meter-first", "10 gal", "meter-second", "10.5 gal", "meter-time",
        "10 min");
  }

  private static double gpm(Outcome outcome, String answer) {
    return outcome.quantity(answer).in(Unit.GALLON_PER_MINUTE);
  }

  private static void refused(Reckoning reckoning, String words, String... texts) {
    assertThatThrownBy(() -> of(reckoning, texts)).isInstanceOf(NotReckonable.class).hasMessageContaining(words);
  }

  private static Outcome of(Reckoning reckoning, String... texts) {
    Body body = Body.EMPTY;
    for (int i = 0; i < texts.length; i += 2) body = body.with(texts[i], texts[i + 1]);
    return reckoning.of(Inputs.of(body));
  }
}
