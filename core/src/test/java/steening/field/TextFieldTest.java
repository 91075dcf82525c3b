package steening.field;

import static org.assertj.core.api.Assertions.assertThat;
import static steening.field.Hands.refused;
import static steening.field.Hands.taken;

import org.junit.jupiter.api.Test;
import steening.language.Phrase;

class TextFieldTest {
  private static final TextField REMARK = TextField.of("remark", Phrase.of("remark", "nota"), "hard drilling at 61 ft");

  @Test
  void takesAnyWords() {
    assertThat(taken(REMARK, " 57,25 <b> ñ \uD83D\uDCA7 ")).isEqualTo("57,25 <b> ñ \uD83D\uDCA7");
    assertThat(taken(REMARK, "x".repeat(10_000))).hasSize(10_000);
  }

  @Test
  void refusesTooManyRatherThanCutThem() {
    assertThat(refused(REMARK, "x".repeat(10_001))).contains("10001").contains("10000");
  }
}
