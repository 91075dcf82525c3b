package steening.cases;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import steening.quantity.Unit;

class ToleranceTest {
  @ParameterizedTest
  @CsvSource({
    "0.5 %, 100, FOOT, 0.5", "0.02 ft, 100, FOOT, 0.02", "0.02, 100, FOOT, 0.02", "2 % or 5 lb, 100, POUND, 5",
    "2 % or 5 lb, -548.5, POUND, 10.97", "1 in, 3, FOOT, 0.0833333", "6 % or 0.02 ft, 0.1, FOOT, 0.02",
    "2 % gauge hole, 50, FOOT, 1", "'1 % of the formula, 30 % of reality', 50, FOOT, 0.5", "1 °C, 50, FAHRENHEIT, 1.8",
    "0.01 gal or 0.2 %, 1, GALLON_PER_FOOT, 0.01", "exact (+-1 if yield rounded), 9, ONE, 0", "exact, 9, ONE, 0"
  })
  void readsHowFarAnAnswerMayBeOff(String text, BigDecimal value, Unit unit, double width) {
    assertThat(Tolerance.read(text).orElseThrow().around(value, unit)).isCloseTo(width, within(1e-6));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "about right", "% 5", "-1 %", "± 1 %", "or 5 lb"})
  void refusesWhatIsNoLimit(String text) {
    assertThat(Tolerance.read(text)).isEmpty();
  }
}
