package steening.bore;

import java.util.List;
import java.util.Optional;
import steening.language.Phrase;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.reckoning.Answer;
import steening.reckoning.Outcome;
import steening.reckoning.Source;
import steening.reckoning.Term;

/**
 * How far a pack goes down while the well is developed, and what it then still covers.
 *
 * <p>From s₁ H to s₂ H; H height of the pack. Sources differ: 5 to 10 % of the height, 10 to 20 % of what was placed
 * (both memory); in an even annulus a share of what was placed is that share of the height, so s₁ = 5 % and s₂ = 20 %.
 * Range: sand poured loose through water. Accuracy: the two ends are four apart; sound it again.
 */
public final class Settling {
  private static final double LEAST = 0.05;
  private static final double MOST = 0.20;

  public static final Answer FALLS =
      new Answer("falls-least", Phrase.of("goes down by at least", "baja al menos"), Scale.DEPTH);
  public static final Answer FALLS_MOST =
      new Answer("falls-most", Phrase.of("goes down by at most", "baja a lo más"), Scale.DEPTH);
  public static final Answer TOP =
      new Answer("top-least", Phrase.of("its top then, at the highest", "su tope entonces, lo más alto"), Scale.DEPTH);
  public static final Answer TOP_MOST =
      new Answer("top-most", Phrase.of("its top then, at the lowest", "su tope entonces, lo más bajo"), Scale.DEPTH);
  public static final Answer ABOVE =
      new Answer("above-most", Phrase.of("above the screen, at most", "sobre la rejilla, a lo más"), Scale.DEPTH);
  public static final Answer ABOVE_LEAST =
      new Answer("above-least", Phrase.of("above the screen, at least", "sobre la rejilla, al menos"), Scale.DEPTH);
  public static final List<Answer> ANSWERS = List.of(FALLS, FALLS_MOST, TOP, TOP_MOST, ABOVE, ABOVE_LEAST);

  public static final Source SOURCE = Source.memory(
      "Sources differ: 5 to 10 % of the height, 10 to 20 % of what was placed.",
      "Las fuentes difieren: 5 a 10 % de la altura, 10 a 20 % de lo vertido.");

  private Settling() {}

  /**
   * The answers for a pack.
   *
   * @param top as sounded
   * @param bottom of the pack, deeper
   */
  public static Outcome of(Length top, Length bottom, Optional<Length> screenTop) {
    Term above = Term.given("z", Phrase.of("top of the pack", "tope del filtro"), Scale.DEPTH, top);
    Term below = Term.given("z₀", Phrase.of("bottom of the pack", "fondo del filtro"), Scale.DEPTH, bottom);
    Term height = below.minus(above).named("H", Phrase.of("height of the pack", "altura del filtro"), Scale.DEPTH);
    Term least = Term.number(LEAST).times(height).named("f₁", FALLS.label(), Scale.DEPTH);
    Term most = Term.number(MOST).times(height).named("f₂", FALLS_MOST.label(), Scale.DEPTH);
    Term high = above.plus(least).named("z₁", TOP.label(), Scale.DEPTH);
    Term low = above.plus(most).named("z₂", TOP_MOST.label(), Scale.DEPTH);
    Outcome outcome = Outcome.empty()
        .with(FALLS.name(), least).with(FALLS_MOST.name(), most).with(TOP.name(), high).with(TOP_MOST.name(), low);
    if (screenTop.isEmpty()) return outcome;
    Term screen = Term.given("s", Phrase.of("top of the screen", "tope de la rejilla"), Scale.DEPTH, screenTop.get());
    return outcome
        .with(ABOVE.name(), screen.minus(high).named("a₁", ABOVE.label(), Scale.DEPTH))
        .with(ABOVE_LEAST.name(), screen.minus(low).named("a₂", ABOVE_LEAST.label(), Scale.DEPTH));
  }
}
