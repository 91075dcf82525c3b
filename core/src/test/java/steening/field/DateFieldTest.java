package steening.field;

import static org.assertj.core.api.Assertions.assertThat;
import static steening.field.Hands.SPANISH;
import static steening.field.Hands.US;
import static steening.field.Hands.asked;
import static steening.field.Hands.refused;
import static steening.field.Hands.taken;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import steening.journal.Body;
import steening.language.Phrase;

class DateFieldTest {
  private static final DateField ISSUED = DateField.of("issued", Phrase.of("issued", "expedido"));

  @Test
  void takesYearMonthDay() {
    assertThat(taken(ISSUED, "2026-05-06")).isEqualTo("2026-05-06");
    assertThat(ISSUED.in(Body.of("issued", "2026-05-06"))).contains(LocalDate.of(2026, 5, 6));
  }

  /** 03/06 read as the sixth of March was the third of June: own scenario. */
  @Test
  void asksWhichNumberIsTheMonth() {
    assertThat(asked(ISSUED, "03/06/2026")).containsExactly("2026-03-06", "2026-06-03");
    assertThat(asked(ISSUED, "3/6/26")).containsExactly("2026-03-06", "2026-06-03");
    assertThat(asked(ISSUED, "3.6.2026")).containsExactly("2026-03-06", "2026-06-03");
    assertThat(ISSUED.read("03/06/2026", US, true)).isInstanceOf(Reading.Asked.class);
    assertThat(asked(ISSUED, "03/06/2026", SPANISH).question().shownTo(SPANISH))
        .isEqualTo("expedido: ¿03/06/2026 es 2026-03-06 o 2026-06-03?");
  }

  @Test
  void asksEvenWhereOnlyOneIsADay() {
    assertThat(asked(ISSUED, "25/12/2026")).containsExactly("2026-12-25");
    assertThat(asked(ISSUED, "05/05/2026")).containsExactly("2026-05-05");
    assertThat(asked(ISSUED, "2026/5/6")).containsExactly("2026-05-06");
  }

  @ParameterizedTest
  @ValueSource(strings = {"yesterday", "2026-02-30", "13/13/2026", "6 May 2026", "2026", "05/06", "1/2/3/4", "//"})
  void refusesWhatIsNoDay(String typed) {
    assertThat(refused(ISSUED, typed)).isEqualTo("issued: \"" + typed + "\" is not understood. Example: 2026-05-06.");
  }
}
