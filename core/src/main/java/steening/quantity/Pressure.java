package steening.quantity;

/** A pressure, or a difference of two. */
public record Pressure(double pascals) implements Quantity {
  public static Pressure of(double value, Unit unit) {
    return new Pressure(unit.toCoherent(value));
  }

  @Override
  public Dimension dimension() {
    return Dimension.PRESSURE;
  }

  @Override
  public double coherent() {
    return pascals;
  }
}
