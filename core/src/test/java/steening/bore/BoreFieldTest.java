package steening.bore;

import static org.assertj.core.api.Assertions.assertThat;
import static steening.field.Hands.METRIC;
import static steening.field.Hands.asked;
import static steening.field.Hands.refused;
import static steening.field.Hands.taken;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import steening.journal.Body;
import steening.quantity.Length;
import steening.quantity.Unit;
import steening.well.Plan;

class BoreFieldTest {
  private static final BoreField HOLE = BoreField.of("hole", Plan.HOLE, Plan.DEPTH);

  @Test
  void oneDiameterGoesAllTheWay() {
    Bore bore = bore(taken(HOLE, "7 7/8"));
    assertThat(bore.diameterBelow(Length.ZERO)).contains(inches(7.875));
    assertThat(bore.diameterBelow(Length.feet(5000))).contains(inches(7.875));
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
    "7 7/8 in to 57 ft; 11.2 in to 63 ft; 7 7/8 in to 142 ft",
    "7 7/8 to 57; 11.2 to 63; 7 7/8 to 142",
    "7-7/8\" a 57'; 11.2\" hasta 63'; 7-7/8\" to 142'",
  })
  void reachesFollowFromTheGroundDown(String typed) {
    Bore bore = bore(taken(HOLE, typed));
    assertThat(bore.reaches()).containsExactly(
        new Reach(Length.ZERO, Length.feet(57), inches(7.875)),
        new Reach(Length.feet(57), Length.feet(63), inches(11.2)),
        new Reach(Length.feet(63), Length.feet(142), inches(7.875)));
  }

  @Test
  void keepsWhatWasTypedWithTheUnitsOfTheHand() {
    assertThat(taken(HOLE, "7-7/8\" hasta 57'; 8\"")).isEqualTo("7-7/8\" hasta 57'; 8\"");
    assertThat(taken(HOLE, "200 to 17.4; 280", METRIC)).isEqualTo("200 mm to 17.4 m; 280 mm");
    assertThat(bore("200 mm to 17.4 m; 280 mm").diameterBelow(Length.feet(2000))).contains(new Length(280_000_000));
  }

  @Test
  void asksAboutOneReachAndKeepsTheOthers() {
    assertThat(asked(HOLE, "7 7/8 in to 57 ft; 11.2 ft to 63 ft"))
        .containsExactly("7 7/8 in to 57 ft; 11.2 in to 63 ft");
    assertThat(asked(HOLE, "7.875 ft")).containsExactly("7.875 in");
    assertThat(asked(HOLE, "7,875")).contains("7.875 in");
  }

  @Test
  void refusesReachesOutOfOrder() {
    assertThat(refused(HOLE, "8 in to 57 ft; 10 in to 40 ft"))
        .isEqualTo("hole diameter: the reaches go down from the ground, but 40 ft is not below 57.00 ft.");
  }

  @ParameterizedTest
  @ValueSource(strings = {
    ";", "8 in to", "8 in; 9 in", "to 57 ft", "8 in from 5 ft", "8 in to 57 ft to 60 ft", "8 in to 57 gal"
  })
  void refusesNonsense(String typed) {
    assertThat(refused(HOLE, typed)).contains("Example: ");
  }

  private static Bore bore(String text) {
    return HOLE.in(Body.of("hole", text)).orElseThrow();
  }

  private static Length inches(double inches) {
    return Length.of(inches, Unit.INCH);
  }
}
