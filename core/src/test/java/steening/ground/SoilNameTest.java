package steening.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static steening.field.Hands.SPANISH;
import static steening.field.Hands.US;

import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import steening.language.Reader;
import steening.quantity.Length;
import steening.quantity.Unit;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.reckoning.Question;

/**
 * The corners of the criteria of ASTM D2487 (C16, as a laboratory report reproduces them, seen; the double symbols and
 * CL-ML from memory). The worked examples W-SOIL are held by PublishedCasesTest.
 */
class SoilNameTest {
  private static Outcome named(String... namesAndTexts) {
    Map<String, String> typed = new TreeMap<>();
    for (int i = 0; i < namesAndTexts.length; i += 2) typed.put(namesAndTexts[i], namesAndTexts[i + 1]);
    return Question.of(SoilName.RECKONING, typed, US).answer();
  }

  @ParameterizedTest
  @CsvSource({
    "4.9, 90, 6, 1, ML, SW", "4.9, 90, 5.9, 1, ML, SP", "4.9, 90, 6, 3.1, ML, SP", "4.9, 40, 4, 3, ML, GW",
    "5, 90, 6, 1, ML, SW-SM", "12, 90, 5, 1, CL, SP-SC", "5, 40, 3, 1, CL-ML, GP-GC", "12.1, 90, 6, 1, MH, SM",
    "12.1, 40, 6, 1, CH, GC", "30, 90, 6, 1, CL-ML, SC-SM", "49.9, 90, 6, 1, CL, SC", "50, 90, 6, 1, CL, CL"
  })
  void everyCornerHasItsSymbol(String fine, String four, String cu, String cc, String fines, String symbol) {
    Outcome outcome =
        named("passing-200", fine + " %", "passing-4", four + " %", "cu", cu, "cc", cc, "fines", fines);
    assertThat(outcome.words().get("symbol").shownTo(US)).isEqualTo(symbol);
  }

  @ParameterizedTest
  @CsvSource({"28, 7.1, CL", "28, 7, CL-ML", "25, 4, CL-ML", "25, 3.9, ML", "49.9, 30, CL", "50, 30, CH", "50, 21, MH"})
  void thePlasticityChartNamesTheFines(String liquid, String plasticity, String symbol) {
    Outcome outcome = named("liquid-limit", liquid, "plasticity-index", plasticity);
    assertThat(outcome.words().get("symbol").shownTo(US)).isEqualTo(symbol);
  }

  @Test
  void theNameIsSaidInWords() {
    Outcome outcome = named("passing-200", "8 %", "passing-4", "95 %", "cu", "2", "cc", "1", "fines", "ML");
    assertThat(outcome.words().get("name").shownTo(US)).isEqualTo("poorly graded sand with silt");
    assertThat(outcome.words().get("name").shownTo(SPANISH)).isEqualTo("arena mal graduada con limo");
    Outcome dirty = named("passing-200", "22 %", "passing-4", "40 %", "fines", "CL");
    assertThat(dirty.words().get("name").shownTo(US)).isEqualTo("clayey gravel");
    assertThat(dirty.words().get("name").shownTo(SPANISH)).isEqualTo("grava arcillosa");
  }

  @Test
  void saysWhatIsMissing() {
    assertThatThrownBy(() -> named("passing-200", "3 %")).hasMessageContaining("sieve No. 4");
    assertThatThrownBy(() -> named("passing-200", "3 %", "passing-4", "97 %")).hasMessageContaining("Cu and Cc");
    assertThatThrownBy(() -> named("passing-200", "20 %", "passing-4", "97 %")).hasMessageContaining("their symbol");
    assertThatThrownBy(() -> named("passing-200", "60 %")).hasMessageContaining("liquid limit");
    assertThatThrownBy(() -> named("passing-200", "20 %", "passing-4", "10 %")).hasMessageContaining("finer sieve");
    assertThatThrownBy(SoilNameTest::named).hasMessageContaining("liquid limit");
  }

  /** U line, PI = 0.9 (LL − 8): 34.2 at 46 (memory). */
  @Test
  void plasticityAboveTheULineIsDoubted() {
    assertThat(named("liquid-limit", "46", "plasticity-index", "35").remarks()).hasSize(1);
    assertThat(named("liquid-limit", "46", "plasticity-index", "34").remarks()).isEmpty();
  }

  /** The limits stand in C17, row by row; one nanometre decides. */
  @Test
  void aGrainOnALimitBelongsToTheCoarserGrade() {
    Length quarter = Length.of(0.25, Unit.MILLIMETRE);
    assertThat(Wentworth.of(quarter)).isEqualTo(Wentworth.MEDIUM_SAND);
    assertThat(Wentworth.of(quarter.minus(new Length(1)))).isEqualTo(Wentworth.FINE_SAND);
    assertThat(Wentworth.of(Length.of(5, Unit.METRE))).isEqualTo(Wentworth.BOULDER);
    Reader spanish = SPANISH;
    Outcome outcome = WentworthGrade.RECKONING.of(Inputs.none().with(WentworthGrade.SIZE, quarter));
    assertThat(outcome.words().get("grade").shownTo(spanish)).isEqualTo("arena media");
  }
}
