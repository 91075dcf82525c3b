package steening.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import steening.field.Hands;
import steening.quantity.Scale;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;

/** Clay where sand was forecast: own scenario, arithmetic checked by hand. */
class SandForecastTest {
  private static final Inputs FIVE = Inputs.none()
      .with(SandForecast.TOPS, "116; 112; 120; 110; 113 ft")
      .with(SandForecast.DISTANCES, "0.3; 0.5; 0.6; 0.9; 1.2 mi")
      .with(SandForecast.GROUND, "218 ft");

  @Test
  void nearerWellsWeighMore() {
    Outcome forecast = SandForecast.RECKONING.of(FIVE);
    assertThat(feet(forecast, "elevation")).isCloseTo(115.27, within(0.005));
    assertThat(feet(forecast, "depth")).isCloseTo(102.7, within(0.05));
    assertThat(forecast.quantity("wells").coherent()).isCloseTo(2.63, within(0.005));
    assertThat(feet(forecast, "deviation")).isCloseTo(4.09, within(0.005));
    assertThat(feet(forecast, "shallow")).isCloseTo(94.0, within(0.05));
    assertThat(feet(forecast, "deep")).isCloseTo(111.4, within(0.05));
    assertThat(forecast.quantity("chance").coherent()).isCloseTo(6.0 / 7, within(1e-12));
  }

  @Test
  void besideItAllWeighedAlike() {
    Outcome forecast = SandForecast.RECKONING.of(FIVE);
    assertThat(feet(forecast, "depth-alike")).isCloseTo(103.8, within(0.05));
    assertThat(feet(forecast, "shallow-alike")).isCloseTo(94.7, within(0.05));
    assertThat(feet(forecast, "deep-alike")).isCloseTo(112.9, within(0.05));
  }

  @Test
  void theWeightsAreThoseOfTheWorking() {
    double[] weights = SandForecast.RECKONING.of(FIVE).working(Hands.US).lines().stream()
        .filter(line -> line.symbol().startsWith("w"))
        .mapToDouble(line -> Double.parseDouble(line.value()))
        .toArray();
    assertThat(weights).containsExactly(new double[] {11.11, 4.00, 2.78, 1.23, 0.69}, within(0.005));
  }

  @Test
  void twoWellsWeighAlike() {
    Outcome next = SandForecast.RECKONING.of(Inputs.none()
        .with(SandForecast.TOPS, "72; 69 ft").with(SandForecast.DISTANCES, "0.9; 1.2 mi")
        .with(SandForecast.GROUND, "218 ft"));
    assertThat(feet(next, "depth")).isCloseTo(147.5, within(1e-9));
    assertThat(next.quantity("chance").coherent()).isCloseTo(0.75, within(1e-12));
    assertThat(next.shown("depth-alike")).isEmpty();
    assertThat(next.remarks()).hasSize(1);
    // t(0.95, 1) = 6.314 (table); 1.5 √2 √1.5 = 2.598
    assertThat(feet(next, "deep") - 147.5).isCloseTo(6.314 * 2.598, within(0.01));
  }

  /** Logs are kept to the foot: that three wells agree to the inch is no certainty. */
  @Test
  void agreementIsNotCertainty() {
    Outcome forecast = SandForecast.RECKONING.of(Inputs.none()
        .with(SandForecast.TOPS, "100; 100; 100 ft").with(SandForecast.DISTANCES, "1; 1; 1 mi")
        .with(SandForecast.GROUND, "218 ft"));
    assertThat(feet(forecast, "deviation")).isCloseTo(Math.sqrt(1 + 1.0 / 3), within(1e-9));
  }

  @Test
  void eachWellNeedsBoth() {
    Inputs uneven = FIVE.with(SandForecast.DISTANCES, "0.3; 0.5 mi");
    assertThatThrownBy(() -> SandForecast.RECKONING.of(uneven))
        .isInstanceOf(NotReckonable.class).hasMessage("5 tops, but 2 distances: each well needs both.");
  }

  /** Depth, deviations below the likely depth, chance left: own scenario. */
  @ParameterizedTest
  @CsvSource({"108, 0.133, 0.44", "112, 0.043, 0.20", "118, 0.0101, 0.057"})
  void theChanceThatItIsStillBelowFallsAsTheHoleDeepens(double now, double deeper, double left) {
    Outcome forecast = SandForecast.RECKONING.of(FIVE);
    Outcome ahead = SandAhead.RECKONING.of(Inputs.none()
        .with(SandAhead.NOW, now + " ft")
        .with(SandAhead.LIKELY, forecast.quantity("depth"))
        .with(SandAhead.CHANCE, forecast.quantity("chance"))
        .with(SandAhead.DEVIATION, forecast.quantity("deviation"))
        .with(SandAhead.WELLS, 5));
    assertThat(ahead.quantity("deeper").coherent()).isCloseTo(deeper, within(deeper < 0.02 ? 0.0002 : 0.0007));
    assertThat(ahead.quantity("ahead").coherent()).isCloseTo(left, within(left < 0.1 ? 0.0005 : 0.005));
  }

  /** The three depths that were entered leave one half and one twentieth beyond them, as they say. */
  @ParameterizedTest
  @CsvSource({"94, 0.95", "103, 0.5", "112, 0.05"})
  void anEnteredForecastMeansWhatItSays(double now, double deeper) {
    Inputs entered = Inputs.none()
        .with(SandAhead.LIKELY, "103 ft").with(SandAhead.SHALLOWEST, "94 ft").with(SandAhead.DEEPEST, "112 ft")
        .with(SandAhead.CHANCE, "80 %").with(SandAhead.NOW, now + " ft");
    Outcome ahead = SandAhead.RECKONING.of(entered);
    assertThat(ahead.quantity("deeper").coherent()).isCloseTo(deeper, within(1e-12));
    double left = 0.8 * deeper / (0.8 * deeper + 0.2);
    assertThat(ahead.quantity("ahead").coherent()).isCloseTo(left, within(1e-12));
    Outcome by = SandAhead.RECKONING.of(entered.with(SandAhead.BY, "5000 ft"));
    assertThat(by.quantity("found-by").coherent()).as("all of it is found in the end").isCloseTo(left, within(1e-9));
  }

  @Test
  void contradictionsHaveASentence() {
    Inputs bare = Inputs.none().with(SandAhead.NOW, "118 ft").with(SandAhead.LIKELY, "103 ft")
        .with(SandAhead.CHANCE, "80 %");
    refuses(bare, "Give the deviation and its wells, or the shallowest and the deepest depth.");
    Inputs entered = bare.with(SandAhead.SHALLOWEST, "94 ft").with(SandAhead.DEEPEST, "112 ft");
    refuses(entered.with(SandAhead.DEEPEST, "100 ft"),
        "Shallowest, likely and deepest must follow each other downward.");
    refuses(entered.with(SandAhead.BY, "100 ft"), "Drilling on ends above where it begins.");
    refuses(bare.with(SandAhead.CHANCE, "100 %").with(SandAhead.NOW, "5000 ft").with(SandAhead.DEVIATION, "1 ft")
            .with(SandAhead.WELLS, 100),
        "With a chance of 100 % the sand cannot be passed: give less.");
  }

  @Test
  void theNextFeet() {
    Inputs feet = Inputs.none().with(GoingOn.FROM, "118 ft").with(GoingOn.TO, "165 ft").with(GoingOn.PRICE, "$28/ft");
    Outcome plain = GoingOn.RECKONING.of(feet);
    assertThat(feet(plain, "feet")).isCloseTo(47, within(1e-9));
    assertThat(plain.figure("cost").shownTo(Hands.US)).isEqualTo("$1316");
    Outcome worth = GoingOn.RECKONING.of(feet.with(GoingOn.CHANCE, "75 %")
        .with(GoingOn.VALUE, "$9000").with(GoingOn.FINISHING, "$4200"));
    // 0.75 (9000 − 4200) − 1316
    assertThat(worth.figure("balance").shownTo(Hands.US)).isEqualTo("$2284");
    assertThat(worth.words().get("advice").shownTo(Hands.SPANISH)).isEqualTo("seguir");
    Outcome poor = GoingOn.RECKONING.of(feet.with(GoingOn.CHANCE, "20 %")
        .with(GoingOn.VALUE, "$9000").with(GoingOn.FINISHING, "$4200"));
    assertThat(poor.figure("balance").shownTo(Hands.US)).isEqualTo("-$356");
    assertThat(poor.words().get("advice").shownTo(Hands.US)).isEqualTo("stop here");
    assertThatThrownBy(() -> GoingOn.RECKONING.of(feet.with(GoingOn.TO, "100 ft"))).isInstanceOf(NotReckonable.class);
  }

  /** K = 300 gpd/ft², 20 ft, confined: T = 6,000 gpd/ft, 3.0 gpm/ft; 118 − 30 − 5 = 83 ft of drawdown. */
  @Test
  void whatASandGives() {
    Outcome gives = RoughYield.RECKONING.of(Inputs.none()
        .with(RoughYield.CONDUCTIVITY, "300 gpd/ft2").with(RoughYield.THICKNESS, "20 ft")
        .with(RoughYield.TOP, "118 ft").with(RoughYield.AT_REST, "30 ft").with(RoughYield.WANTED, "12 gpm"));
    assertThat(gives.quantity("specific-capacity").in(Scale.SPECIFIC_CAPACITY.us())).isCloseTo(3.0, within(1e-6));
    assertThat(gives.quantity("yield").in(Scale.FLOW.us())).isCloseTo(249, within(1e-4));
    assertThat(gives.quantity("yield-least").in(Scale.FLOW.us())).isCloseTo(83, within(1e-4));
    assertThat(feet(gives, "drawdown-needed")).isCloseTo(4, within(1e-6));
    assertThatThrownBy(() -> RoughYield.RECKONING.of(Inputs.none()
        .with(RoughYield.CONDUCTIVITY, "300 gpd/ft2").with(RoughYield.THICKNESS, "20 ft")
        .with(RoughYield.TOP, "30 ft").with(RoughYield.AT_REST, "30 ft"))).isInstanceOf(NotReckonable.class);
  }

  private static void refuses(Inputs inputs, String sentence) {
    assertThatThrownBy(() -> SandAhead.RECKONING.of(inputs)).isInstanceOf(NotReckonable.class).hasMessage(sentence);
  }

  private static double feet(Outcome outcome, String answer) {
    return outcome.quantity(answer).in(Scale.DEPTH.us());
  }
}
