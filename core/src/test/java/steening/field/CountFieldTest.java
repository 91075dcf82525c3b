package steening.field;

import static org.assertj.core.api.Assertions.assertThat;
import static steening.field.Hands.SPANISH;
import static steening.field.Hands.US;
import static steening.field.Hands.asked;
import static steening.field.Hands.refused;
import static steening.field.Hands.taken;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import steening.journal.Body;
import steening.language.Phrase;

class CountFieldTest {
  private static final CountField BAGS = CountField.of("bags", Phrase.of("bags", "sacos"), 1, 1000).usuallyUpTo(20);

  @Test
  void takesAWholeNumber() {
    assertThat(taken(BAGS, "13")).isEqualTo("13");
    assertThat(taken(BAGS, "020")).isEqualTo("020");
    assertThat(BAGS.in(Body.of("bags", "020"))).contains(20);
  }

  @ParameterizedTest
  @ValueSource(strings = {"-3", "3.0", "3,0", "three", "1e2", "+3", "٣", "99999999999"})
  void refusesWhatIsNoCount(String typed) {
    assertThat(refused(BAGS, typed)).isEqualTo("bags: \"" + typed + "\" is not understood. Example: 3.");
    assertThat(refused(BAGS, typed, SPANISH)).isEqualTo("sacos: no se entiende «" + typed + "». Ejemplo: 3.");
  }

  @Test
  void refusesWhatIsNotPossible() {
    assertThat(refused(BAGS, "0")).isEqualTo("bags: 0 is outside 1 to 1000. Example: 3.");
    assertThat(refused(BAGS, "1001")).contains("1 to 1000");
  }

  /** 113 bags was a slip of 13: own scenario. */
  @Test
  void asksAboutALot() {
    assertThat(asked(BAGS, "113")).containsExactly("113");
    assertThat(BAGS.read("113", US, true)).isEqualTo(new Reading.Taken("113"));
    assertThat(asked(BAGS, "113", SPANISH).question().shownTo(SPANISH)).isEqualTo("sacos: 113 es mucho. ¿Está bien?");
  }
}
