package steening.quantity;

import steening.language.Reader;

/** The two units a crew reads one sort of quantity in, and takes a bare number to be in. */
public enum Scale {
  DEPTH(Unit.FOOT, Unit.METRE),
  DIAMETER(Unit.INCH, Unit.MILLIMETRE),
  SLOT(Unit.SLOT, Unit.MILLIMETRE),
  /** Sizes of grains and sieves are read in millimetres everywhere. */
  GRAIN(Unit.MILLIMETRE, Unit.MILLIMETRE),
  DISTANCE(Unit.FOOT, Unit.METRE),
  /** To a neighbour's well. */
  FAR(Unit.MILE, Unit.KILOMETRE),
  AREA(Unit.SQUARE_FOOT, Unit.SQUARE_METRE),
  VOLUME(Unit.CUBIC_FOOT, Unit.CUBIC_METRE),
  LIQUID(Unit.GALLON, Unit.LITRE),
  DOSE(Unit.FLUID_OUNCE, Unit.MILLILITRE),
  SETTLED_SAND(Unit.MILLILITRE, Unit.MILLILITRE),
  FLOW(Unit.GALLON_PER_MINUTE, Unit.LITRE_PER_SECOND),
  /** Compressors are sold by it. */
  AIR_FLOW(Unit.CUBIC_FOOT_PER_MINUTE, Unit.LITRE_PER_SECOND),
  PRESSURE(Unit.PSI, Unit.KILOPASCAL),
  DENSITY(Unit.POUND_PER_GALLON, Unit.KILOGRAM_PER_CUBIC_METRE),
  WEIGHT(Unit.POUND, Unit.KILOGRAM),
  /** Samples on a balance are weighed in grams everywhere. */
  SAMPLE_WEIGHT(Unit.GRAM, Unit.GRAM),
  SMALL_WEIGHT(Unit.OUNCE, Unit.GRAM),
  UPHOLE_VELOCITY(Unit.FOOT_PER_MINUTE, Unit.METRE_PER_MINUTE),
  ENTRANCE_VELOCITY(Unit.FOOT_PER_SECOND, Unit.METRE_PER_SECOND),
  PENETRATION(Unit.FOOT_PER_HOUR, Unit.METRE_PER_HOUR),
  /** Of a watch. */
  SECONDS(Unit.SECOND, Unit.SECOND),
  MINUTES(Unit.MINUTE, Unit.MINUTE),
  HOURS(Unit.HOUR, Unit.HOUR),
  DAYS(Unit.DAY, Unit.DAY),
  TEMPERATURE(Unit.FAHRENHEIT, Unit.CELSIUS),
  CONCENTRATION(Unit.MILLIGRAM_PER_LITRE, Unit.MILLIGRAM_PER_LITRE),
  /** Of what a laboratory finds little of: three figures of it are read, wherever the point stands. */
  TRACE(Unit.MILLIGRAM_PER_LITRE, Unit.MILLIGRAM_PER_LITRE),
  TRANSMISSIVITY(Unit.GALLON_PER_DAY_PER_FOOT, Unit.SQUARE_METRE_PER_DAY),
  SPECIFIC_CAPACITY(Unit.GALLON_PER_MINUTE_PER_FOOT, Unit.LITRE_PER_SECOND_PER_METRE),
  SPECIFIC_DRAWDOWN(Unit.FOOT_PER_GALLON_PER_MINUTE, Unit.DAY_PER_SQUARE_METRE),
  WELL_LOSS(Unit.FOOT_PER_GALLON_PER_MINUTE_SQUARED, Unit.SQUARE_DAY_PER_METRE_TO_THE_FIFTH),
  CONDUCTIVITY(Unit.GALLON_PER_DAY_PER_SQUARE_FOOT, Unit.METRE_PER_DAY),
  VISCOSITY(Unit.SQUARE_MILLIMETRE_PER_SECOND, Unit.SQUARE_MILLIMETRE_PER_SECOND),
  PIPE_WEIGHT(Unit.POUND_PER_FOOT, Unit.KILOGRAM_PER_METRE),
  OPEN_AREA(Unit.SQUARE_INCH_PER_FOOT, Unit.SQUARE_CENTIMETRE_PER_METRE),
  CAPACITY(Unit.CUBIC_FOOT_PER_FOOT, Unit.LITRE_PER_METRE),
  LIQUID_CAPACITY(Unit.GALLON_PER_FOOT, Unit.LITRE_PER_METRE),
  TURBIDITY(Unit.NTU, Unit.NTU),
  FUNNEL(Unit.FUNNEL_SECOND, Unit.FUNNEL_SECOND),
  POWER(Unit.HORSEPOWER, Unit.KILOWATT),
  VOLTAGE(Unit.VOLT, Unit.VOLT),
  CURRENT(Unit.AMPERE, Unit.AMPERE),
  /** Resistance of a cable. */
  WIRE(Unit.OHM_PER_THOUSAND_FEET, Unit.OHM_PER_KILOMETRE),
  COORDINATE(Unit.DEGREE, Unit.DEGREE),
  MONEY(Unit.DOLLAR, Unit.DOLLAR),
  PRICE(Unit.DOLLAR_PER_FOOT, Unit.DOLLAR_PER_METRE),
  SHARE(Unit.PERCENT, Unit.PERCENT),
  NUMBER(Unit.ONE, Unit.ONE);

  private final Unit us;
  private final Unit metric;

  Scale(Unit us, Unit metric) {
    this.us = us;
    this.metric = metric;
  }

  public Unit us() {
    return us;
  }

  public Unit metric() {
    return metric;
  }

  public Dimension dimension() {
    return us.dimension();
  }

  public Unit of(Reader reader) {
    return reader.metric() ? metric : us;
  }
}
