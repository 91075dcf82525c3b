package steening.bore;

import steening.language.Phrase;
import steening.quantity.Dimension;
import steening.quantity.Length;
import steening.quantity.Measure;
import steening.quantity.Scale;
import steening.reckoning.Answer;
import steening.reckoning.Outcome;
import steening.reckoning.Term;

/**
 * How high a lot stands on top of a sounded one, by what the hole took so far: z = z₀ − V / (R A), give or take
 * 2 √((g r)² + c² L r + 2 t²); z₀ where the tape found the top, V what went in since, A volume per length, R the ratio
 * learned and g how sure it is, r the rise, c and L the grain of the ground, t how well a tape is read. Source, range:
 * {@link Overbreak}.
 */
public final class CarriedTop {
  public static final Answer SPREAD =
      new Answer("deviation", Phrase.of("one standard deviation", "una desviación estándar"), Scale.DEPTH);
  public static final Answer BAND = new Answer("give-or-take", Phrase.of("give or take", "más o menos"), Scale.DEPTH);

  private CarriedTop() {}

  /** The answers: the top under its own name, {@code deviation}, {@code give-or-take}. */
  public static Outcome of(
      Answer top, Annulus annulus, Length bottom, Term volume, Overbreak hole, Length readTo) {
    Term ratio = Term.given("R", BagsLeft.RATIO.label(), Scale.NUMBER, hole.ratio().quantity());
    Term sure = Term.given(
        "g", Phrase.of("how sure that is", "qué tan seguro es eso"), Scale.NUMBER,
        new Measure(Dimension.NUMBER, hole.share()));
    Term gauge = volume.over(ratio)
        .named("V′", Phrase.of("as much of the drilled size", "su equivalente del diámetro perforado"), Scale.VOLUME);
    Term tape = annulus.top("z", top.label(), bottom, gauge);
    Term rise = rise(annulus, bottom, tape, gauge).named("r", Phrase.of("rise", "subida"), Scale.DEPTH);
    Term spread = sure.times(rise).squared().plus(hole.grain().times(rise))
        .plus(Term.number(2).times(read(readTo).squared())).squareRoot().named("s", SPREAD.label(), Scale.DEPTH);
    return banded(Outcome.empty().with(top.name(), tape), spread);
  }

  /** A top with its standard deviation, and twice that on either side. */
  public static Outcome banded(Outcome outcome, Term spread) {
    return outcome.with(SPREAD.name(), spread)
        .with(BAND.name(), Term.number(2).times(spread).named("w", BAND.label(), Scale.DEPTH));
  }

  /** How far a volume rises, by what the hole is like where it ends. */
  public static Term rise(Annulus annulus, Length bottom, Term top, Term volume) {
    Length height = ((Length) top.quantity()).max(shallowest(annulus)).min(bottom);
    return Annulus.perLength().times(volume).over(annulus.capacityAbove("A", height));
  }

  /** How well a tape is read, as a term. */
  public static Term read(Length readTo) {
    return Term.given("t", Phrase.of("how well a tape is read", "qué tan bien se lee la sonda"), Scale.DEPTH, readTo);
  }

  /** What would stand above the top of the hole is judged by what the hole is like there. */
  private static Length shallowest(Annulus annulus) {
    Length top = annulus.hole().isEmpty() ? Length.ZERO : annulus.hole().reaches().get(0).from();
    return top.plus(Length.feet(1));
  }
}
