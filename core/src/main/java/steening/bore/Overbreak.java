package steening.bore;

import java.util.List;
import java.util.Optional;
import steening.language.Phrase;
import steening.quantity.Dimension;
import steening.quantity.Length;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Term;

/**
 * How much more than the drilled size a hole takes, learned from what went in already.
 *
 * <p>R = V / V₀; its logarithm is normal: before anything went in as the ground usually has it, mean R₀ give or take
 * s₀; what went in weighs with the variance c² L / H + 2 (t / H)². V put in, V₀ what the stretch of length H holds by
 * the bit; c = max(0.37 (R̄ − 1); 0.03), R̄ midway between R₀ and the ratio found, how much R differs from one
 * stretch of length L to the next; t how well a tape is read. All in powers of ten; 0.4342945 = 1 / ln 10, 0.1886117
 * its square.
 *
 * <p>Source: Bayes' rule for a normal mean, statistics by the book. R₀, s₀, c, L, t: common practice, no source. Range:
 * ground above the tape like the ground below it.
 *
 * @param logarithm of the ratio, in powers of ten
 * @param spread its variance
 * @param uneven how much the ratio differs from one stretch to the next
 */
public record Overbreak(Term logarithm, Term spread, Term uneven) {
  /** 1.0 to 1.25 times the drilled size is met, the tail goes further up than down (common practice, no source). */
  public static final Quantity USUAL = new Measure(Dimension.NUMBER, 1.14);

  /** Most wells within 1.0 and 1.25 (common practice, no source). */
  public static final Quantity USUAL_SPREAD = new Measure(Dimension.NUMBER, 0.12);

  /**
   * Ground that breaks away more does so less evenly: 0.37 of what it takes beyond the drilled size, and no less than
   * a lot of bags differs from the next, between neighbouring stretches of five feet (common practice, no source; 0.37
   * and 0.03 were chosen so that the bands hold what they say, see docs/coverage.md). What it takes is read halfway
   * between the usual and the found, so that a stretch found tight by chance is not also taken to be even.
   */
  private static final double UNEVEN = 0.37;
  private static final double LEAST_UNEVEN = 0.03;
  private static final Length STRETCH = Length.feet(5);

  /** How well a weighted tape is read: one to two tenths (common practice, no source). */
  private static final Length READ_TO = Length.of(0.15, Unit.FOOT);

  private static final Phrase DIFFERS = Phrase.of("how much that ratio differs", "cuánto difiere esa razón");
  private static final double LOG_E = 0.4342945;
  private static final double LOG_E_SQUARED = 0.1886117;

  /** A stretch that was filled and sounded at both ends. */
  public record Seen(Annulus annulus, Length top, Length bottom, Term placed) {}

  /** How much of the drilled size the ground usually takes, before anything is known. */
  public record Ground(Quantity mean, Quantity spread) {
    public static final Ground USUALLY = new Ground(USUAL, USUAL_SPREAD);
  }

  public static Overbreak of(Ground ground, Optional<Seen> seen) {
    Term mean = Term.given(
        "R₀", Phrase.of("usual ratio, placed over drilled", "razón usual, vertido entre perforado"), Scale.NUMBER,
        ground.mean());
    Term deviation = Term.given(
        "s₀", Phrase.of("its standard deviation", "su desviación estándar"), Scale.NUMBER, ground.spread());
    Term wide = Term.number(1).plus(deviation.over(mean).squared());
    Term usual = mean.over(wide.squareRoot()).log10()
        .named("p", Phrase.of("power of ten, usually", "potencia de diez, usual"), Scale.NUMBER);
    Term varies = Term.number(LOG_E).times(wide.log10())
        .named("a", Phrase.of("its variance", "su varianza"), Scale.NUMBER);
    return seen.map(s -> learned(mean, usual, varies, s)).orElse(new Overbreak(usual, varies, uneven(mean)));
  }

  private static Overbreak learned(Term mean, Term usual, Term varies, Seen seen) {
    Term holds = seen.annulus().volume(
        "V₀", Phrase.of("what the stretch holds by the drilled size", "lo que cabe en el tramo según lo perforado"),
        seen.top(), seen.bottom());
    Term ratio = seen.placed().over(holds)
        .named("F", Phrase.of("ratio found here", "razón hallada aquí"), Scale.NUMBER);
    Term uneven = uneven(ratio.plus(mean).over(2));
    Term found = ratio.log10()
        .named("y", Phrase.of("power of ten, found here", "potencia de diez, hallada aquí"), Scale.NUMBER);
    Term length = Term.given(
        "H", Phrase.of("stretch filled", "tramo llenado"), Scale.DEPTH, seen.bottom().minus(seen.top()));
    Term share = ofGround(uneven, length).plus(Term.number(2).times(tape().over(length).squared()));
    Term variance = Term.number(LOG_E_SQUARED).times(share)
        .named("v", Phrase.of("variance of what was found", "varianza de lo hallado"), Scale.NUMBER);
    Term together = varies.plus(variance);
    return new Overbreak(
        usual.times(variance).plus(found.times(varies)).over(together)
            .named("q", Phrase.of("power of ten, both weighed", "potencia de diez, ambas ponderadas"), Scale.NUMBER),
        varies.times(variance).over(together)
            .named("g", Phrase.of("variance, both weighed", "varianza, ambas ponderadas"), Scale.NUMBER),
        uneven);
  }

  /** As likely to be more as to be less. */
  public Term ratio() {
    return Term.number(10).power(logarithm)
        .named("R", Phrase.of("ratio to reckon with", "razón con que contar"), Scale.NUMBER);
  }

  /** The relative deviation of the ratio over the whole of a long stretch. */
  public double share() {
    return Math.sqrt(spread.quantity().coherent() / LOG_E_SQUARED);
  }

  /** Variance of the logarithm for a stretch still to fill from a tape upward, in powers of ten squared. */
  Term ahead(Term length) {
    return spread.plus(Term.number(LOG_E_SQUARED).times(ofGround(uneven, length).plus(tape().over(length).squared())))
        .named("f", Phrase.of("variance for what is left", "varianza de lo que falta"), Scale.NUMBER);
  }

  /** c² L, by which the variance of a rise grows with the rise; c as it was found, a number. */
  public Term grain() {
    return Term.given("c", DIFFERS, Scale.NUMBER, uneven.quantity()).squared().times(stretch());
  }

  private static Term ofGround(Term uneven, Term length) {
    return uneven.squared().times(stretch()).over(length);
  }

  private static Term uneven(Term ratio) {
    return Term.number(UNEVEN).times(ratio.minus(Term.number(1))).most(Term.number(LEAST_UNEVEN))
        .named("c", DIFFERS, Scale.NUMBER);
  }

  private static Term stretch() {
    return Term.given(
        "L", Phrase.of("from one such stretch to the next", "de un tramo así al siguiente"), Scale.DEPTH, STRETCH);
  }

  private static Term tape() {
    return Term.given(
        "t", Phrase.of("how well a tape is read", "qué tan bien se lee la sonda"), Scale.DEPTH, READ_TO);
  }

  /** For those who list where the numbers come from. */
  public static List<Phrase> validity() {
    return List.of(
        Phrase.of(
            "Ground above the tape like the ground below it.", "Terreno arriba de la sonda como el de abajo."),
        Phrase.of(
            "Usually 1.14 ± 0.12 times the drilled size, 0.37 of the excess between stretches of 5 ft, a tape to"
                + " 0.15 ft: common practice, no source.",
            "Por lo común 1.14 ± 0.12 veces lo perforado, 0.37 del exceso entre tramos de 1.5 m, sonda a 0.05 m:"
                + " práctica común, sin fuente."));
  }
}
