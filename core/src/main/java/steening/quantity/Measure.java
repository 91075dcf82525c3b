package steening.quantity;

/**
 * A quantity of a dimension that has no record of its own.
 *
 * @param coherent the value in the coherent unit
 */
public record Measure(Dimension dimension, double coherent) implements Quantity {
  public static Measure of(double value, Unit unit) {
    return new Measure(unit.dimension(), unit.toCoherent(value));
  }
}
