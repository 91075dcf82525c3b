package steening.quantity;

/** A density: the weight of a mud or a grout by the balance. */
public record Density(double kilogramsPerCubicMetre) implements Quantity {
  public static Density of(double value, Unit unit) {
    return new Density(unit.toCoherent(value));
  }

  @Override
  public Dimension dimension() {
    return Dimension.DENSITY;
  }

  @Override
  public double coherent() {
    return kilogramsPerCubicMetre;
  }
}
