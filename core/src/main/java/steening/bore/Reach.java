package steening.bore;

import steening.quantity.Length;

/**
 * A stretch of one diameter.
 *
 * @param from the upper end, below ground; above ground it is negative
 * @param to the lower end, deeper than {@code from}
 */
public record Reach(Length from, Length to, Length diameter) {
  public Reach {
    if (!to.isMoreThan(from)) throw new IllegalArgumentException("a reach ends below where it begins");
    if (diameter.nanometres() < 0) throw new IllegalArgumentException("a diameter below zero");
  }

  public Length length() {
    return to.minus(from);
  }
}
