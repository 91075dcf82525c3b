package steening.number;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Against the JVM's StrictMath, whose results are fixed by specification to the last bit or one beside it. */
class ElementaryTest {
  private static final int ARGUMENTS = 20_000;

  @Test
  void logarithmsOfPowersOfTenAreWhole() {
    for (int power = -15; power <= 15; power++) {
      assertThat(Elementary.log10(Decimal.nearest(new java.math.BigDecimal("1e" + power)))).isEqualTo(power);
    }
  }

  @Test
  void isWithinOneUnitInTheLastPlace() {
    SplittableRandom random = new SplittableRandom(20260506);
    for (int i = 0; i < ARGUMENTS; i++) {
      double positive = Math.exp(random.nextDouble(-30, 30));
      double exponent = random.nextDouble(-3, 3);
      assertNear(Elementary.ln(positive), StrictMath.log(positive));
      assertNear(Elementary.log10(positive), StrictMath.log10(positive));
      assertNear(Elementary.exp(exponent), StrictMath.exp(exponent));
      assertNear(Elementary.pow(positive, exponent), StrictMath.pow(positive, exponent));
      assertThat(Elementary.sqrt(positive)).isEqualTo(StrictMath.sqrt(positive));
    }
  }

  private static void assertNear(double value, double expected) {
    assertThat(Math.abs(value - expected)).isLessThanOrEqualTo(Math.ulp(expected));
  }
}
