package steening.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class LengthTest {
  @Test
  void tenJointsAddUpExactly() {
    Length joint = (Length) Notation.read("10.10 ft", Unit.FOOT).orElseThrow().quantity();
    Length tally = Length.ZERO;
    for (int i = 0; i < 10; i++) tally = tally.plus(joint);
    assertThat(tally).isEqualTo(Length.feet(101)).isEqualTo(joint.times(10));
    assertThat(tally.inFeet()).isEqualTo(101);
  }

  @Test
  void comparesAndSubtracts() {
    Length three = Length.feet(3);
    Length five = Length.feet(5);
    assertThat(five.minus(three)).isEqualTo(Length.feet(2));
    assertThat(three.minus(five)).isEqualTo(Length.feet(-2));
    assertThat(five.isMoreThan(three)).isTrue();
    assertThat(three.isLessThan(five)).isTrue();
    assertThat(three.isLessThan(three)).isFalse();
    assertThat(three.max(five)).isEqualTo(five);
    assertThat(three.min(five)).isEqualTo(three);
  }

  @Test
  void roundsToTheNearestNanometre() {
    assertThat(Length.of(1.0 / 3, Unit.METRE)).isEqualTo(new Length(333_333_333));
    assertThat(Length.ofMetres(-0.0000000015)).isEqualTo(new Length(-1));
    assertThat(Length.of(7.875, Unit.INCH)).isEqualTo(new Length(200_025_000));
  }

  @Test
  void refusesWhatDoesNotFit() {
    assertThatThrownBy(() -> Length.ofMetres(1e10)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Length.ofMetres(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Length.feet(Long.MAX_VALUE)).isInstanceOf(ArithmeticException.class);
  }
}
