package steening.well;

import java.util.Optional;
import org.pcollections.PVector;
import org.pcollections.TreePVector;
import steening.journal.Moment;
import steening.quantity.Quantity;

/**
 * The chlorine still in the water after a disinfection. Another dose makes the readings before it say nothing.
 *
 * @param dosed when chlorine was last put in
 * @param readings in order of time
 */
public record Residual(Optional<Moment> dosed, PVector<Reading> readings) {
  public static final Part<Residual> PART = Part.ofHole("residual", new Residual(Optional.empty(), TreePVector.empty()));

  /** One reading; the chlorine is a concentration. */
  public record Reading(Quantity chlorine, Moment at, String entry) {
    public boolean isZero() {
      return chlorine.coherent() == 0;
    }
  }

  public Residual dosed(Moment at) {
    return new Residual(Optional.of(at), readings);
  }

  public Residual read(Reading reading) {
    return new Residual(dosed, readings.plus(reading));
  }

  /** The latest reading, unless chlorine was put in after it. */
  public Optional<Reading> standing() {
    if (readings.isEmpty()) return Optional.empty();
    Reading last = readings.get(readings.size() - 1);
    boolean overtaken = dosed.isPresent() && dosed.get().isAfter(last.at());
    return overtaken ? Optional.empty() : Optional.of(last);
  }
}
