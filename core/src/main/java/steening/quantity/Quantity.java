package steening.quantity;

/** An amount of something, whatever unit it was read in. */
public interface Quantity {
  Dimension dimension();

  /** In the coherent unit of the dimension: metres, cubic metres, pascals, seconds. */
  double coherent();

  /**
   * In a given unit.
   *
   * @throws IllegalArgumentException when the unit measures something else
   */
  default double in(Unit unit) {
    if (unit.dimension() != dimension()) {
      throw new IllegalArgumentException(unit + " does not measure " + dimension());
    }
    return unit.fromCoherent(coherent());
  }
}
