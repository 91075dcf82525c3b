package steening.stage.pack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import com.eclipsesource.json.JsonObject;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import steening.bore.Annulus;
import steening.bore.Bore;
import steening.bore.Filled;
import steening.journal.Body;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.reckoning.Term;

class ApparentDiameterTest {
  /** Worked examples W-FILT-13 and -15; the comparison is California's, monitoring-well standards section 11 (seen). */
  @ParameterizedTest
  @ValueSource(strings = {"W-FILT-13", "W-FILT-15"})
  void agreesWithTheWorkedExamples(String id) {
    JsonObject row = PackExamples.named(id);
    Outcome outcome = reckon(
        PackExamples.input(row, "hole_in") + " in", PackExamples.input(row, "sounded_rise_ft") + " ft",
        PackExamples.input(row, "placed_ft3") + " ft3");
    assertThat(outcome.quantity("holds").in(Unit.CUBIC_FOOT))
        .isCloseTo(PackExamples.expected(row, "computed_ft3"), withinPercentage(0.01));
    assertThat(outcome.quantity("ratio").coherent())
        .isCloseTo(PackExamples.expected(row, "ratio"), withinPercentage(0.01));
  }

  /** Own scenario, arithmetic checked by hand: three bags between two tapes. */
  @ParameterizedTest
  @CsvSource({"6.5 ft, 7.9, 0.05", "13.4 ft, 6.39, 0.005"})
  void tellsTheHoleFromTheBridge(String rise, double inches, double give) {
    assertThat(reckon("7.875 in", rise, "1.5 ft3").quantity("apparent-diameter").in(Unit.INCH))
        .isCloseTo(inches, within(give));
  }

  /**
   * A law: filled with what it holds, a stretch appears as wide as it was drilled, with the pipe all the way or not.
   */
  @ParameterizedTest
  @ValueSource(ints = {80, 90, 94, 96})
  void aHoleFilledWithWhatItHoldsAppearsAsDrilled(int top) {
    Annulus annulus = new Annulus(
        Bore.straight(Length.of(7.875, Unit.INCH), Length.ZERO, Length.feet(97)),
        Bore.straight(Length.of(4.5, Unit.INCH), Length.ZERO, Length.feet(96)));
    Term held = annulus.volume("V", PackVolume.RECKONING.title(), Length.feet(top), Length.feet(97));
    Outcome outcome = new Filled(annulus, Length.feet(top), Length.feet(97), held).outcome();
    assertThat(outcome.quantity("apparent-diameter").in(Unit.INCH)).isCloseTo(7.875, within(1e-9));
    assertThat(outcome.quantity("ratio").coherent()).isCloseTo(1, within(1e-12));
  }

  @Test
  void givesTheVolumePerFoot() {
    Outcome outcome = reckon("7.875 in", "10 ft", "2.278 ft3");
    assertThat(outcome.quantity("per-length").in(Scale.CAPACITY.us())).isCloseTo(0.2278, within(1e-9));
  }

  private static Outcome reckon(String hole, String rise, String volume) {
    return ApparentDiameter.RECKONING.of(
        Inputs.of(Body.of("hole", hole, "casing", "4.5 in", "rise", rise, "volume", volume)));
  }
}
