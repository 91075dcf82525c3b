package steening.field;

import static org.assertj.core.api.Assertions.assertThat;
import static steening.field.Hands.METRIC;
import static steening.field.Hands.SPANISH;
import static steening.field.Hands.asked;
import static steening.field.Hands.refused;
import static steening.field.Hands.taken;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import steening.journal.Body;
import steening.language.Phrase;
import steening.quantity.Length;
import steening.quantity.Quantity;
import steening.quantity.Scale;

class SeriesFieldTest {
  private static final SeriesField DRAWDOWN = SeriesField.of(
      QuantityField.of("drawdown", Scale.DEPTH, Phrase.of("drawdown", "abatimiento"), "1 ft", "0.3 m")
          .between("-10 ft", "1000 ft").usually("0 ft", "300 ft"),
      3, "0.66 0.89 0.98 ft", "0.20 0.27 0.30 m");
  private static final SeriesField RATIO = SeriesField.of(
      QuantityField.of("ratio", Scale.NUMBER, Phrase.of("ratio", "razón"), "2", "2"), 1, "2 3 4", "2 3 4");

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
    "0.20 0.27 0.30 m | 0.20 0.27 0.30 m",
    "0.20 0.27 0.30   | 0.20 0.27 0.30 m",
    "0.20; 0.27; 0.30 m | 0.20; 0.27; 0.30 m",
    "0.20, 0.27, 0.30 | 0.20, 0.27, 0.30 m",
    "0.20,0.27,0.30 m | 0.20,0.27,0.30 m",
    "20 cm; 0.27 m; 300 mm | 20 cm; 0.27 m; 300 mm",
    "0.20 m 0.27 m 0.30 m | 0.20 m 0.27 m 0.30 m",
    "20cm 27cm 30cm | 20cm 27cm 30cm",
  })
  void takesASeriesAndKeepsWhatWasTyped(String typed, String kept) {
    assertThat(taken(DRAWDOWN, typed, METRIC)).isEqualTo(kept);
    assertThat(amounts(kept)).containsExactly(millimetres(200), millimetres(270), millimetres(300));
  }

  @Test
  void readsFractionsAndFeetAndInchesApartBySemicolons() {
    assertThat(amounts(taken(DRAWDOWN, "1' 6\"; 2 1/2 ft; 3 3 ft")))
        .containsExactly(feet(1.5), feet(2.5), feet(3.25));
  }

  @Test
  void neverTakesAFractionForTwoAmounts() {
    assertThat(refused(DRAWDOWN, "1 1/2 2 1/2 ft"))
        .isEqualTo("drawdown: \"1 1/2 2 1/2 ft\" is not understood. Example: 0.66 0.89 0.98 ft.");
    assertThat(refused(DRAWDOWN, "1 1/2 ft"))
        .isEqualTo("drawdown: 1 given, where 3 to 1000 are needed. Example: 0.66 0.89 0.98 ft.");
  }

  @Test
  void asksWhatCommasMean() {
    assertThat(asked(DRAWDOWN, "0,20 0,27 0,30 m")).containsExactly("0.20 0.27 0.30 m");
    assertThat(asked(DRAWDOWN, "0,20; 0,27; 0,30 m")).containsExactly("0.20; 0.27; 0.30 m");
    assertThat(asked(DRAWDOWN, "1,2,3 m")).containsExactly("1; 2; 3 m");
    assertThat(asked(RATIO, "1,200")).containsExactly("1.200", "1; 200");
    assertThat(asked(DRAWDOWN, "1,2,3 m", SPANISH).question().shownTo(SPANISH))
        .isEqualTo("abatimiento: ¿las comas en 1,2,3 m son puntos decimales?");
  }

  @Test
  void refusesOrAsksAboutOneAmountAsItsFieldDoes() {
    assertThat(refused(DRAWDOWN, "1 2 -300 ft")).isEqualTo(
        "drawdown: -300.00 ft is outside -10.00 ft to 1000.00 ft. Example: 1 ft.");
    assertThat(asked(DRAWDOWN, "1 2 3000 ft")).containsExactly("1 ft; 2 ft; 3000 in", "1 ft; 2 ft; 3000 mm");
    assertThat(asked(DRAWDOWN, "1 2 400 ft")).containsExactly("1 2 400 ft", "1 ft; 2 ft; 400 in", "1 ft; 2 ft; 400 mm");
    assertThat(DRAWDOWN.read("1 2 400 ft", Hands.US, true)).isEqualTo(new Reading.Taken("1 2 400 ft"));
  }

  @ParameterizedTest
  @ValueSource(strings = {
    "1 ft 2 m 3", "1 2 ft 3", "one two three", "1 2 3 gal", ";", "; ;", ",", "1;;2;3", "1 2 3 ft ft"
  })
  void refusesNonsense(String typed) {
    assertThat(refused(DRAWDOWN, typed)).contains("Example: ");
  }

  @Test
  void joinsAList() {
    assertThat(amounts(taken(DRAWDOWN, SeriesField.joined(List.of("1", "2", "3")))))
        .containsExactly(feet(1), feet(2), feet(3));
  }

  private static List<Quantity> amounts(String text) {
    return DRAWDOWN.in(Body.of("drawdown", text)).orElseThrow();
  }

  private static Length millimetres(long count) {
    return new Length(count * 1_000_000);
  }

  private static Length feet(double feet) {
    return Length.of(feet, steening.quantity.Unit.FOOT);
  }
}
