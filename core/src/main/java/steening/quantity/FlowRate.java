package steening.quantity;

/** A volume per time: a pump rate, a yield. */
public record FlowRate(double cubicMetresPerSecond) implements Quantity {
  public static FlowRate of(double value, Unit unit) {
    return new FlowRate(unit.toCoherent(value));
  }

  @Override
  public Dimension dimension() {
    return Dimension.FLOW_RATE;
  }

  @Override
  public double coherent() {
    return cubicMetresPerSecond;
  }
}
