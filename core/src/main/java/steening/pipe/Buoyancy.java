package steening.pipe;

import java.util.List;
import java.util.Optional;
import steening.bore.Annulus;
import steening.language.Phrase;
import steening.quantity.Density;
import steening.quantity.Length;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Answer;
import steening.reckoning.Coefficient;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.reckoning.Source;
import steening.reckoning.Term;

/**
 * What a plastic casing string weighs in the air, hanging open in a fluid, and closed at the bottom, where it may
 * float.
 *
 * <p>N = (w + π/4 d² ρᵢ − π/4 D² ρₒ) L closed; S = w L (1 − ρₒ / ρₚ) open; w weight per length, D and d outside and
 * inside diameter, ρₒ and ρᵢ densities outside and inside, ρₚ density of PVC, L length.
 *
 * <p>Source: geometry; specific gravity of PVC 1.40 ± 0.02 in a manufacturer's property table (seen); water 8.34 lb/gal
 * in a trade article (seen). Accuracy: pipe weights are printed on least, average or nominal wall and differ by 8 %.
 */
public final class Buoyancy {
  public static final Answer IN_AIR = new Answer("in-air", Phrase.of("weight in air", "peso en el aire"), Scale.WEIGHT);
  public static final Answer OPEN =
      new Answer("open", Phrase.of("hanging weight, open bottom", "peso suspendido, fondo abierto"), Scale.WEIGHT);
  public static final Answer CLOSED = new Answer(
      "closed", Phrase.of("net downward force, closed bottom", "fuerza neta hacia abajo, fondo cerrado"),
      Scale.WEIGHT);
  public static final List<Answer> ANSWERS = List.of(IN_AIR, OPEN, CLOSED);
  public static final Source SOURCE = Source.derived(
      "Geometry; specific gravity of PVC 1.40 from a manufacturer's property table (seen).",
      "Geometría; densidad relativa del PVC 1.40 de la tabla de un fabricante (vista).");

  /** Fresh water, as the trade reckons it. */
  public static final Density WATER = Density.of(8.34, Unit.POUND_PER_GALLON);

  private static final double PVC_SPECIFIC_GRAVITY = 1.40;
  private static final Density PVC = new Density(PVC_SPECIFIC_GRAVITY * WATER.kilogramsPerCubicMetre());

  private Buoyancy() {}

  /**
   * The three weights.
   *
   * @param perLength the printed weight per length; reckoned from the diameters where it is absent
   * @param around density of the fluid outside
   * @param within density of the fluid inside a closed string; zero for an empty one
   * @throws NotReckonable where the inside is not smaller than the outside
   */
  public static Outcome of(
      Length outside, Length inside, Optional<Quantity> perLength, Length length, Density around, Density within) {
    if (!outside.isMoreThan(inside)) {
      throw new NotReckonable(
          "The inside diameter must be less than the outside diameter.",
          "El diámetro interior debe ser menor que el exterior.");
    }
    Term across = Term.given("D", Phrase.of("outside diameter", "diámetro exterior"), Scale.DIAMETER, outside)
        .squared();
    Term bore = Term.given("d", Phrase.of("inside diameter", "diámetro interior"), Scale.DIAMETER, inside).squared();
    Term plastic = Term.given("ρₚ", Phrase.of("density of PVC", "densidad del PVC"), Scale.DENSITY, PVC);
    Term fluid = Term.given("ρₒ", Phrase.of("density outside", "densidad exterior"), Scale.DENSITY, around);
    Term filling = Term.given("ρᵢ", Phrase.of("density inside", "densidad interior"), Scale.DENSITY, within);
    Term run = Term.given("L", Phrase.of("length of the string", "longitud de la columna"), Scale.DEPTH, length);
    Term quarterPi = Coefficient.giving(Scale.PIPE_WEIGHT, Annulus.QUARTER_PI).of(Scale.DIAMETER, 2).of(Scale.DENSITY)
        .term();
    Phrase heft = Phrase.of("pipe weight per length", "peso del tubo por longitud");
    Term weight = perLength
        .map(w -> Term.given("w", heft, Scale.PIPE_WEIGHT, w))
        .orElseGet(() -> quarterPi.times(across.minus(bore)).times(plastic).named("w", heft, Scale.PIPE_WEIGHT));
    Term air = weight.times(run).named("W", IN_AIR.label(), IN_AIR.scale());
    Term open = air.times(Term.number(1).minus(fluid.over(plastic))).named("S", OPEN.label(), OPEN.scale());
    Term closed = weight
        .plus(quarterPi.times(bore).times(filling))
        .minus(quarterPi.times(across).times(fluid))
        .times(run)
        .named("N", CLOSED.label(), CLOSED.scale());
    Outcome outcome = Outcome.empty().with(IN_AIR.name(), air).with(OPEN.name(), open).with(CLOSED.name(), closed);
    if (closed.quantity().coherent() >= 0) return outcome;
    return outcome.remarking(Phrase.of(
        "With a closed bottom it floats: hold it down, or fill it.",
        "Con el fondo cerrado flota: sujétela o llénela."));
  }
}
