package steening.stage.test;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import com.eclipsesource.json.JsonObject;
import com.eclipsesource.json.JsonValue;
import org.junit.jupiter.api.Test;
import steening.journal.Body;
import steening.language.Reader;
import steening.quantity.Unit;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;

class YieldReckoningsTest {
  /** 2000 (confined) as quoted after Theis and others 1963 (seen), 1500 (unconfined) Driscoll 1986 (memory). */
  @Test
  void takesBothRulesForTransmissivityFromSpecificCapacity() {
    JsonObject rules = Cases.read("R01_specific_capacity_T.json");
    Outcome outcome = reckon(SpecificCapacity.RECKONING, Body.of("rate", "1 gpm", "drawdown", "1 ft"));
    for (JsonValue rule : Cases.at(rules, "rules").asArray()) {
      String answer = "transmissivity-" + rule.asObject().getString("rule", "");
      assertThat(outcome.quantity(answer).in(Unit.GALLON_PER_DAY_PER_FOOT))
          .isCloseTo(rule.asObject().getDouble("factor_gpd_per_ft_per_gpm_per_ft", 0), within(1e-6));
      assertThat(outcome.quantity(answer).in(Unit.SQUARE_FOOT_PER_DAY))
          .isCloseTo(rule.asObject().getDouble("factor_ft2_per_day", 0), withinPercentage(0.01));
    }
  }

  /** The exact Theis answers of the same file: the rules are good to a factor of two, and are not said to be better. */
  @Test
  void staysWithinAFactorOfTwoOfTheis() {
    for (JsonValue one : Cases.at(Cases.read("R01_specific_capacity_T.json"), "exact_cases").asArray()) {
      JsonObject exact = one.asObject();
      Outcome outcome = reckon(SpecificCapacity.RECKONING, Body.of(
          "rate", exact.get("inputs").asObject().get("Q_gpm") + " gpm", "drawdown",
          exact.get("inputs").asObject().get("s_ft") + " ft"));
      boolean confined = Cases.number(exact, "inputs", "S") < 0.01;
      double rule = outcome.quantity(confined ? "transmissivity-confined"
          : "transmissivity-unconfined").in(Unit.GALLON_PER_DAY_PER_FOOT);
      assertThat(outcome.quantity("specific-capacity").in(Unit.GALLON_PER_MINUTE_PER_FOOT))
          .isCloseTo(Cases.number(exact, "expected", "Q_over_s_gpm_per_ft"), withinPercentage(0.1));
      assertThat(rule / Cases.number(exact, "expected", "T_gpd_per_ft")).isBetween(0.5, 2.0);
    }
  }

  /** Own scenario, arithmetic checked by hand: 0.6 (4.072² − 1.25²) / 0.968. */
  @Test
  void findsHowLongTheCasingGivesTheWater() {
    Body typed = Body.of("casing-inside", "4.072 in", "specific-capacity", "0.968 gpm/ft");
    Outcome outcome = reckon(CasingStorageTime.RECKONING, typed);
    assertThat(outcome.quantity("casing-storage-time").in(Unit.MINUTE)).isCloseTo(9.31, within(0.01));
    assertThat(outcome.working(Reader.US_ENGLISH).lines()).anyMatch(l -> l.formula().equals("0.6 × (D² − d²) / q"));
    Outcome metric = reckon(CasingStorageTime.RECKONING, Body.of(
        "casing-inside", "103.4288 mm", "drop-pipe", "31.75 mm", "specific-capacity", "0.2003534 L/s/m"));
    assertThat(metric.quantity("casing-storage-time").in(Unit.MINUTE)).isCloseTo(9.31, within(0.01));
    assertThatThrownBy(() -> reckon(CasingStorageTime.RECKONING, typed.with("drop-pipe", "6 in")))
        .isInstanceOf(NotReckonable.class)
        .hasMessage("The drop pipe does not fit into the casing: 6 in against 4.072 in.");
  }

  /** Own scenario, by hand: 12.40 + 1.32 log(144000 / 240) = 16.07. */
  @Test
  void carriesTheLineOnForAHundredDays() {
    Body typed = Body.of("drawdown", "12.40 ft", "minutes", "240 min", "slope", "1.32 ft");
    assertThat(reckon(LongTermDrawdown.RECKONING, typed).quantity("drawdown").in(Unit.FOOT))
        .isCloseTo(16.07, within(0.005));
    assertThatThrownBy(() -> reckon(LongTermDrawdown.RECKONING, typed.with("days", "0.1 d")))
        .isInstanceOf(NotReckonable.class).hasMessage("0.1 d is sooner than the reading at 240.0 min.");
  }

  /** The extrapolation rule of long-term yield; computed outside the project. */
  @Test
  void agreesWithTheRuleOfLongTermYield() {
    JsonObject rule = Cases.at(Cases.read("R03_yield_rules.json"), "long_term", "extrapolation").asObject();
    Outcome outcome = reckon(LongTermDrawdown.RECKONING, Body.of(
        "drawdown", rule.get("inputs").asObject().get("s_1day_ft") + " ft",
        "minutes", "1 d",
        "slope", rule.get("inputs").asObject().get("slope_ft_per_cycle") + " ft",
        "days", rule.get("inputs").asObject().get("t2_day") + " d"));
    assertThat(outcome.quantity("drawdown").in(Unit.FOOT))
        .isCloseTo(Cases.number(rule, "expected_s_ft"), withinPercentage(0.1));
  }

  private static Outcome reckon(Reckoning reckoning, Body typed) {
    return reckoning.of(Inputs.of(typed));
  }
}
