package steening.reckoning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import steening.field.CountField;
import steening.field.QuantityField;
import steening.field.SeriesField;
import steening.field.TextField;
import steening.journal.Body;
import steening.language.Phrase;
import steening.language.UnitSystem;
import steening.quantity.Length;
import steening.quantity.Scale;

class InputsTest {
  private static final QuantityField DEPTH =
      QuantityField.of("depth", Scale.DEPTH, Phrase.same("depth"), "5 ft", "1.5 m");
  private static final SeriesField LEVELS = SeriesField.of(DEPTH.named("levels"), 1, "5 6 ft", "1.5 1.8 m");
  private static final CountField BAGS = CountField.of("bags", Phrase.same("bags"), 1, 99);
  private static final TextField GRADE = TextField.of("grade", Phrase.same("grade"), "12-20");

  @Test
  void readsTextsByTheirFields() {
    Inputs inputs = Inputs.of(Body.of("depth", "57' 3\"", "levels", "5 6 ft", "bags", "9", "grade", "12-20"));
    assertThat(inputs.length(DEPTH)).isEqualTo(new Length(17_449_800_000L));
    assertThat(inputs.value(LEVELS)).isEqualTo(List.of(Length.feet(5), Length.feet(6)));
    assertThat(inputs.find(BAGS)).contains(9);
    assertThat(inputs.text(GRADE)).contains("12-20");
  }

  @Test
  void prefersAValueToAText() {
    Inputs inputs = Inputs.of(Body.of("depth", "5 ft")).with(DEPTH, Length.feet(7)).with(BAGS, 3);
    assertThat(inputs.amount(DEPTH)).isEqualTo(Length.feet(7));
    assertThat(inputs.given("n", BAGS).in(UnitSystem.METRIC)).isEqualTo(3);
    assertThat(inputs.given("h", DEPTH).in(UnitSystem.METRIC)).isEqualTo(2.1336);
    assertThat(Inputs.none().with(GRADE, "16-30").text(GRADE)).contains("16-30");
  }

  @Test
  void fallsBackWhereNothingWasGiven() {
    assertThat(Inputs.none().given("h", DEPTH, Length.feet(3)).in(UnitSystem.US)).isEqualTo(3);
    assertThat(Inputs.none().find(LEVELS)).isEmpty();
    assertThatThrownBy(() -> Inputs.none().amount(DEPTH)).hasMessage("nothing given for depth");
  }
}
