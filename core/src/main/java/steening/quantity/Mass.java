package steening.quantity;

/** A mass; the trade says weight. */
public record Mass(double kilograms) implements Quantity {
  public static Mass of(double value, Unit unit) {
    return new Mass(unit.toCoherent(value));
  }

  public Mass times(double factor) {
    return new Mass(kilograms * factor);
  }

  @Override
  public Dimension dimension() {
    return Dimension.MASS;
  }

  @Override
  public double coherent() {
    return kilograms;
  }
}
