package steening.fit;

/** What would be measured if the parameters were these. */
@FunctionalInterface
public interface Model {
  /**
   * The value for one reading; not a number where the model has none for such parameters.
   *
   * @param reading counted from 0
   */
  double at(int reading, double[] parameters);
}
