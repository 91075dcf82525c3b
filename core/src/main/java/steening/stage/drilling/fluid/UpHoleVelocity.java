package steening.stage.drilling.fluid;

import java.util.List;
import steening.bore.Annulus;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Answer;
import steening.reckoning.Coefficient;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Term;
import steening.stage.drilling.Drilling;
import steening.stage.drilling.DrillingEntries;
import steening.stage.drilling.DrillingStage;

/**
 * How fast the mud rises between rods and hole, and the pump rate for a wanted velocity.
 *
 * <p>v = Q / (π/4 (D² − d²)); Q = v π/4 (D² − d²); Q pump rate, D hole diameter, d outside diameter of the rods. In
 * gallons a minute, inches and feet the factor is 24.51.
 *
 * <p>Source: geometry; factor and worked example (530 gpm, 12.25 and 4.5 in, 100 ft/min) in a formulas handbook (seen).
 * Range: D more than d. Accuracy: rounding; a washed-out hole is slower.
 */
public final class UpHoleVelocity {
  public static final QuantityField RATE = DrillingEntries.PUMP_RATE.named("rate");
  public static final QuantityField HOLE = DrillingEntries.HOLE_DIAMETER.named("hole");
  public static final QuantityField ROD = DrillingEntries.ROD;
  static final QuantityField WANTED = QuantityField.of(
          "wanted", Scale.UPHOLE_VELOCITY, Phrase.of("velocity wanted", "velocidad deseada"), "120 ft/min", "36 m/min")
      .between("1 ft/min", "2000 ft/min").usually("30 ft/min", "400 ft/min").optional();

  /** Least of the usual advice of 100 to 150 ft/min; from memory. */
  public static final Quantity ADVISED = Measure.of(100, Unit.FOOT_PER_MINUTE);

  public static final Answer VELOCITY =
      new Answer("velocity", Phrase.of("up-hole velocity", "velocidad anular"), Scale.UPHOLE_VELOCITY);
  static final Answer NEEDED = new Answer(
      "rate-needed", Phrase.of("pump rate for the velocity wanted", "gasto para la velocidad deseada"), Scale.FLOW);

  public static final Reckoning RECKONING = new Reckoning(
      "up-hole-velocity",
      DrillingStage.NAME,
      Phrase.of("Up-hole velocity", "Velocidad anular"),
      List.of(RATE, HOLE, ROD, WANTED),
      List.of(VELOCITY, NEEDED),
      Source.seen(
          "Formulas handbook, annular velocity: 24.5 for gpm, inches, ft/min. The advised 100 to 150 ft/min: memory.",
          "Manual de fórmulas, velocidad anular: 24.5 para gpm, pulgadas y ft/min. Los 100 a 150 ft/min: de memoria."),
      List.of(Phrase.of(
          "A hole in gauge; where it is washed out, the mud is slower.",
          "Un barreno en calibre; donde está socavado, el lodo va más lento.")),
      UpHoleVelocity::reckon);

  private UpHoleVelocity() {}

  public static Outcome of(Drilling.Rig rig) {
    return RECKONING.of(Inputs.none().with(RATE, rig.pumpRate()).with(HOLE, rig.bit()).with(ROD, rig.rod()));
  }

  private static Outcome reckon(Inputs inputs) {
    Term squares = squares(inputs);
    Term wanted = inputs.given("u", WANTED, ADVISED);
    Term needed = Coefficient.giving(Scale.FLOW, Annulus.QUARTER_PI).of(Scale.UPHOLE_VELOCITY).of(Scale.DIAMETER, 2)
        .term()
        .times(wanted)
        .times(squares)
        .named("Qᵤ", NEEDED.label(), NEEDED.scale());
    return Outcome.empty().with(VELOCITY.name(), velocity(inputs)).with(NEEDED.name(), needed);
  }

  /** The velocity as a named term, for a reckoning that declares the same rate, hole and rod. */
  public static Term velocity(Inputs inputs) {
    return Coefficient.giving(Scale.UPHOLE_VELOCITY, 1 / Annulus.QUARTER_PI).of(Scale.FLOW).of(Scale.DIAMETER, -2)
        .term()
        .times(inputs.given("Q", RATE))
        .over(squares(inputs))
        .named("v", VELOCITY.label(), VELOCITY.scale());
  }

  private static Term squares(Inputs inputs) {
    if (!inputs.length(HOLE).isMoreThan(inputs.length(ROD))) {
      throw new NotReckonable("The hole must be wider than the rods.", "El barreno debe ser más ancho que la tubería.");
    }
    return inputs.given("D", HOLE).squared().minus(inputs.given("d", ROD).squared());
  }
}
