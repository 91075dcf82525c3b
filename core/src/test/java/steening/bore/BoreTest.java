package steening.bore;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import steening.quantity.Length;

class BoreTest {
  private static final Length EIGHT = inches(8);
  private static final Length TEN = inches(10);
  private static final Bore STRAIGHT = Bore.straight(EIGHT, Length.ZERO, Length.feet(100));

  @Test
  void knowsItsDiameterBelowADepth() {
    assertThat(STRAIGHT.diameterBelow(Length.ZERO)).contains(EIGHT);
    assertThat(STRAIGHT.diameterBelow(Length.feet(99))).contains(EIGHT);
    assertThat(STRAIGHT.diameterBelow(Length.feet(100))).isEmpty();
    assertThat(STRAIGHT.bottom()).isEqualTo(Length.feet(100));
    assertThat(Bore.NONE.bottom()).isEqualTo(Length.ZERO);
  }

  @Test
  void reamingReplacesWhatWasThereAndDeepeningLengthens() {
    Bore reamed = STRAIGHT.with(new Reach(Length.feet(20), Length.feet(40), TEN));
    assertThat(reamed.reaches()).containsExactly(
        new Reach(Length.ZERO, Length.feet(20), EIGHT),
        new Reach(Length.feet(20), Length.feet(40), TEN),
        new Reach(Length.feet(40), Length.feet(100), EIGHT));
    assertThat(reamed.with(new Reach(Length.ZERO, Length.feet(120), TEN)).reaches())
        .containsExactly(new Reach(Length.ZERO, Length.feet(120), TEN));
    assertThat(STRAIGHT.with(new Reach(Length.feet(100), Length.feet(110), TEN)).bottom()).isEqualTo(Length.feet(110));
  }

  @Test
  void refusesReachesThatCannotBe() {
    Reach upper = new Reach(Length.ZERO, Length.feet(50), EIGHT);
    Reach lower = new Reach(Length.feet(49), Length.feet(60), EIGHT);
    assertThatThrownBy(() -> new Bore(List.of(lower, upper))).hasMessage("reaches overlap");
    assertThatThrownBy(() -> new Reach(Length.feet(5), Length.feet(5), EIGHT))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Reach(Length.ZERO, Length.feet(5), inches(-1)))
        .isInstanceOf(IllegalArgumentException.class);
  }

  private static Length inches(long inches) {
    return new Length(inches * 25_400_000);
  }
}
