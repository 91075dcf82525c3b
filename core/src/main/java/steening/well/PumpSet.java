package steening.well;

import java.util.Optional;
import steening.quantity.FlowRate;
import steening.quantity.Length;
import steening.quantity.Pressure;
import steening.quantity.Quantity;
import steening.quantity.Volume;

/**
 * The pump that stands in the well, and the tank it fills.
 *
 * @param power of the motor
 * @param setting depth of the intake below ground
 * @param rate what it is to give
 * @param lift what it is chosen to lift from
 */
public record PumpSet(
    String model,
    Optional<String> serial,
    Quantity power,
    Length setting,
    FlowRate rate,
    Tank tank,
    DropPipe pipe,
    Lift lift,
    String entry) {
  public static final Part<Optional<PumpSet>> PART = Part.ofHole("pump", Optional.empty());

  /**
   * The pressure tank with its switch.
   *
   * @param size all of its volume, air and water
   * @param cutIn the pressure that starts the pump
   * @param cutOut the pressure that stops it
   * @param precharge the air in the empty tank
   */
  public record Tank(Volume size, Pressure cutIn, Pressure cutOut, Optional<Pressure> precharge) {}

  /**
   * The way from the pump to the tank.
   *
   * @param inside diameter
   * @param length all the way to the tank
   * @param rise of the tank above the ground at the well; negative where it stands lower
   * @param fittings the length of pipe that the fittings are worth
   */
  public record DropPipe(
      Optional<Length> inside, Optional<Length> length, Optional<Length> rise, Optional<Length> fittings) {
    public static final DropPipe UNKNOWN =
        new DropPipe(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
  }

  /**
   * The water level the pump was chosen for.
   *
   * @param level in the long run, below ground
   * @param allowance further down in a dry year
   */
  public record Lift(Optional<Length> level, Optional<Length> allowance) {
    public static final Lift UNKNOWN = new Lift(Optional.empty(), Optional.empty());
  }
}
