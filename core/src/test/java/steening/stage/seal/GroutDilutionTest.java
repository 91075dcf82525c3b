package steening.stage.seal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import com.eclipsesource.json.JsonObject;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import steening.journal.Body;
import steening.quantity.Unit;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;

class GroutDilutionTest {
  /** Worked example W-GROU-10: mass balance. */
  @Test
  void findsTheWaterTooMuch() {
    JsonObject row = GroutExamples.worked("W-GROU-10");
    Outcome outcome = reckon(GroutDilution.RECKONING,
        "mixed", GroutExamples.input(row, "design_lb_gal") + " lb/gal", "weighed",
        GroutExamples.input(row, "measured_lb_gal") + " lb/gal",
        "volume", "100 gal");
    assertThat(outcome.quantity("extra-share").coherent())
        .isCloseTo(GroutExamples.expected(row, "extra_water_gal_per_gal_design_grout"), withinPercentage(0.1));
    assertThat(outcome.quantity("extra-water").in(Unit.GALLON)).isCloseTo(21.87, within(0.01));
  }

  /** A law: grout diluted by so much weighs so much, and the balance finds the water again. */
  @Test
  void theBalanceFindsTheWaterThatWasAdded() {
    Outcome thin = reckon(GroutMix.RECKONING, "bentonite", "50 lb", "water", "27 gal");
    Outcome thick = reckon(GroutMix.RECKONING, "bentonite", "50 lb", "water", "24 gal");
    Outcome found =
        GroutDilution.of(thick.quantity("density"), thin.quantity("density"), Optional.of(thick.quantity("yield")));
    assertThat(found.quantity("extra-water").in(Unit.GALLON)).isCloseTo(3, within(1e-9));
  }

  @Test
  void knowsWhatCannotBeGrout() {
    assertThatThrownBy(() -> reckon(GroutDilution.RECKONING, "mixed", "9.5 lb/gal", "weighed", "8.3 lb/gal"))
        .isInstanceOf(NotReckonable.class).hasMessage("Grout cannot weigh less than water.");
  }

  private static Outcome reckon(Reckoning reckoning, String... namesAndTexts) {
    return reckoning.of(Inputs.of(Body.of(namesAndTexts)));
  }
}
