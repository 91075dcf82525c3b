package steening.ground;

import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Dimension;
import steening.quantity.Length;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.reckoning.Coefficient;
import steening.reckoning.Inputs;
import steening.reckoning.Term;

/**
 * How fast one grain sinks in still water.
 *
 * <p>w = g (G − 1) D² / (C₁ ν + √(0.75 C₂ g (G − 1) D³)); D diameter, G specific gravity of the grain, ν kinematic
 * viscosity of the water, C₁ = 18, C₂ the drag of the shape.
 *
 * <p>Source: Ferguson and Church 2004 (memory). Range: one grain in clear water at rest, at 0 to 30 °C; in a crowd, in
 * mud, and along a rough wall it sinks slower. Accuracy: 25 % for sand.
 */
public final class SettlingVelocity {
  /** The water it sinks in. */
  public static final QuantityField TEMPERATURE = Water.TEMPERATURE;

  /** Natural sand, by its sieve size. */
  public static final double SAND_DRAG = 1.0;

  /** Angular pieces. */
  public static final double ANGULAR_DRAG = 1.2;

  public static final Phrase VELOCITY = Phrase.of("speed of fall in still water", "velocidad de caída en agua quieta");

  private static final double GRAVITY_M_S2 = 9.80665;
  private static final double VISCOUS = 18;
  private static final double TURBULENT = 0.75;

  private SettlingVelocity() {}

  /**
   * The speed, as a named term.
   *
   * @param inputs that may give the temperature; 10 °C without
   * @param drag one of the two above
   */
  public static Term velocity(Inputs inputs, Length diameter, Quantity specificGravity, double drag) {
    Term size = Term.given("D", Phrase.of("diameter of a grain", "diámetro de un grano"), Scale.GRAIN, diameter);
    Term heavier = Term.given("G", Phrase.of("specific gravity of it", "su densidad relativa"), Scale.NUMBER,
            specificGravity)
        .minus(Term.number(1));
    return velocity(size, heavier, Water.viscosity(inputs), drag);
  }

  /**
   * The same in any fluid.
   *
   * @param size in the scale of grains
   * @param heavier how much denser than the fluid, as a share of the fluid's density
   * @param viscosity of the fluid, kinematic
   */
  public static Term velocity(Term size, Term heavier, Term viscosity, double drag) {
    Term shape = Term.given("C₂", Phrase.of("drag of its shape", "resistencia de su forma"), Scale.NUMBER,
        new Measure(Dimension.NUMBER, drag));
    Term turbulent = Coefficient.giving(Scale.VISCOSITY, TURBULENT * GRAVITY_M_S2)
        .of(Scale.GRAIN, 3).of(Scale.VISCOSITY, -1).term()
        .times(shape).times(heavier).times(size.power(3)).squareRoot();
    Term viscous = Term.number(VISCOUS).times(viscosity);
    return Coefficient.giving(Scale.ENTRANCE_VELOCITY, GRAVITY_M_S2)
        .of(Scale.GRAIN, 2).of(Scale.VISCOSITY, -1).term()
        .times(heavier).times(size.squared())
        .over(viscous.plus(turbulent))
        .named("w", VELOCITY, Scale.ENTRANCE_VELOCITY);
  }

  /** The time to sink so far, in minutes. */
  public static Term minutes(Term velocity, Length height) {
    Term fall = Term.given("H", Phrase.of("height of the fall", "altura de la caída"), Scale.DEPTH, height);
    return Coefficient.giving(Scale.MINUTES, 1).of(Scale.DEPTH).of(Scale.ENTRANCE_VELOCITY, -1).term()
        .times(fall).over(velocity)
        .named("tf", Phrase.of("time of the fall", "tiempo de caída"), Scale.MINUTES);
  }
}
