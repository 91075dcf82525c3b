package steening.stage.seal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import steening.journal.Body;
import steening.quantity.Unit;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;

class FeetPerBagTest {
  static Stream<Map<String, String>> feetPerBag() {
    return GroutExamples.table("C10_feet_per_bag_4in_casing.csv").stream();
  }

  /** The rule "a bag for 15 ft" held against 8 mixes in 12 holes; mixes seen, feet by geometry, printed to 0.1 ft. */
  @ParameterizedTest
  @MethodSource("feetPerBag")
  void agreesWithTheTableOfFeetPerBag(Map<String, String> row) {
    Outcome outcome = reckon(
        "hole", row.get("hole_in") + " in", "casing", "4.5 in", "yield", row.get("yield_ft3_per_bag") + " ft3");
    assertThat(outcome.quantity("length").in(Unit.FOOT))
        .isCloseTo(Double.parseDouble(row.get("ft_per_bag_gauge_hole")), within(0.06));
    assertThat(outcome.quantity("hole-for-fifteen").in(Unit.INCH))
        .isCloseTo(Double.parseDouble(row.get("hole_in_at_which_15ft_is_exact")), within(0.006));
  }

  /**
   * Common practice, no source: a bag of bentonite grout for about 15 ft. True in these holes at 20 % solids, and only
   * there.
   */
  @ParameterizedTest
  @CsvSource({
    "7 7/8 in, 24 gal, true", "8 in, 24 gal, true", "7 7/8 in, 14 gal, false",
    "6 1/4 in, 24 gal, false", "10 in, 24 gal, false"
  })
  void knowsWhereTheRuleOfThumbHolds(String hole, String water, boolean holds) {
    double feet = reckon("hole", hole, "casing", "4.5 in", "water", water).quantity("length")
        .in(Unit.FOOT);
    assertThat(Math.abs(feet - 15) < 1.5).isEqualTo(holds);
  }

  @Test
  void asksForRoom() {
    assertThatThrownBy(() -> reckon("hole", "4.5 in", "casing", "4.5 in")).isInstanceOf(NotReckonable.class);
  }

  private static Outcome reckon(String... namesAndTexts) {
    return FeetPerBag.RECKONING.of(Inputs.of(Body.of(namesAndTexts)));
  }
}
