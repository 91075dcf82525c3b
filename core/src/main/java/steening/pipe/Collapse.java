package steening.pipe;

import java.util.List;
import steening.language.Phrase;
import steening.quantity.Density;
import steening.quantity.Dimension;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Measure;
import steening.quantity.Pressure;
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
 * Whether a column of fluid around plastic casing presses it in.
 *
 * <p>A = 2 E m / ((1 − ν²)(R − 1)³); B = 2 E m / ((1 − ν²) R (R − 1)²); p = g (ρₒ − ρᵢ) H; F = B / p. R outside
 * diameter over least wall, E modulus, m share of it left when warm, ν Poisson's ratio, ρₒ and ρᵢ densities outside and
 * inside, H height of the column.
 *
 * <p>Source: form A with E = 400,000 psi and ν = 0.38 reproduces twelve published ratings within 1 % (seen; E and ν are
 * fitted, the page does not state them). Form B has the form of an appendix of ASTM F480 (memory); it is 4 to 7 %
 * lower, and remembered ratings of well casing lie between the two, so B is compared with. E is the least of cell class
 * 12454 (memory). Range: round, unsupported PVC, loaded for a short time, not slotted, not driven, up to 140 °F.
 */
public final class Collapse {
  public static final Answer STIFFNESS = new Answer("stiffness", Stiffness.LABEL, Scale.NUMBER);
  public static final Answer RATING_A =
      new Answer("rating-a", Phrase.of("collapse rating, form A", "resistencia al colapso, forma A"), Scale.PRESSURE);
  public static final Answer RATING_B =
      new Answer("rating-b", Phrase.of("collapse rating, form B", "resistencia al colapso, forma B"), Scale.PRESSURE);
  public static final Answer DIFFERENTIAL = new Answer(
      "differential", Phrase.of("pressure outside less inside", "presión exterior menos interior"), Scale.PRESSURE);
  public static final Answer SAFETY = new Answer(
      "safety", Phrase.of("safety: rating B over that pressure", "seguridad: resistencia B entre esa presión"),
      Scale.NUMBER);
  public static final Answer HIGHEST = new Answer(
      "max-column", Phrase.of("highest column at the safety wanted", "columna máxima con la seguridad deseada"),
      Scale.DEPTH);
  public static final List<Answer> ANSWERS = List.of(STIFFNESS, RATING_A, RATING_B, DIFFERENTIAL, SAFETY, HIGHEST);
  public static final Source SOURCE = Source.seen(
      "Form A reproduces 12 ratings of a published PVC pressure-pipe table within 1 %. Form B: ASTM F480 appendix, "
          + "from memory; the temperature shares too.",
      "La forma A reproduce con 1 % de error 12 valores de una tabla publicada de tubería de PVC. Forma B: la del "
          + "apéndice de ASTM F480, de memoria; también las partes por temperatura.");

  /** What is wanted where nothing else is said: a judgement, no published figure. */
  public static final double USUAL_SAFETY = 2;

  /** The temperature of the ratings. */
  public static final Quantity COOL = Measure.of(73, Unit.FAHRENHEIT);

  private static final double GRAVITY = 9.80665;
  private static final Quantity MODULUS = Pressure.of(400_000, Unit.PSI);
  private static final double POISSON = 0.38;

  private Collapse() {}

  /**
   * The ratings, the load and the margin between them.
   *
   * @param wall the least wall
   * @param temperature of the pipe's wall; setting cement warms it
   * @param around density of the fluid outside
   * @param within density of the fluid inside; zero for an empty casing
   * @param column height of both columns
   * @param wanted the safety wanted
   * @throws NotReckonable for a wall that leaves no bore, and above the limit of service
   */
  public static Outcome margin(
      Length outside, Length wall, Quantity temperature, Density around, Density within, Length column, double wanted) {
    if (!outside.isMoreThan(wall.times(2))) {
      throw new NotReckonable(
          "A wall of {0} leaves no bore in a pipe of {1}.", "Una pared de {0} no deja paso en un tubo de {1}.",
          new Figure(wall, Scale.DIAMETER), new Figure(outside, Scale.DIAMETER));
    }
    Term ratio = Term.given("D", Phrase.of("outside diameter", "diámetro exterior"), Scale.DIAMETER, outside)
        .over(Term.given("t", Phrase.of("least wall", "espesor mínimo"), Scale.DIAMETER, wall))
        .named("R", Phrase.of("dimension ratio", "relación diámetro/espesor"), Scale.NUMBER);
    Term left = Stiffness.left("m", temperature);
    Term stiff = Term.number(2)
        .times(Term.given("E", Phrase.of("modulus of the plastic", "módulo del plástico"), Scale.PRESSURE, MODULUS))
        .times(left);
    Term poisson = number("ν", Phrase.of("Poisson's ratio", "relación de Poisson"), POISSON);
    Term held = Term.number(1).minus(poisson.squared());
    Term slack = ratio.minus(Term.number(1));
    Term ratingA = stiff.over(held.times(slack.power(3))).named("A", RATING_A.label(), RATING_A.scale());
    Term ratingB = stiff.over(held.times(ratio).times(slack.squared())).named("B", RATING_B.label(), RATING_B.scale());
    Outcome ratings = Outcome.empty().with(STIFFNESS.name(), left)
        .with(RATING_A.name(), ratingA).with(RATING_B.name(), ratingB);
    return loaded(ratings, ratingB, around, within, column, wanted);
  }

  private static Outcome loaded(
      Outcome ratings, Term rating, Density around, Density within, Length column, double wanted) {
    Term heavier = Term.given("ρₒ", Phrase.of("density outside", "densidad exterior"), Scale.DENSITY, around)
        .minus(Term.given("ρᵢ", Phrase.of("density inside", "densidad interior"), Scale.DENSITY, within));
    Term gravity = Coefficient.giving(Scale.PRESSURE, GRAVITY).of(Scale.DENSITY).of(Scale.DEPTH).term();
    Term height = Term.given("H", Phrase.of("height of the column", "altura de la columna"), Scale.DEPTH, column);
    Term pressure = gravity.times(heavier).times(height).named("p", DIFFERENTIAL.label(), DIFFERENTIAL.scale());
    Outcome load = ratings.with(DIFFERENTIAL.name(), pressure);
    if (!(around.coherent() > within.coherent()) || column.nanometres() <= 0) {
      return load.remarking(Phrase.of("Nothing presses the casing in.", "Nada presiona el ademe hacia adentro."));
    }
    Term safety = rating.over(pressure).named("F", SAFETY.label(), SAFETY.scale());
    Term factor = number("f", Phrase.of("safety wanted", "seguridad deseada"), wanted);
    Term highest = rating.over(factor.times(gravity).times(heavier)).named("h", HIGHEST.label(), HIGHEST.scale());
    Outcome margin = load.with(SAFETY.name(), safety).with(HIGHEST.name(), highest);
    if (safety.quantity().coherent() >= wanted) return margin;
    return margin.remarking(Phrase.of(
        "Less than the safety wanted. Keep the casing full, lighten what is outside, or place it in lifts up to {0}.",
        "Menos que la seguridad deseada. Mantenga lleno el ademe, aligere lo de afuera o colóquelo en etapas de {0}.",
        margin.figure(HIGHEST.name())));
  }

  private static Term number(String symbol, Phrase label, double value) {
    return Term.given(symbol, label, Scale.NUMBER, new Measure(Dimension.NUMBER, value));
  }
}
