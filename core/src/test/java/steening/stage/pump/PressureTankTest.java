package steening.stage.pump;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import com.eclipsesource.json.JsonObject;
import com.eclipsesource.json.JsonValue;
import org.junit.jupiter.api.Test;
import steening.journal.Body;
import steening.language.Reader;
import steening.quantity.Measure;
import steening.quantity.Unit;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;

class PressureTankTest {
  private static final JsonObject CASES = PumpCases.json("H06_pressure_tank.json");

  /** Case H06: a trade journal's column of 2006 (seen): 85 gal at 28/30/50 psi gives 25.1 gal. */
  @Test
  void agreesWithThePublishedDrawdown() {
    Outcome outcome = reckon(Body.of(
        "rate", "10 gpm", "cut-in", "30 psi", "cut-out", "50 psi", "precharge", "28 psi", "tank", "85 gal"));
    double drawdown = outcome.quantity("drawdown").in(Unit.GALLON);
    assertThat(drawdown).isCloseTo(CASES.get("published").asObject().get("drawdown_gal").asDouble(), within(0.2));
    assertThat(drawdown).isCloseTo(CASES.get("computed_exact").asDouble(), withinPercentage(0.1));
  }

  /** Case H06: computed outside the project from Boyle's law at 14.7 psi, to 0.1 %. */
  @Test
  void agreesWithTheFactorsOfTheUsualSwitches() {
    int checked = 0;
    for (JsonValue one : CASES.get("factors").asArray()) {
      String[] pressures = one.asObject().get("switch").asString().split("/");
      Outcome outcome = reckon(Body.of(
          "rate", "10 gpm", "cut-in", pressures[0] + " psi", "cut-out", pressures[1] + " psi"));
      assertThat(outcome.quantity("share").coherent())
          .isCloseTo(one.asObject().get("factor").asDouble(), withinPercentage(0.1));
      checked++;
    }
    assertThat(checked).isEqualTo(4);
  }

  @Test
  void agreesWithTheSizingCases() {
    int checked = 0;
    for (JsonValue one : CASES.get("sizing_cases").asArray()) {
      JsonObject in = one.asObject().get("inputs").asObject();
      JsonObject expected = one.asObject().get("expected").asObject();
      String[] pressures = in.get("switch").asString().split("/");
      Outcome outcome = reckon(Body.of(
          "rate", in.get("gpm") + " gpm", "run-time", in.get("min_run_min") + " min",
          "cut-in", pressures[0] + " psi", "cut-out", pressures[1] + " psi"));
      assertThat(outcome.quantity("drawdown-needed").in(Unit.GALLON))
          .isCloseTo(expected.get("needed_drawdown_gal").asDouble(), within(1e-9));
      assertThat(outcome.quantity("least-tank").in(Unit.GALLON))
          .isCloseTo(expected.get("tank_gal").asDouble(), withinPercentage(0.1));
      checked++;
    }
    assertThat(checked).isEqualTo(2);
  }

  /** Own scenario, arithmetic checked by hand: 10 gpm for two minutes between 40 and 60 psi. */
  @Test
  void sizesTheTankOfTheEverydayWell() {
    Outcome outcome = reckon(Body.of(
        "rate", "10 gpm", "run-time", "2 min", "cut-in", "40 psi", "cut-out", "60 psi", "precharge", "38 psi",
        "tank", "80 gal"));
    assertThat(outcome.quantity("least-tank").in(Unit.GALLON)).isCloseTo(77.5, within(0.05));
    assertThat(outcome.quantity("this-run").in(Unit.MINUTE)).isCloseTo(80 * 0.258 / 10, within(0.002));
    assertThat(outcome.working(Reader.US_ENGLISH).lines())
        .anyMatch(l -> l.formula().equals("(P₀ + A) × (1 / (P₁ + A) − 1 / (P₂ + A))"));
  }

  /** A law: twice the tank gives twice the water; a higher precharge than the usual one is the only way to more. */
  @Test
  void givesInProportionToTheTank() {
    Body typed = Body.of("rate", "7 gpm", "cut-in", "30 psi", "cut-out", "50 psi");
    double small = reckon(typed.with("tank", "20 gal")).quantity("drawdown").coherent();
    assertThat(reckon(typed.with("tank", "40 gal")).quantity("drawdown").coherent())
        .isCloseTo(2 * small, withinPercentage(1e-9));
    assertThat(reckon(typed.with("tank", "20 gal").with("precharge", "20 psi")).quantity("drawdown").coherent())
        .isLessThan(small);
  }

  /** A pump installer's article (seen): a minute up to 3/4 hp, two above. */
  @Test
  void asksMoreOfALargerMotor() {
    assertThat(PressureTank.leastRun(Measure.of(0.75, Unit.HORSEPOWER)).in(Unit.MINUTE)).isEqualTo(1);
    assertThat(PressureTank.leastRun(Measure.of(1, Unit.HORSEPOWER)).in(Unit.MINUTE)).isEqualTo(2);
  }

  @Test
  void refusesPressuresThatContradictEachOther() {
    assertThatThrownBy(() -> reckon(Body.of("rate", "10 gpm", "cut-in", "40 psi", "cut-out", "60 kPa")))
        .isInstanceOf(NotReckonable.class)
        .hasMessage("Cut-out must be above cut-in: 8.7 psi against 40.0 psi.");
    assertThatThrownBy(() -> reckon(
            Body.of("rate", "10 gpm", "cut-in", "40 psi", "cut-out", "60 psi", "precharge", "42 psi")))
        .isInstanceOf(NotReckonable.class)
        .hasMessage("The precharge must not be above cut-in: 42.0 psi against 40.0 psi.");
  }

  private static Outcome reckon(Body typed) {
    return PressureTank.RECKONING.of(Inputs.of(typed));
  }
}
