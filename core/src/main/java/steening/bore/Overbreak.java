package steening.bore;

import java.util.List;
import java.util.Optional;
import steening.language.Phrase;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Term;

/**
 * How much more than the drilled size a hole takes, learned from what went in already.
 *
 * <p>R = V / V₀; its logarithm is normal: before anything went in as the ground usually has it, mean R₀ give or take
 * s₀; what went in weighs with the variance v = c² L / H + k (t / H)², so its share is w = a / (a + v), a the variance
 * before. V put in, V₀ what the stretch of length H holds by the bit; c = max(0.32 (R̄ − 1); 0.03), R̄ midway between R₀
 * and the ratio found, how much R differs from one stretch of length L to the next; t how well a tape is read, k how
 * many tapes the stretch lies between. All in powers of ten; 0.4342945 = 1 / ln 10, 0.1886117 its square.
 *
 * <p>What is left to fill begins at the tape that ended the stretch: a tape read too high makes the hole look narrow
 * and the rest short at once, so the two errors add up: (w / H + 1 / H′)² t² and not the sum of the squares.
 *
 * <p>Source: Bayes' rule for a normal mean, statistics by the book. R₀, s₀, c, L, t: common practice, no source. Range:
 * ground above the tape like the ground below it; {@link #inOtherGround} where it is another bed.
 *
 * @param centre the ratio to begin with
 * @param logarithm of the ratio, in powers of ten
 * @param spread its variance
 * @param uneven how much the ratio differs from one stretch to the next
 * @param shared how much the last tape told of the ratio: w / H
 * @param readTo how well the tape is read on what goes in
 */
public record Overbreak(
    Term centre, Term logarithm, Term spread, Term uneven, Optional<Term> shared, Length readTo) {
  /**
   * Ground that breaks away more does so less evenly: 0.32 of what it takes beyond the drilled size, and no less than
   * a lot of bags differs from the next, between neighbouring stretches of five feet (common practice, no source; 0.32
   * and 0.03 were chosen so that the bands hold what they say, see docs/coverage.md). What it takes is read halfway
   * between the usual and the found, so that a stretch found tight by chance is not also taken to be even.
   */
  private static final double UNEVEN = 0.32;
  private static final double LEAST_UNEVEN = 0.03;
  private static final Length STRETCH = Length.feet(5);

  /** How well a weighted tape is read on sand, one to two tenths, and on soft grout (common practice, no source). */
  private static final Length ON_SAND = Length.of(0.15, Unit.FOOT);
  private static final Length ON_GROUT = Length.of(0.3, Unit.FOOT);

  /** How far one bed of a well tells of the next: half (a judgement; common practice, no source). */
  private static final double ALIKE = 0.5;

  public static final Phrase FOUND = Phrase.of("ratio found here", "razón hallada aquí");
  public static final Phrase FILLED = Phrase.of("stretch filled", "tramo llenado");
  private static final Phrase DIFFERS = Phrase.of("how much that ratio differs", "cuánto difiere esa razón");
  private static final double LOG_E = 0.4342945;
  private static final double LOG_E_SQUARED = 0.1886117;

  /** Before anything went in. */
  public static Overbreak usually(UsualOverbreak ground) {
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
    return new Overbreak(mean, usual, varies, uneven(mean, ""), Optional.empty(), ON_SAND);
  }

  /** The same for what is sounded on grout from now on. */
  public Overbreak onGrout() {
    return new Overbreak(centre, logarithm, spread, uneven, shared, ON_GROUT);
  }

  /** After a stretch was filled and sounded. */
  public Overbreak having(Taken taken) {
    return having(taken, "");
  }

  /** The same with a mark on its symbols, for a working that speaks of another stretch too. */
  public Overbreak having(Taken taken, String mark) {
    Term holds = taken.annulus().volume(
        "V₀" + mark, mark,
        Phrase.of("what the stretch holds by the drilled size", "lo que cabe en el tramo según lo perforado"),
        taken.top(), taken.bottom());
    Term ratio = taken.placed().over(holds)
        .named("F" + mark, FOUND, Scale.NUMBER);
    Term length = Term.given("H" + mark, FILLED, Scale.DEPTH, taken.bottom().minus(taken.top()));
    return having(ratio, length, taken.sounded(), mark);
  }

  /** The same by the ratio that was found over a length. */
  public Overbreak having(Term ratio, Term length, boolean sounded, String mark) {
    Term differs = uneven(ratio.plus(centre).over(2), mark);
    Term found = ratio.log10()
        .named("y" + mark, Phrase.of("power of ten, found here", "potencia de diez, hallada aquí"), Scale.NUMBER);
    Term tapes = tape(mark).over(length).squared();
    Term share = ofGround(differs, length).plus(sounded ? Term.number(2).times(tapes) : tapes);
    Term variance = Term.number(LOG_E_SQUARED).times(share)
        .named("v" + mark, Phrase.of("variance of what was found", "varianza de lo hallado"), Scale.NUMBER);
    Term weight = spread.over(spread.plus(variance))
        .named("w" + mark, Phrase.of("share of what was found", "parte de lo hallado"), Scale.NUMBER);
    return new Overbreak(
        centre,
        logarithm.plus(weight.times(found.minus(logarithm)))
            .named("q" + mark, Phrase.of("power of ten, both weighed", "potencia de diez, ambas ponderadas"),
                Scale.NUMBER),
        weight.times(variance)
            .named("g" + mark, Phrase.of("variance, both weighed", "varianza, ambas ponderadas"), Scale.NUMBER),
        differs, Optional.of(weight.over(length)), readTo);
  }

  /**
   * Carried into another bed of the same well, which is half like this one: the usual and half of what was learned,
   * q′ = p + ρ (q − p), its variance a − ρ² (a − g), as of two normal quantities with the correlation ρ.
   */
  public Overbreak inOtherGround(Overbreak usually) {
    Term alike = Term.number(ALIKE);
    Term carried = usually.logarithm.plus(alike.times(logarithm.minus(usually.logarithm)))
        .named("p′", Phrase.of("power of ten, carried on", "potencia de diez, llevada adelante"), Scale.NUMBER);
    Term less = Term.number(ALIKE * ALIKE).times(usually.spread.minus(spread));
    Term centre = Term.number(10).power(carried)
        .named("R′", Phrase.of("ratio, carried on", "razón, llevada adelante"), Scale.NUMBER);
    return new Overbreak(
        centre, carried,
        usually.spread.minus(less)
            .named("a′", Phrase.of("variance, carried on", "varianza, llevada adelante"), Scale.NUMBER),
        uneven(centre, "′"), Optional.empty(), readTo);
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
    Term one = tape("").over(length);
    Term tapes = shared
        .map(s -> one.squared().plus(Term.number(2).times(tape("").squared()).times(s).over(length)))
        .orElse(one.squared());
    return spread.plus(Term.number(LOG_E_SQUARED).times(ofGround(uneven, length).plus(tapes)))
        .named("f", Phrase.of("variance for what is left", "varianza de lo que falta"), Scale.NUMBER);
  }

  /** c² L, by which the variance of a rise grows with the rise; c as it was found, a number. */
  public Term grain() {
    return Term.given("c", DIFFERS, Scale.NUMBER, uneven.quantity()).squared().times(stretch());
  }

  private static Term ofGround(Term uneven, Term length) {
    return uneven.squared().times(stretch()).over(length);
  }

  private static Term uneven(Term ratio, String mark) {
    return Term.number(UNEVEN).times(ratio.minus(Term.number(1))).most(Term.number(LEAST_UNEVEN))
        .named("c" + mark, DIFFERS, Scale.NUMBER);
  }

  private static Term stretch() {
    return Term.given(
        "L", Phrase.of("from one such stretch to the next", "de un tramo así al siguiente"), Scale.DEPTH, STRETCH);
  }

  private Term tape(String mark) {
    return Term.given(
        "t" + mark, Phrase.of("how well a tape is read", "qué tan bien se lee la sonda"), Scale.DEPTH, readTo);
  }

  /** For those who list where the numbers come from. */
  public static List<Phrase> validity() {
    return List.of(
        Phrase.of(
            "Ground above the tape like the ground below it.", "Terreno arriba de la sonda como el de abajo."),
        Phrase.of(
            "Usually 1.14 ± 0.12 times the drilled size, 0.32 of the excess between stretches of 5 ft, a tape to"
                + " 0.15 ft on sand and 0.3 ft on grout: common practice, no source.",
            "Por lo común 1.14 ± 0.12 veces lo perforado, 0.32 del exceso entre tramos de 1.5 m, sonda a"
                + " 0.05 m en arena y 0.09 m en lechada: práctica común, sin fuente."));
  }
}
