package steening.field;

import java.util.Optional;
import steening.quantity.Quantity;

/** The least and the most an amount may be, both included; either may be missing. */
record Bounds(Optional<Quantity> least, Optional<Quantity> most) {
  static final Bounds NONE = new Bounds(Optional.empty(), Optional.empty());

  static Bounds of(Quantity least, Quantity most) {
    return new Bounds(Optional.of(least), Optional.of(most));
  }

  boolean hold(Quantity quantity) {
    double size = quantity.coherent();
    return least.map(l -> size >= l.coherent()).orElse(true) && most.map(m -> size <= m.coherent()).orElse(true);
  }
}
