package steening.stage.test.distance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static steening.field.Hands.US;

import org.junit.jupiter.api.Test;
import steening.aquifer.Theis;
import steening.journal.Body;
import steening.quantity.Unit;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;

/** The published values are among the cases of the case book; here is what they leave open. */
class DistanceReckoningsTest {
  private static final Body AHEAD = Body.of(
      "transmissivity", "50 m2/d", "storativity", "0.0002", "distance", "100 m", "starts", "0 d", "rates", "100 m3/d",
      "days", "10 d");

  private static final Body WELLS = Body.of(
      "rate", "40 gpm", "distances", "20; 100 ft", "drawdowns", "6.2; 2.9 ft", "minutes", "1440 min");

  private static final Body PAIR = Body.of(
      "rate", "40 gpm", "near-distance", "20 ft", "far-distance", "100 ft", "near-drawdown", "6.2 ft",
      "far-drawdown", "2.9 ft");

  @Test
  void onePeriodIsTheCurveOfTheis() {
    assertThat(metres(AHEAD, "drawdown")).isCloseTo(theis(100, 100, 10), within(2e-9));
  }

  /** A stop after ten days leaves the recovery: the first rate goes on, and one against it begins. */
  @Test
  void aStopIsAPeriodAtNoRate() {
    Body stopped = AHEAD.with("starts", "0; 10 d").with("rates", "100; 0 m3/d").with("days", "15 d");
    assertThat(metres(stopped, "drawdown")).isCloseTo(theis(100, 100, 15) - theis(100, 100, 5), within(2e-9));
  }

  @Test
  void whatIsYetToBeginIsNotCounted() {
    Body later = AHEAD.with("starts", "0; 20 d").with("rates", "100; 300 m3/d");
    assertThat(metres(later, "drawdown")).isCloseTo(metres(AHEAD, "drawdown"), within(1e-12));
  }

  @Test
  void theNeighbourComesOnTop() {
    Body both = AHEAD.with("neighbour-distance", "250 m").with("neighbour-rate", "80 m3/d");
    assertThat(metres(both, "interference")).isCloseTo(theis(80, 250, 10), within(2e-9));
    assertThat(metres(both, "total")).isCloseTo(theis(100, 100, 10) + theis(80, 250, 10), within(4e-9));
    assertThat(TheisDrawdown.RECKONING.of(Inputs.of(AHEAD)).answers()).containsOnlyKeys("drawdown");
  }

  @Test
  void refusesPeriodsOutOfOrderOrUnpaired() {
    Body two = AHEAD.with("rates", "100; 50 m3/d");
    refused(TheisDrawdown.RECKONING, two, "1 beginnings and 2 rates do not pair.");
    refused(TheisDrawdown.RECKONING, two.with("starts", "5; 3 d"), "The rate that begins at 3.0 d stands after");
    refused(TheisDrawdown.RECKONING, AHEAD.with("starts", "10 d"), "Pumping begins at 10.0 d, not before 10.0 d.");
  }

  /** Two wells: the line over distance and Thiem are the same formula. */
  @Test
  void twoWellsGiveWhatThiemGives() {
    double line = DistanceDrawdown.RECKONING.of(Inputs.of(WELLS)).quantity("transmissivity").coherent();
    double thiem = SteadyConfined.RECKONING.of(Inputs.of(PAIR)).quantity("transmissivity").coherent();
    assertThat(line).isCloseTo(thiem, withinPercentage(1e-6));
  }

  @Test
  void warnsOfAWellTooFarForTheLine() {
    Outcome soon = DistanceDrawdown.RECKONING.of(Inputs.of(WELLS.with("distances", "20; 600 ft")
        .with("drawdowns", "6.2; 0.1 ft")));
    assertThat(soon.quantity("u").coherent()).isGreaterThan(0.05);
    assertThat(soon.remarks()).anyMatch(r -> r.shownTo(US).startsWith("u is above 0.05 at the farthest well"));
  }

  @Test
  void refusesWellsTakenForEachOther() {
    refused(DistanceDrawdown.RECKONING, WELLS.with("drawdowns", "2.9; 6.2 ft"), "The drawdown does not lessen");
    refused(DistanceDrawdown.RECKONING, WELLS.with("distances", "20; 20 ft"), "All wells stand at 20.00 ft.");
    refused(DistanceDrawdown.RECKONING, WELLS.with("distances", "20; 50; 100 ft"), "3 distances and 2 drawdowns");
    refused(SteadyConfined.RECKONING, PAIR.with("near-drawdown", "2 ft"), "The nearer well is drawn down 2.00 ft");
    refused(SteadyConfined.RECKONING, PAIR.with("far-distance", "20 ft"), "The farther well, at 20.00 ft, is not");
    Body heights = Body.of("rate", "40 gpm", "near-distance", "20 ft", "far-distance", "100 ft", "near-height", "40 ft",
        "far-height", "38 ft");
    refused(SteadyUnconfined.RECKONING, heights, "The water stands 40.00 ft high in the nearer well");
  }

  @Test
  void noMoreCanBeDrawnDownThanThereIs() {
    Body deep = Body.of("drawdown", "31 ft", "thickness", "30 ft");
    refused(UnconfinedCorrection.RECKONING, deep, "A drawdown of 31.00 ft is more than the 30.00 ft of water");
  }

  /** Q W(u) / (4 π T), with W held by its own table. */
  private static double theis(double rate, double distance, double days) {
    return rate / (4 * Math.PI * 50) * Theis.w(distance * distance * 0.0002 / (4 * 50 * days));
  }

  private static double metres(Body typed, String answer) {
    return TheisDrawdown.RECKONING.of(Inputs.of(typed)).quantity(answer).in(Unit.METRE);
  }

  private static void refused(Reckoning reckoning, Body typed, String sentence) {
    assertThatThrownBy(() -> reckoning.of(Inputs.of(typed)))
        .isInstanceOf(NotReckonable.class).hasMessageStartingWith(sentence);
  }
}
