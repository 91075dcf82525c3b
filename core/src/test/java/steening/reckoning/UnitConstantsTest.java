package steening.reckoning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import com.eclipsesource.json.Json;
import com.eclipsesource.json.JsonObject;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import steening.cases.CaseFiles;
import steening.language.UnitSystem;
import steening.quantity.Scale;
import steening.quantity.Unit;

/**
 * The factors of handbook formulas, worked out from the units alone, against the same factors as they are printed. Each
 * figure is looked for in the published file, whose rows name their sources.
 */
class UnitConstantsTest {
  private static final String CONSTANTS = CaseFiles.text("construction/C00_constants.csv");
  private static final JsonObject TESTS = Json.parse(CaseFiles.text("hydraulics/P15_unit_constants.json")).asObject();

  private static final double QUARTER_PI = Math.PI / 4;

  @Test
  void gallonsPerFootOfBore() {
    double factor = us(Coefficient.giving(Scale.LIQUID, QUARTER_PI).of(Scale.DIAMETER, 2).of(Scale.DEPTH));
    assertThat(factor).isCloseTo(printed("gal per ft per in2", "0.0407999"), withinPercentage(0.01));
  }

  @Test
  void cubicFeetPerFootOfBore() {
    double factor = us(Coefficient.giving(Scale.VOLUME, QUARTER_PI).of(Scale.DIAMETER, 2).of(Scale.DEPTH));
    assertThat(factor).isCloseTo(printed("ft3 per ft per in2", "0.00545415"), withinPercentage(0.01));
    assertThat(1 / factor).isCloseTo(printed("ft3 per ft per in2", "183.35"), withinPercentage(0.01));
  }

  @Test
  void upHoleVelocity() {
    double factor = us(Coefficient.giving(Scale.UPHOLE_VELOCITY, 1 / QUARTER_PI).of(Scale.FLOW).of(Scale.DIAMETER, -2));
    assertThat(factor).isCloseTo(printed("annular velocity constant", "24.51"), withinPercentage(0.05));
  }

  @Test
  void waterByTheGallonAndByTheCubicFoot() {
    double gallonsInACubicFoot = Unit.CUBIC_FOOT.toCoherent(1) / Unit.GALLON.toCoherent(1);
    double ratio = printed("water density", "62.4") / printed("water density", "8.34");
    assertThat(gallonsInACubicFoot).isCloseTo(ratio, withinPercentage(0.1));
  }

  @Test
  void pressureOfAColumn() {
    double standardGravity = 9.80665;
    Coefficient column = Coefficient.giving(Scale.PRESSURE, standardGravity).of(Scale.DENSITY).of(Scale.DEPTH);
    assertThat(us(column)).isCloseTo(printed("psi per ft per lb/gal", "0.05195"), withinPercentage(0.1));
    double water = us(column) * printed("water density", "8.34");
    assertThat(water).isCloseTo(printed("psi per ft of water", "0.433"), withinPercentage(0.1));
    assertThat(1 / water).isCloseTo(printed("psi per ft of water", "2.31"), withinPercentage(0.1));
  }

  @Test
  void gallonsPerMinuteInACubicFootPerSecond() {
    double factor = Unit.CUBIC_FOOT.toCoherent(1) / Unit.GALLON_PER_MINUTE.toCoherent(1);
    assertThat(factor).isCloseTo(printed("gpm per ft3/s", "448.83"), withinPercentage(0.01));
  }

  /** Constants of pumping tests in gallons, feet and minutes or days. */
  @Test
  void constantsOfPumpingTests() {
    Coefficient theis = Coefficient.giving(Scale.TRANSMISSIVITY, 1 / (4 * Math.PI)).of(Scale.FLOW);
    double drawdown = us(theis.of(Scale.DEPTH, -1));
    assertThat(drawdown).isCloseTo(test("c_114p6"), withinPercentage(0.001));
    assertThat(drawdown * Math.log(10)).isCloseTo(test("c_264"), withinPercentage(0.001));
    Coefficient u = Coefficient.giving(Scale.NUMBER, 0.25).of(Scale.DEPTH, 2).of(Scale.TRANSMISSIVITY, -1);
    assertThat(us(u.of(Scale.DAYS, -1))).isCloseTo(test("c_1p87"), withinPercentage(0.001));
    assertThat(us(u.of(Scale.MINUTES, -1))).isCloseTo(test("c_2693"), withinPercentage(0.001));
    double euler = 0.5772156649015329;
    Coefficient storage = Coefficient.giving(Scale.NUMBER, 4 * Math.exp(-euler)).of(Scale.DEPTH, -2);
    assertThat(us(storage.of(Scale.TRANSMISSIVITY).of(Scale.DAYS))).isCloseTo(test("c_0p3"), withinPercentage(0.001));
  }

  /** By definition: foot, gallon of 231 cubic inches, pound, standard gravity, horsepower of 550 ft lbf/s. */
  @ParameterizedTest
  @CsvSource({
    "FOOT, 0.3048", "INCH, 0.0254", "SLOT, 0.0000254", "MILE, 1609.344", "GALLON, 0.003785411784",
    "QUART, 0.000946352946",
    "FLUID_OUNCE, 0.0000295735295625", "CUBIC_FOOT, 0.028316846592", "POUND, 0.45359237", "OUNCE, 0.028349523125",
    "PSI, 6894.757293168361", "HORSEPOWER, 745.6998715822702", "POUND_PER_GALLON, 119.82642731689663", "PERCENT, 0.01",
    "GALLON_PER_MINUTE, 0.0000630901964", "FOOT_PER_MINUTE, 0.00508", "SQUARE_INCH_PER_FOOT, 0.0021166666666666667",
    "GALLON_PER_DAY_PER_FOOT, 1.4374224537037038e-7", "BAR, 100000", "DAY, 86400", "LITRE, 0.001",
    "POUND_PER_FOOT, 1.4881639435695537"
  })
  void unitsAreAsDefined(Unit unit, double coherent) {
    assertThat(unit.toCoherent(1)).isCloseTo(coherent, within(coherent * 1e-13));
    assertThat(unit.fromCoherent(unit.toCoherent(7.25))).isCloseTo(7.25, within(1e-13));
  }

  @ParameterizedTest
  @CsvSource({
    "FAHRENHEIT, 32, 273.15", "FAHRENHEIT, 212, 373.15", "CELSIUS, 0, 273.15", "FAHRENHEIT, -40, 233.15",
    "CELSIUS, -40, 233.15"
  })
  void thermometersMeetAtTheirFixedPoints(Unit unit, double degrees, double kelvin) {
    assertThat(unit.toCoherent(degrees)).isCloseTo(kelvin, within(1e-9));
    assertThat(unit.fromCoherent(kelvin)).isCloseTo(degrees, within(1e-9));
  }

  private static double us(Coefficient coefficient) {
    return coefficient.term().in(UnitSystem.US);
  }

  /** A figure that the row of a quantity really prints. */
  private static double printed(String quantity, String figure) {
    String row = CONSTANTS.lines().filter(line -> line.startsWith(quantity)).findFirst().orElseThrow();
    assertThat(row).contains(figure);
    return Double.parseDouble(figure);
  }

  private static double test(String name) {
    return TESTS.get("expected").asObject().get(name).asDouble();
  }
}
