package steening.field;

import static org.assertj.core.api.Assertions.assertThat;
import static steening.field.Hands.SPANISH;
import static steening.field.Hands.US;
import static steening.field.Hands.refused;
import static steening.field.Hands.taken;

import org.junit.jupiter.api.Test;
import steening.journal.Body;
import steening.language.Phrase;

class ChoiceFieldTest {
  private static final ChoiceField FROM = ChoiceField.of(
      "from", Phrase.of("read from", "leído desde"),
      ChoiceField.option("top-of-casing", "top of casing", "boca del ademe"),
      ChoiceField.option("ground", "ground", "terreno"));

  @Test
  void takesACodeOrALabelInTheLanguageOfTheHand() {
    assertThat(taken(FROM, "top-of-casing")).isEqualTo("top-of-casing");
    assertThat(taken(FROM, "Top of casing")).isEqualTo("top-of-casing");
    assertThat(taken(FROM, "Terreno", SPANISH)).isEqualTo("ground");
    assertThat(FROM.in(Body.of("from", "ground")).orElseThrow().label().shownTo(US)).isEqualTo("ground");
  }

  @Test
  void refusesAnythingElseWithTheChoices() {
    assertThat(refused(FROM, "moon")).isEqualTo("read from: \"moon\" is none of top-of-casing, ground.");
    assertThat(refused(FROM, "luna", SPANISH)).isEqualTo("leído desde: «luna» no es ninguno de top-of-casing, ground.");
    assertThat(refused(FROM, "")).isEqualTo("read from is missing. Example: top-of-casing.");
  }
}
