package steening.stage.pack;

import java.util.Optional;
import steening.bore.Annulus;
import steening.bore.Filled;
import steening.bore.Overbreak;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.reckoning.Outcome;
import steening.reckoning.Term;

/**
 * Pack that went in on top of something whose depth is known.
 *
 * @param from depth of what it went in on
 * @param sounded whether that was sounded, so that its reading may be off too
 * @param volume what went in
 */
record Run(Annulus annulus, Length from, boolean sounded, Term volume) {
  private static final Phrase FOUND = Phrase.of("tape found, below ground", "lectura hallada, bajo el terreno");
  private static final Phrase DIFFERENCE = Phrase.of("found less expected", "hallada menos esperada");
  private static final Phrase CHANCE = Phrase.of("chance of a bridge", "probabilidad de puente");
  private static final Phrase WEIGHED = Phrase.of("power of ten of the odds", "potencia de diez de las posibilidades");
  private static final Phrase WITHIN = Phrase.of("a bridge lies within", "un puente queda dentro de");

  /** Share of readings that find a bridge where pack is poured from the surface (common practice, no source). */
  private static final double BEFOREHAND = 0.05;

  /** A bridge may hang anywhere in so much hole above the true top. */
  private static final Length REACH = Length.feet(20);

  /** √(2π) and 1 / (2 ln 10). */
  private static final double ROOT_TWO_PI = 2.506628;
  private static final double HALF_LOG_E = 0.2171472;

  /** Odds of a thousand million to one are certainty. */
  private static final double CERTAIN = 9;

  Outcome expected(Optional<Length> stickUp) {
    return ExpectedTape.of(annulus, from, volume, sounded ? 2 : 1, stickUp);
  }

  Filled filled(Length top) {
    return new Filled(annulus, top, from, volume);
  }

  /**
   * Expected and found side by side, with the chance that what was found is a bridge: e = m − z; the odds beforehand
   * times the likelihood of e under an even chance over 20 ft, over its likelihood under the normal curve of width s.
   * No chance is given for a tape that goes deeper than expected.
   *
   * <p>Source: statistics by the book; the odds beforehand and the 20 ft are common practice, no source.
   */
  Outcome compared(Length found) {
    return compared(expected(Optional.empty()), found);
  }

  /** The same by what the hole took so far. */
  Outcome comparedByHole(Length found, Overbreak hole) {
    return compared(ExpectedTape.learned(annulus, from, volume, hole), found);
  }

  private static Outcome compared(Outcome outcome, Length found) {
    Term difference = Term.given("m", FOUND, Scale.DEPTH, found).minus(outcome.term(ExpectedTape.TAPE.name()))
        .named("e", DIFFERENCE, Scale.DEPTH);
    Outcome with = outcome.with("difference", difference);
    if (difference.quantity().coherent() >= 0) return with;
    Term spread = outcome.term(ExpectedTape.SPREAD.name());
    Term reach = Term.given("L", WITHIN, Scale.DEPTH, REACH);
    Term odds = Term.number(BEFOREHAND).over(1 - BEFOREHAND).times(spread).times(ROOT_TWO_PI).over(reach).log10();
    Term power = odds.plus(difference.over(spread).squared().times(HALF_LOG_E)).least(Term.number(CERTAIN))
        .named("x", WEIGHED, Scale.NUMBER);
    Term tenToThe = Term.number(10).power(power);
    Term chance = Term.number(100).over(Term.number(1).plus(Term.number(1).over(tenToThe)));
    return with.with("chance", chance.named("P", CHANCE, Scale.SHARE));
  }

  /** The chance of a bridge as a share of one; none where the tape went deeper than expected. */
  static double chance(Outcome compared) {
    return compared.answers().containsKey("chance") ? compared.quantity("chance").coherent() : 0;
  }

  static Figure expectedTape(Outcome outcome) {
    return outcome.figure(ExpectedTape.TAPE.name());
  }
}
