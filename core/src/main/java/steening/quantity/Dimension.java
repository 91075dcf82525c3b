package steening.quantity;

/** What kind of amount a quantity is. */
public enum Dimension {
  LENGTH,
  AREA,
  VOLUME,
  FLOW_RATE,
  PRESSURE,
  DENSITY,
  MASS,
  VELOCITY,
  TIME,
  TEMPERATURE,
  CONCENTRATION,
  TRANSMISSIVITY,
  SPECIFIC_CAPACITY,
  MASS_PER_LENGTH,
  AREA_PER_LENGTH,
  VOLUME_PER_LENGTH,
  TURBIDITY,
  FUNNEL_VISCOSITY,
  POWER,
  ANGLE,
  /** A share, a ratio, a count: a pure number. */
  NUMBER;

  /** The quantity of this dimension with a value in the coherent unit: metre, cubic metre, pascal, second and so on. */
  public Quantity of(double coherent) {
    return switch (this) {
      case LENGTH -> Length.ofMetres(coherent);
      case VOLUME -> new Volume(coherent);
      case FLOW_RATE -> new FlowRate(coherent);
      case PRESSURE -> new Pressure(coherent);
      case DENSITY -> new Density(coherent);
      case MASS -> new Mass(coherent);
      default -> new Measure(this, coherent);
    };
  }
}
