package steening.quantity;

/** A volume. Derived volumes are doubles; see {@link Length} for what is measured. */
public record Volume(double cubicMetres) implements Quantity {
  public static final Volume NONE = new Volume(0);

  public static Volume of(double value, Unit unit) {
    return new Volume(unit.toCoherent(value));
  }

  public Volume plus(Volume other) {
    return new Volume(cubicMetres + other.cubicMetres);
  }

  public Volume minus(Volume other) {
    return new Volume(cubicMetres - other.cubicMetres);
  }

  public Volume times(double factor) {
    return new Volume(cubicMetres * factor);
  }

  @Override
  public Dimension dimension() {
    return Dimension.VOLUME;
  }

  @Override
  public double coherent() {
    return cubicMetres;
  }
}
