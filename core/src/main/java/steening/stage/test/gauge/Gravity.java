package steening.stage.test.gauge;

/** Standard gravity, exact by definition. */
final class Gravity {
  static final double METRES_PER_SECOND_SQUARED = 9.80665;

  private Gravity() {}
}
