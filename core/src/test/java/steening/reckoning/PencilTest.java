package steening.reckoning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The judge is judged first. */
class PencilTest {
  @ParameterizedTest
  @CsvSource({
    "2 + 3 × 4, 14", "2 × (3 + 4), 14", "10 − 4 − 3, 3", "10 − (4 − 3), 9", "12 / 4 / 3, 1", "12 / (4 / 2), 6",
    "3² × 2, 18",
    "2^0.5, 1.41421356", "√(9 + 16), 5", "log(1000), 3", "up(8.2), 9", "max(2; 3 × 4), 12", "min(2; 3 × 4), 2",
    "(−2)² + 1, 5",
    "−2 + 5, 3", "2 × (−3), −6", "0.005454154 × (7.875² − 4.5²) × 100, 22.77962", "(2 + 1)^(1 + 1), 9", "−3², 9"
  })
  void worksOut(String figures, String value) {
    double expected = Double.parseDouble(value.replace('−', '-'));
    assertThat(Pencil.workOut(figures).middle()).isCloseTo(expected, within(1e-5));
  }

  @Test
  void knowsWhatDigitsLeaveOpen() {
    assertThat(Pencil.workOut("22.77963").meets(Pencil.workOut("22.77965"))).isFalse();
    assertThat(Pencil.workOut("22.77963").meets(Pencil.Span.of("22.779634"))).isTrue();
    assertThat(Pencil.workOut("150.1235 − 150.1").meets(Pencil.Span.of("0.02346"))).isTrue();
    assertThat(Pencil.workOut("150.1235 − 150.1").meets(Pencil.Span.of("0.0237"))).isFalse();
    assertThat(Pencil.workOut("up(9)").meets(Pencil.Span.of("10"))).isTrue();
  }

  @Test
  void readsSymbols() {
    Map<String, Pencil.Span> known = Map.of("D₁", Pencil.Span.of("3"), "Δs", Pencil.Span.of("4"));
    assertThat(Pencil.workOut("√(D₁² + Δs²)", known).middle()).isCloseTo(5, within(1e-5));
    assertThatThrownBy(() -> Pencil.workOut("D₂ + 1", known)).isInstanceOf(AssertionError.class);
  }

  @ParameterizedTest
  @ValueSource(strings = {"2 +", "(2", "2)", "ln(2)", "max(2)", "2^2^2", "2²²", "2 3 +", "", "2 * 3"})
  void refusesWhatNobodyCanRead(String figures) {
    assertThatThrownBy(() -> Pencil.workOut(figures))
        .isInstanceOfAny(AssertionError.class, NumberFormatException.class);
  }
}
