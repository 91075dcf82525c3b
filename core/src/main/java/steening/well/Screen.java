package steening.well;

import steening.quantity.Length;

/** A screen as it stands: upper and lower end below ground, and the entry it was measured in. */
public record Screen(Length top, Length bottom, String entry) {
  public Length length() {
    return bottom.minus(top);
  }
}
