package steening.quantity;

import java.math.BigDecimal;
import java.util.List;
import steening.number.Decimal;

/**
 * Units of the trade, each as a multiple of the coherent unit of its dimension. The inch (25.4 mm), the foot, the US
 * gallon (231 cubic inches), the pound (0.45359237 kg) and standard gravity (9.80665 m/s²) are exact by definition.
 */
public enum Unit {
  FOOT(Dimension.LENGTH, "ft", "0.3048", 2, "feet", "foot", "'", "′", "pie", "pies"),
  INCH(Dimension.LENGTH, "in", "0.0254", 3, "inch", "inches", "\"", "″", "pulg"),
  SLOT(Dimension.LENGTH, "slot", "0.0000254", 0, "-slot"),
  METRE(Dimension.LENGTH, "m", "1", 2, "metre", "metres", "meter", "meters", "metro", "metros"),
  CENTIMETRE(Dimension.LENGTH, "cm", "0.01", 1),
  MILLIMETRE(Dimension.LENGTH, "mm", "0.001", 1),
  MILE(Dimension.LENGTH, "mi", "1609.344", 2, "mile", "miles"),
  KILOMETRE(Dimension.LENGTH, "km", "1000", 2),
  SQUARE_FOOT(Dimension.AREA, "ft2", 0.3048 * 0.3048, 3, "ft²"),
  SQUARE_INCH(Dimension.AREA, "in2", 0.0254 * 0.0254, 2, "in²"),
  SQUARE_METRE(Dimension.AREA, "m2", 1, 4, "m²"),
  CUBIC_FOOT(Dimension.VOLUME, "ft3", 0.028316846592, 2, "ft³", "cu ft", "cubic feet"),
  GALLON(Dimension.VOLUME, "gal", 0.003785411784, 1, "gallon", "gallons", "galones"),
  QUART(Dimension.VOLUME, "qt", 0.000946352946, 2),
  FLUID_OUNCE(Dimension.VOLUME, "fl oz", 0.003785411784 / 128, 1, "floz"),
  CUBIC_METRE(Dimension.VOLUME, "m3", 1, 3, "m³"),
  LITRE(Dimension.VOLUME, "L", 0.001, 1, "litre", "litres", "liter", "liters"),
  MILLILITRE(Dimension.VOLUME, "mL", 0.000001, 2),
  GALLON_PER_MINUTE(Dimension.FLOW_RATE, "gpm", 0.003785411784 / 60, 1, "gal/min"),
  LITRE_PER_SECOND(Dimension.FLOW_RATE, "L/s", 0.001, 2),
  LITRE_PER_MINUTE(Dimension.FLOW_RATE, "L/min", 0.001 / 60, 1),
  CUBIC_FOOT_PER_MINUTE(Dimension.FLOW_RATE, "cfm", 0.028316846592 / 60, 2, "ft3/min", "ft³/min"),
  CUBIC_METRE_PER_HOUR(Dimension.FLOW_RATE, "m3/h", 1.0 / 3600, 2, "m³/h"),
  CUBIC_METRE_PER_DAY(Dimension.FLOW_RATE, "m3/d", 1.0 / 86400, 1, "m³/d"),
  PSI(Dimension.PRESSURE, "psi", 0.45359237 * 9.80665 / (0.0254 * 0.0254), 1, "lb/in2", "lb/in²"),
  KILOPASCAL(Dimension.PRESSURE, "kPa", 1000, 0),
  BAR(Dimension.PRESSURE, "bar", 100000, 2),
  POUND_PER_GALLON(Dimension.DENSITY, "lb/gal", 0.45359237 / 0.003785411784, 2, "ppg"),
  POUND_PER_CUBIC_FOOT(Dimension.DENSITY, "lb/ft3", 0.45359237 / 0.028316846592, 1, "lb/ft³"),
  KILOGRAM_PER_CUBIC_METRE(Dimension.DENSITY, "kg/m3", 1, 0, "kg/m³"),
  GRAM_PER_CUBIC_CENTIMETRE(Dimension.DENSITY, "g/cm3", 1000, 2, "g/cm³", "kg/L"),
  POUND(Dimension.MASS, "lb", 0.45359237, 1, "lbs", "pound", "pounds", "libras"),
  OUNCE(Dimension.MASS, "oz", 0.45359237 / 16, 1),
  KILOGRAM(Dimension.MASS, "kg", 1, 1),
  GRAM(Dimension.MASS, "g", 0.001, 0),
  FOOT_PER_MINUTE(Dimension.VELOCITY, "ft/min", 0.3048 / 60, 0),
  FOOT_PER_SECOND(Dimension.VELOCITY, "ft/s", 0.3048, 3),
  FOOT_PER_HOUR(Dimension.VELOCITY, "ft/h", 0.3048 / 3600, 0),
  METRE_PER_SECOND(Dimension.VELOCITY, "m/s", 1, 4),
  METRE_PER_MINUTE(Dimension.VELOCITY, "m/min", 1.0 / 60, 1),
  METRE_PER_HOUR(Dimension.VELOCITY, "m/h", 1.0 / 3600, 1),
  METRE_PER_DAY(Dimension.HYDRAULIC_CONDUCTIVITY, "m/d", 1.0 / 86400, 2),
  GALLON_PER_DAY_PER_SQUARE_FOOT(
      Dimension.HYDRAULIC_CONDUCTIVITY, "gpd/ft2", 0.003785411784 / 86400 / (0.3048 * 0.3048), 0, "gpd/ft²"),
  SECOND(Dimension.TIME, "s", 1, 1, "sec"),
  MINUTE(Dimension.TIME, "min", 60, 1, "minutes"),
  HOUR(Dimension.TIME, "h", 3600, 1, "hr", "hours"),
  DAY(Dimension.TIME, "d", 86400, 1, "days", "día", "días"),
  FAHRENHEIT(Dimension.TEMPERATURE, "°F", 5.0 / 9, 0, "F", "degF"),
  CELSIUS(Dimension.TEMPERATURE, "°C", 1, 1, "C", "degC"),
  MILLIGRAM_PER_LITRE(Dimension.CONCENTRATION, "mg/L", 0.001, 1, "ppm"),
  MICROGRAM_PER_LITRE(Dimension.CONCENTRATION, "ug/L", 0.000001, 1, "µg/L", "μg/L", "mcg/L", "ppb"),
  GRAM_PER_LITRE(Dimension.CONCENTRATION, "g/L", 1, 1),
  /** Of hardness: a grain is 64.79891 mg by definition. */
  GRAIN_PER_GALLON(Dimension.CONCENTRATION, "gpg", 0.00006479891 / 0.003785411784, 1, "grains", "granos"),
  GALLON_PER_DAY_PER_FOOT(Dimension.TRANSMISSIVITY, "gpd/ft", 0.003785411784 / 86400 / 0.3048, 0),
  SQUARE_FOOT_PER_DAY(Dimension.TRANSMISSIVITY, "ft2/d", 0.3048 * 0.3048 / 86400, 1, "ft²/d"),
  SQUARE_METRE_PER_DAY(Dimension.TRANSMISSIVITY, "m2/d", 1.0 / 86400, 1, "m²/d"),
  GALLON_PER_MINUTE_PER_FOOT(Dimension.SPECIFIC_CAPACITY, "gpm/ft", 0.003785411784 / 60 / 0.3048, 2),
  LITRE_PER_SECOND_PER_METRE(Dimension.SPECIFIC_CAPACITY, "L/s/m", 0.001, 3),
  FOOT_PER_GALLON_PER_MINUTE(
      Dimension.SPECIFIC_DRAWDOWN, "ft/gpm", 0.3048 / (0.003785411784 / 60), 4),
  DAY_PER_SQUARE_METRE(Dimension.SPECIFIC_DRAWDOWN, "d/m2", 86400, 6, "d/m²"),
  FOOT_PER_GALLON_PER_MINUTE_SQUARED(
      Dimension.WELL_LOSS, "ft/gpm2", 0.3048 / (0.003785411784 / 60) / (0.003785411784 / 60), 6, "ft/gpm²"),
  SQUARE_DAY_PER_METRE_TO_THE_FIFTH(Dimension.WELL_LOSS, "d2/m5", 86400.0 * 86400, 9, "d²/m⁵"),
  SQUARE_MINUTE_PER_METRE_TO_THE_FIFTH(Dimension.WELL_LOSS, "min2/m5", 3600, 3, "min²/m⁵"),
  POUND_PER_FOOT(Dimension.MASS_PER_LENGTH, "lb/ft", 0.45359237 / 0.3048, 2),
  KILOGRAM_PER_METRE(Dimension.MASS_PER_LENGTH, "kg/m", 1, 2),
  SQUARE_INCH_PER_FOOT(Dimension.AREA_PER_LENGTH, "in2/ft", 0.0254 * 0.0254 / 0.3048, 1, "in²/ft"),
  SQUARE_CENTIMETRE_PER_METRE(Dimension.AREA_PER_LENGTH, "cm2/m", 0.0001, 0, "cm²/m"),
  SQUARE_METRE_PER_METRE(Dimension.AREA_PER_LENGTH, "m2/m", 1, 3, "m²/m"),
  CUBIC_FOOT_PER_FOOT(Dimension.VOLUME_PER_LENGTH, "ft3/ft", 0.028316846592 / 0.3048, 4, "ft³/ft"),
  GALLON_PER_FOOT(Dimension.VOLUME_PER_LENGTH, "gal/ft", 0.003785411784 / 0.3048, 3),
  LITRE_PER_METRE(Dimension.VOLUME_PER_LENGTH, "L/m", 0.001, 2),
  NTU(Dimension.TURBIDITY, "NTU", 1, 1, "UNT"),
  FUNNEL_SECOND(Dimension.FUNNEL_VISCOSITY, "s/qt", 1, 0),
  SQUARE_MILLIMETRE_PER_SECOND(Dimension.KINEMATIC_VISCOSITY, "mm2/s", 0.000001, 3, "mm²/s"),
  HORSEPOWER(Dimension.POWER, "hp", 550 * 0.3048 * 0.45359237 * 9.80665, 2),
  KILOWATT(Dimension.POWER, "kW", 1000, 2),
  VOLT(Dimension.VOLTAGE, "V", 1, 1, "volts"),
  AMPERE(Dimension.CURRENT, "A", 1, 1, "amps"),
  OHM_PER_THOUSAND_FEET(Dimension.RESISTANCE_PER_LENGTH, "ohm/1000 ft", 1 / 304.8, 3),
  OHM_PER_KILOMETRE(Dimension.RESISTANCE_PER_LENGTH, "ohm/km", 0.001, 3),
  DEGREE(Dimension.ANGLE, "°", 1, 5, "deg"),
  /** Of whatever country: dollars and pesos share the sign. */
  DOLLAR(Dimension.MONEY, "$", 1, 0, "dollars", "pesos"),
  DOLLAR_PER_FOOT(Dimension.MONEY_PER_LENGTH, "$/ft", 1 / 0.3048, 2),
  DOLLAR_PER_METRE(Dimension.MONEY_PER_LENGTH, "$/m", 1, 2),
  PART_PER_MILLION(Dimension.NUMBER, "ppm", 0.000001, 0),
  PERCENT(Dimension.NUMBER, "%", 0.01, 1, "percent", "por ciento"),
  ONE(Dimension.NUMBER, "", 1, 2);

  private static final int NANO = 9;

  /** Freezing point and the zero of each thermometer, as kelvin: coherent = value × factor + zero. */
  private static final double CELSIUS_ZERO = 273.15;

  private static final double FAHRENHEIT_ZERO = 273.15 - 32 * (5.0 / 9);

  private final Dimension dimension;
  private final String symbol;
  private final BigDecimal exact;
  private final double factor;
  private final long nanometres;
  private final int decimals;
  private final List<String> alsoWritten;

  Unit(Dimension dimension, String symbol, String exact, int decimals, String... alsoWritten) {
    this.dimension = dimension;
    this.symbol = symbol;
    this.exact = new BigDecimal(exact);
    this.factor = Decimal.nearest(this.exact);
    this.nanometres = this.exact.movePointRight(NANO).longValueExact();
    this.decimals = decimals;
    this.alsoWritten = List.of(alsoWritten);
  }

  Unit(Dimension dimension, String symbol, double factor, int decimals, String... alsoWritten) {
    this.dimension = dimension;
    this.symbol = symbol;
    this.exact = null;
    this.factor = factor;
    this.nanometres = 0;
    this.decimals = decimals;
    this.alsoWritten = List.of(alsoWritten);
  }

  public Dimension dimension() {
    return dimension;
  }

  /** As written in files and commands: {@code ft3}, {@code lb/gal}. */
  public String symbol() {
    return symbol;
  }

  /** As written on a page: {@code ft³}. */
  public String printed() {
    String cubes = symbol.replace("ft3", "ft³").replace("m3", "m³").replace("d2/m5", "d²/m⁵").replace("m5", "m⁵");
    return cubes.replace("ft2", "ft²").replace("in2", "in²").replace("m2", "m²");
  }

  /** How many decimals people read in this unit. */
  public int decimals() {
    return decimals;
  }

  /** The value in the coherent unit. */
  public double toCoherent(double value) {
    return value * factor + zero();
  }

  public double fromCoherent(double coherent) {
    return (coherent - zero()) / factor;
  }

  /** The size of a unit of length, which is a whole number in all of them. */
  long nanometres() {
    return nanometres;
  }

  /** The quantity that this unit makes of a decimal; lengths stay exact to the nanometre. */
  public Quantity of(BigDecimal value) {
    if (dimension == Dimension.LENGTH) return Length.exactly(value, exact);
    return dimension.of(toCoherent(Decimal.nearest(value)));
  }

  /** Small letters and capitals alike: no two units of one dimension differ in nothing else. */
  boolean isWritten(String text) {
    if (symbol.equalsIgnoreCase(text)) return true;
    for (String other : alsoWritten) if (other.equalsIgnoreCase(text)) return true;
    return false;
  }

  private double zero() {
    if (this == CELSIUS) return CELSIUS_ZERO;
    return this == FAHRENHEIT ? FAHRENHEIT_ZERO : 0;
  }
}
