package steening.stage.test;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.withinPercentage;

import com.eclipsesource.json.JsonObject;
import org.junit.jupiter.api.Test;
import steening.journal.Body;
import steening.quantity.Unit;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;

class RecoveryTestTest {
  private static final JsonObject TODD = Cases.read("P02_recovery_todd.json");
  private static final Body RECOVERY = Body.of(
      "rate", "2500 m3/d", "pumped", "240 min", "times", Cases.series(TODD, "min", "inputs", "tprime_min"),
      "residuals", Cases.series(TODD, "m", "inputs", "residual_s_m"));

  /** Todd, Groundwater Hydrology, ch. 4, recovery table (from memory); least squares computed outside the project. */
  @Test
  void agreesWithAllPointsAndWithTheLineThroughZero() {
    Outcome outcome = reckon(RECOVERY);
    agrees(outcome, "transmissivity", "line_all_points");
    agrees(outcome, "transmissivity-through-zero", "line_through_origin");
    assertThat(outcome.quantity("slope").in(Unit.METRE))
        .isCloseTo(Cases.number(TODD, "computed", "line_all_points", "slope"), withinPercentage(0.1));
    assertThat(outcome.quantity("residual-at-one").in(Unit.METRE))
        .isCloseTo(Cases.number(TODD, "computed", "line_all_points", "intercept"), withinPercentage(0.1));
    // the book's own T, from memory, within the 5 % that the file asks for
    assertThat(outcome.quantity("transmissivity").in(Unit.SQUARE_METRE_PER_DAY))
        .isCloseTo(Cases.number(TODD, "published", "T_m2_per_day"), withinPercentage(5));
  }

  @Test
  void agreesWithTheReadingsFromFiveMinutesOn() {
    agrees(reckon(RECOVERY.with("from-minute", "5 min")), "transmissivity", "line_tprime_ge_5min");
  }

  @Test
  void doesNotTakeAFallingLevelForRecovery() {
    Body falling = RECOVERY.with("times", "5; 10; 60 min").with("residuals", "0.2; 0.3; 0.9 m");
    assertThatThrownBy(() -> reckon(falling))
        .isInstanceOf(NotReckonable.class)
        .hasMessageStartingWith("The level does not recover in the window");
  }

  private static void agrees(Outcome outcome, String answer, String line) {
    assertThat(outcome.quantity(answer).in(Unit.SQUARE_METRE_PER_DAY))
        .isCloseTo(Cases.number(TODD, "computed", line, "T_m2_per_day"), withinPercentage(0.1));
  }

  private static Outcome reckon(Body typed) {
    return RecoveryTest.RECKONING.of(Inputs.of(typed));
  }
}
