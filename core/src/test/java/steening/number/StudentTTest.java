package steening.number;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StudentTTest {
  /**
   * Upper critical values, NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.2 (from memory, not re-read);
   * printed to three places.
   */
  @ParameterizedTest
  @CsvSource({
    "1, 0.10, 3.078", "1, 0.05, 6.314", "1, 0.025, 12.706", "1, 0.01, 31.821", "1, 0.005, 63.657",
    "2, 0.10, 1.886", "2, 0.05, 2.920", "2, 0.025, 4.303", "2, 0.01, 6.965", "2, 0.005, 9.925",
    "3, 0.10, 1.638", "3, 0.05, 2.353", "3, 0.025, 3.182", "3, 0.01, 4.541", "3, 0.005, 5.841",
    "4, 0.10, 1.533", "4, 0.05, 2.132", "4, 0.025, 2.776", "4, 0.01, 3.747", "4, 0.005, 4.604",
    "5, 0.10, 1.476", "5, 0.05, 2.015", "5, 0.025, 2.571", "5, 0.01, 3.365", "5, 0.005, 4.032",
    "9, 0.05, 1.833", "9, 0.01, 2.821", "10, 0.05, 1.812", "10, 0.025, 2.228", "10, 0.01, 2.764",
    "20, 0.05, 1.725", "20, 0.025, 2.086", "30, 0.05, 1.697", "30, 0.01, 2.457", "100, 0.05, 1.660",
    "100, 0.025, 1.984"
  })
  void criticalValuesAreThoseOfTheTables(int degrees, double tail, double printed) {
    assertThat(StudentT.exceeded(tail, degrees)).isCloseTo(printed, within(0.0005));
    assertThat(StudentT.tail(StudentT.exceeded(tail, degrees), degrees)).isCloseTo(tail, within(1e-12));
  }

  /** One degree is Cauchy's distribution, two have a plain formula: a law beside the tables. */
  @ParameterizedTest
  @CsvSource({"0", "0.3", "1", "2.5", "40", "-1.7"})
  void oneAndTwoDegreesHavePlainFormulas(double t) {
    assertThat(StudentT.tail(t, 1)).isCloseTo(0.5 - Math.atan(t) / Math.PI, within(1e-14));
    assertThat(StudentT.tail(t, 2)).isCloseTo(0.5 - t / (2 * Math.sqrt(2 + t * t)), within(1e-14));
  }

  @Test
  void fallsFromOneToNothingAndIsEvenAboutTheMiddle() {
    for (int degrees : new int[] {1, 2, 3, 4, 7, 60, 999}) {
      double before = 1;
      for (double t = -60; t <= 60; t += 0.5) {
        double tail = StudentT.tail(t, degrees);
        assertThat(tail).isBetween(0.0, before + 1e-15);
        assertThat(tail + StudentT.tail(-t, degrees)).isCloseTo(1, within(1e-15));
        before = tail;
      }
      assertThat(StudentT.tail(0, degrees)).isEqualTo(0.5);
    }
  }

  @Test
  void manyDegreesAreNearlyNormal() {
    // 1.644854, the normal distribution's own
    assertThat(StudentT.exceeded(0.05, 999)).isCloseTo(1.644854, within(0.002));
  }

  @Test
  void thereIsNoneWithoutADegreeOfFreedom() {
    assertThatThrownBy(() -> StudentT.tail(1, 0)).isInstanceOf(IllegalArgumentException.class);
  }
}
