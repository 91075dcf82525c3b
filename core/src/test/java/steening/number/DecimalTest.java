package steening.number;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DecimalTest {
  @ParameterizedTest
  @CsvSource({"57, 57", "-83.1, -83.1", "+5, 5", ".020, 0.020", "7., 7", "007, 7", "0, 0"})
  void readsPlainDecimals(String text, BigDecimal value) {
    assertThat(Decimal.parse(text).orElseThrow()).isEqualByComparingTo(value);
  }

  @ParameterizedTest
  @ValueSource(strings = {
    "", "-", "+", ".", "-.", "1e3", "NaN", "Infinity", "0x10", "1,5", "1 000", "1.2.3", "--5", "5-", "٣", "５",
    "1_000", " 5",
    "12345678901234567890123456789012345678901"
  })
  void readsNothingElse(String text) {
    assertThat(Decimal.parse(text)).isEmpty();
  }

  /** The definition of the nearest double is the judge: BigDecimal of the JVM rounds correctly. */
  @Test
  void findsTheNearestDouble() {
    SplittableRandom random = new SplittableRandom(20260506);
    for (int i = 0; i < 20_000; i++) {
      long digits = random.nextLong(-1_000_000_000_000L, 1_000_000_000_000L);
      BigDecimal decimal = BigDecimal.valueOf(digits, random.nextInt(0, 12));
      assertThat(Decimal.nearest(decimal)).isEqualTo(Double.parseDouble(decimal.toString()));
    }
    assertThat(Decimal.nearest(new BigDecimal("0.1"))).isEqualTo(0.1);
    assertThat(Decimal.nearest(new BigDecimal("9007199254740993"))).isEqualTo(9007199254740992.0);
    assertThat(Decimal.nearest(new BigDecimal("-0"))).isZero();
  }

  @ParameterizedTest
  @CsvSource({
    "2.5, 0, 3", "-2.5, 0, -3", "624.625, 2, 624.63", "0.5, 0, 1", "0.49999999999999994, 0, 0", "1, 3, 1.000",
    "0, 2, 0.00",
    "-0.001, 2, 0.00", "1e15, 0, 1000000000000000"
  })
  void roundsHalfUpOnTheValueThatIsThere(double value, int places, String text) {
    assertThat(Decimal.fixed(value, places)).isEqualTo(text);
  }

  /** 1.005 is a little less than it looks: 1.00499999999999989. */
  @Test
  void isNotFooledByADoubleThatLooksLikeATie() {
    assertThat(Decimal.fixed(1.005, 2)).isEqualTo("1.00");
  }

  @ParameterizedTest
  @CsvSource({
    "7.875, 3, 7.875", "7.5, 3, 7.5", "700, 3, 700", "0.0004, 3, 0", "-0.0004, 3, 0", "1e21, 2, 1000000000000000000000"
  })
  void leavesOutZerosAtTheEnd(double value, int places, String text) {
    assertThat(Decimal.upTo(value, places)).isEqualTo(text);
  }

  @ParameterizedTest
  @CsvSource({
    "0.01234, 3, 0.0123", "1234.5, 3, 1235", "0.00545415391, 7, 0.005454154", "100, 4, 100", "0, 4, 0",
    "-22.7796, 4, -22.78",
    "9.9996, 4, 10", "99999.6, 4, 100000"
  })
  void keepsSignificantFigures(double value, int figures, String text) {
    assertThat(Decimal.significant(value, figures)).isEqualTo(text);
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
  void writesNoNumberThatIsNone(double value) {
    assertThatThrownBy(() -> Decimal.fixed(value, 2)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Decimal.significant(value, 2)).isInstanceOf(IllegalArgumentException.class);
  }
}
