package steening.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TicksTest {
  @ParameterizedTest
  @CsvSource({"142,14,20", "142,15,10", "100,10,10", "99,10,10", "101,10,20", "2000,14,200", "0.5,10,0.05",
      "43.3,14,5", "7,1,10", "1e-6,5,2e-7"})
  void takesTheSmallestRoundStepThatIsNotTooFine(double span, int most, double step) {
    assertThat(Ticks.of(span, most).step()).isEqualTo(step);
  }

  @Test
  void standsOnDecimalsAndNotBesideThem() {
    assertThat(Ticks.of(1, 10).between(0, 1)).containsExactly(0.0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1.0);
    assertThat(Ticks.of(1, 10).between(-0.25, 0.3)).containsExactly(-0.2, -0.1, 0.0, 0.1, 0.2, 0.3);
  }

  @Test
  void enclosesAValue() {
    Ticks ticks = Ticks.of(12.4, 7);
    assertThat(ticks.step()).isEqualTo(2);
    assertThat(ticks.below(9.26)).isEqualTo(8);
    assertThat(ticks.above(12.4)).isEqualTo(14);
    assertThat(ticks.above(12)).isEqualTo(12);
    assertThat(ticks.below(12)).isEqualTo(12);
    assertThat(ticks.below(-0.5)).isEqualTo(-2);
  }

  @ParameterizedTest
  @CsvSource({"0", "-1", "NaN", "Infinity"})
  void refusesAnAxisWithoutALength(double span) {
    assertThatThrownBy(() -> Ticks.of(span, 5)).isInstanceOf(IllegalArgumentException.class);
  }
}
