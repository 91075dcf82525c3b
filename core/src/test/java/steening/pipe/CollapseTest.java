package steening.pipe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;
import steening.quantity.Density;
import steening.quantity.Length;
import steening.quantity.Measure;
import steening.quantity.Unit;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.reckoning.Term;
import steening.stage.WorkedExamples;

class CollapseTest {
  private static final Density CEMENT = Density.of(15.65, Unit.POUND_PER_GALLON);
  private static final Length OUTSIDE = Length.of(4.5, Unit.INCH);
  private static final Length WALL = Length.of(0.214, Unit.INCH);

  /**
   * A published PVC pressure-pipe table, column critical buckling pressure: twelve ratings, printed to whole psi
   * (seen).
   */
  @Test
  void formAReproducesThePublishedRatings() {
    List<List<String>> seen = WorkedExamples.rows("C03_pvc_collapse.csv").stream().filter(r -> r.get(7).equals("seen"))
        .toList();
    assertThat(seen).hasSize(12);
    for (List<String> row : seen) {
      assertThat(cold(row).quantity("rating-a").in(Unit.PSI)).as(row.get(0))
          .isCloseTo(number(row, 2), withinPercentage(1));
    }
  }

  /** Remembered figures of well-casing tables (memory, 5 %): they lie between the two forms, so B is the safe one. */
  @Test
  void rememberedRatingsLieBetweenTheForms() {
    List<List<String>> remembered = WorkedExamples.rows("C03_pvc_collapse.csv").stream()
        .filter(r -> r.get(7).equals("memory") && !r.get(2).isEmpty()).toList();
    assertThat(remembered).hasSizeGreaterThan(5);
    for (List<String> row : remembered) {
      assertThat(number(row, 2)).as(row.get(0))
          .isBetween(cold(row).quantity("rating-b").in(Unit.PSI), cold(row).quantity("rating-a").in(Unit.PSI));
    }
  }

  /** Both columns of the table were computed by a second route. */
  @Test
  void bothFormsAgreeWithTheTable() {
    for (List<String> row : WorkedExamples.rows("C03_pvc_collapse.csv")) {
      assertThat(cold(row).quantity("rating-a").in(Unit.PSI)).as(row.get(0))
          .isCloseTo(number(row, 3), withinPercentage(0.1));
      assertThat(cold(row).quantity("rating-b").in(Unit.PSI)).as(row.get(0))
          .isCloseTo(number(row, 4), withinPercentage(0.1));
    }
  }

  /** Modulus of PVC 12454 against temperature in piping manuals (memory, 5 %). */
  @Test
  void warmthTakesItsShare() {
    for (List<String> row : WorkedExamples.rows("C03b_pvc_modulus_vs_temperature.csv")) {
      Term left = Stiffness.left("m", Measure.of(number(row, 0), Unit.FAHRENHEIT));
      assertThat(left.quantity().coherent()).as(row.get(0)).isCloseTo(number(row, 2), withinPercentage(0.1));
    }
    assertThat(Stiffness.left("m", Measure.of(105, Unit.FAHRENHEIT)).quantity().coherent())
        .isBetween(338 / 420.0, 360 / 420.0);
    assertThat(Stiffness.left("m", Measure.of(40, Unit.FAHRENHEIT)).quantity().coherent()).isEqualTo(1);
  }

  /** Limit of service 140 °F: a manufacturer's property table (seen). */
  @Test
  void aboveTheLimitOfServiceNothingIsPromised() {
    assertThatThrownBy(
        () -> Collapse.margin(
            OUTSIDE, WALL, Measure.of(141, Unit.FAHRENHEIT), CEMENT, Buoyancy.WATER, Length.feet(50), 2))
        .isInstanceOf(NotReckonable.class).hasMessageContaining("140 °F").hasMessageContaining("141 °F");
  }

  /**
   * Own scenario, by hand: 70 ft of 15.65 lb/gal on SDR 21: empty 57 psi, filled with water 27 psi, against 111 psi.
   */
  @Test
  void aThinWallStandsCementOnlyWhenItIsFull() {
    Outcome empty = Collapse.margin(OUTSIDE, WALL, Collapse.COOL, CEMENT, new Density(0), Length.feet(70), 2);
    Outcome full = Collapse.margin(OUTSIDE, WALL, Collapse.COOL, CEMENT, Buoyancy.WATER, Length.feet(70), 2);
    assertThat(empty.quantity("differential").in(Unit.PSI)).isCloseTo(57, withinPercentage(1));
    assertThat(full.quantity("differential").in(Unit.PSI)).isCloseTo(27, withinPercentage(2));
    assertThat(empty.quantity("safety").coherent()).isLessThan(2);
    assertThat(empty.remarks()).hasSize(1);
    assertThat(full.quantity("safety").coherent()).isGreaterThan(2);
    assertThat(full.remarks()).isEmpty();
  }

  @Test
  void nothingPressesWhereTheInsideIsAsHeavy() {
    Outcome outcome =
        Collapse.margin(OUTSIDE, WALL, Collapse.COOL, Buoyancy.WATER, Buoyancy.WATER, Length.feet(100), 2);
    assertThat(outcome.answers()).containsOnlyKeys("stiffness", "rating-a", "rating-b", "differential");
    assertThat(outcome.remarks()).hasSize(1);
  }

  @Test
  void aWallThatLeavesNoBoreIsRefused() {
    assertThatThrownBy(
        () -> Collapse.margin(
            OUTSIDE, Length.of(2.25, Unit.INCH), Collapse.COOL, CEMENT, Buoyancy.WATER, Length.feet(50), 2))
        .isInstanceOf(NotReckonable.class).hasMessageContaining("leaves no bore");
  }

  private static Outcome cold(List<String> row) {
    Length outside = Length.of(4.5, Unit.INCH);
    return Collapse.margin(
        outside, Length.of(4.5 / number(row, 1), Unit.INCH), Collapse.COOL, CEMENT, Buoyancy.WATER, Length.feet(100),
        2);
  }

  private static double number(List<String> row, int column) {
    return Double.parseDouble(row.get(column));
  }
}
