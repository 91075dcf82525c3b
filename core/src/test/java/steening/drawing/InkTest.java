package steening.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Contrast as WCAG 2 defines it: (L1 + 0.05) / (L2 + 0.05) of the relative luminances; 4.5 for text (from memory). */
class InkTest {
  @ParameterizedTest
  @ValueSource(strings = {Ink.INK, Ink.LIGHT, Ink.WATER})
  void standsOutFromPaperAndTints(String ink) {
    for (String ground : new String[] {Ink.PAPER, Ink.WATER_TINT, Ink.EARTH_TINT}) {
      assertThat(contrast(ink, ground)).as(ink + " on " + ground).isGreaterThanOrEqualTo(4.5);
    }
  }

  private static double contrast(String one, String other) {
    double a = luminance(one);
    double b = luminance(other);
    return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
  }

  private static double luminance(String colour) {
    double[] weights = {0.2126, 0.7152, 0.0722};
    double sum = 0;
    for (int i = 0; i < 3; i++) {
      double share = Integer.parseInt(colour.substring(2 * i + 1, 2 * i + 3), 16) / 255.0;
      sum += weights[i] * (share <= 0.03928 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4));
    }
    return sum;
  }
}
