package steening.bore;

import steening.quantity.Dimension;
import steening.quantity.Measure;
import steening.quantity.Quantity;

/**
 * How many times the drilled size holes take before anything is known of this one: the mean, and its standard deviation
 * from well to well.
 */
public record UsualOverbreak(Quantity mean, Quantity spread) {
  /** 1.0 to 1.25 times the drilled size is met, the tail goes further up than down (common practice, no source). */
  public static final Quantity MEAN = number(1.14);

  /** Most wells within 1.0 and 1.25 (common practice, no source). */
  public static final Quantity SPREAD = number(0.12);

  /** Where a firm has not said what it meets. */
  public static final UsualOverbreak ANYWHERE = new UsualOverbreak(MEAN, SPREAD);

  public static UsualOverbreak of(double mean, double spread) {
    return new UsualOverbreak(number(mean), number(spread));
  }

  private static Quantity number(double value) {
    return new Measure(Dimension.NUMBER, value);
  }
}
