package steening.aquifer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import steening.cases.CaseFiles;

/**
 * Against tables of the well functions, each with its source at its head: classic grids computed with 40 digits, and
 * printed values.
 */
class WellFunctionsTest {
  @ParameterizedTest
  @ValueSource(strings = {"W01_theis_Wu_grid.csv", "W02_theis_Wu_fine.csv"})
  void theisOverTheWholeClassicGrid(String file) {
    List<double[]> rows = rows(file);
    assertThat(rows).hasSizeGreaterThan(90);
    for (double[] row : rows) assertThat(Theis.w(row[0]) / row[1]).as("W(%s)", row[0]).isCloseTo(1, within(1e-13));
  }

  @Test
  void theisAsPrintedByHuisman() {
    for (double[] row : rows("W09_theis_Wu_published.csv")) {
      assertThat(Theis.w(row[0]) / row[2]).isCloseTo(1, within(1e-12));
      // the table misprints u = 6 by a factor of ten
      if (row[0] != 6) assertThat(Theis.w(row[0])).isCloseTo(row[1], withinPercentage(0.05));
    }
  }

  @Test
  void theisHasNoSeamsAndEnds() {
    for (double seam : new double[] {1, 4}) {
      double before = Theis.w(Math.nextDown(seam));
      assertThat(Theis.w(Math.nextUp(seam)) / before).isCloseTo(1, within(1e-14));
    }
    assertThat(Theis.w(1000)).isZero();
    assertThat(Theis.w(0)).isNaN();
    assertThat(Theis.w(-1)).isNaN();
  }

  @Test
  void theStraightLineOfCooperAndJacobMissesByWhatIsSaid() {
    for (double[] row : rows("W03_cooper_jacob_error.csv")) {
      double line = Theis.straightLine(row[0]);
      assertThat(line).isCloseTo(row[2], within(1e-10));
      assertThat((line / Theis.w(row[0]) - 1) * 100).isCloseTo(row[3], within(1e-6 + 1e-6 * Math.abs(row[3])));
    }
  }

  @Test
  void recoveryIsTheDifferenceOfTwo() {
    for (double[] row : rows("W08_recovery_function.csv")) {
      assertThat(Theis.recovery(row[1], row[0]) / row[2]).isCloseTo(1, within(1e-10));
    }
  }

  @Test
  void hantushOverTheWholeGridAndItsLimit() {
    List<double[]> rows = rows("W04_hantush_jacob.csv");
    assertThat(rows).hasSizeGreaterThan(300);
    for (double[] row : rows) {
      assertThat(Hantush.w(row[0], row[1]) / row[2]).as("W(%s, %s)", row[0], row[1]).isCloseTo(1, within(1e-10));
    }
    assertThat(Hantush.w(0.01, 0)).isEqualTo(Theis.w(0.01));
    assertThat(Hantush.w(0, 0)).isNaN();
  }

  @Test
  void stehfestWeights() {
    for (double[] row : rows("W05_stehfest_coefficients.csv")) {
      double weight = Stehfest.weights((int) row[0])[(int) row[1] - 1];
      assertThat(weight / row[2]).isCloseTo(1, within(1e-12));
    }
  }

  /** The file allows 1e-4 of the exact value with twelve weights, and 6e-4 of the print, which misprints one cell. */
  @Test
  void slugAsComputedAndAsPrintedIn1967() {
    for (double[] row : rows("W06_slug_cbp.csv")) {
      double recovered = Slug.f(row[1], row[0]);
      assertThat(recovered).as("F(%s, %s)", row[1], row[0]).isCloseTo(row[3], within(1e-4));
      boolean misprinted = row[0] == 0.1 && row[1] == 4.64e-2;
      if (!misprinted && !Double.isNaN(row[2])) assertThat(recovered).isCloseTo(row[2], within(6e-4));
    }
  }

  @Test
  void casingStorageAsComputedWithBothItsEnds() {
    for (double[] row : rows("W07_papadopulos_cooper.csv")) {
      assertThat(LargeDiameter.f(row[0], row[1]) / row[2]).as("F(%s, %s)", row[0], row[1]).isCloseTo(1, within(5e-4));
    }
    assertThat(LargeDiameter.f(10, 1e-6)).as("the casing alone").isCloseTo(1e-7, withinPercentage(0.1));
    assertThat(LargeDiameter.f(1e-12, 1e-3)).as("the casing forgotten")
        .isCloseTo(Theis.w(1e-12), withinPercentage(0.05));
  }

  private static List<double[]> rows(String file) {
    return CaseFiles.text("hydraulics/" + file).lines()
        .filter(line -> !line.isBlank() && !line.startsWith("#") && !Character.isLetter(line.charAt(0)))
        .map(line -> Arrays.stream(line.split(",", -1))
            .mapToDouble(cell -> cell.isBlank() ? Double.NaN : Double.parseDouble(cell)).toArray())
        .toList();
  }
}
