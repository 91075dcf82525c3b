package steening.quantity;

/** What kind of amount a quantity is. */
public enum Dimension {
  LENGTH("length"),
  AREA("area"),
  VOLUME("volume"),
  FLOW_RATE("flow rate"),
  PRESSURE("pressure"),
  DENSITY("density"),
  MASS("mass"),
  VELOCITY("velocity"),
  TIME("time"),
  TEMPERATURE("temperature"),
  CONCENTRATION("concentration"),
  HYDRAULIC_CONDUCTIVITY("hydraulic conductivity"),
  TRANSMISSIVITY("transmissivity"),
  SPECIFIC_CAPACITY("specific capacity"),
  /** Drawdown for each unit of rate, in metres for each cubic metre a second: s/m². */
  SPECIFIC_DRAWDOWN("specific drawdown"),
  /** What grows with the square of the rate: s²/m⁵. */
  WELL_LOSS("well loss"),
  MASS_PER_LENGTH("mass per length"),
  AREA_PER_LENGTH("area per length"),
  VOLUME_PER_LENGTH("volume per length"),
  TURBIDITY("turbidity"),
  FUNNEL_VISCOSITY("funnel viscosity"),
  KINEMATIC_VISCOSITY("kinematic viscosity"),
  POWER("power"),
  VOLTAGE("voltage"),
  CURRENT("current"),
  RESISTANCE_PER_LENGTH("resistance per length"),
  ANGLE("angle"),
  MONEY("money"),
  MONEY_PER_LENGTH("money per length"),
  /** A share, a ratio, a count: a pure number. */
  NUMBER("number");

  private final String words;

  Dimension(String words) {
    this.words = words;
  }

  /** In small letters, for documents and commands: {@code volume per length}. */
  public String words() {
    return words;
  }

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
