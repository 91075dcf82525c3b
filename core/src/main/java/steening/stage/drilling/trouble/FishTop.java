package steening.stage.drilling.trouble;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Length;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.reckoning.Answer;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Term;
import steening.stage.drilling.DrillingStage;
import steening.stage.drilling.hole.HoleVolume;

/**
 * Where the top of lost tools is to be expected, and how far they hang above the bottom where it was felt.
 *
 * <p>F = Σ l; T = z − F; b = x + F; h = z − b. l lengths left in the hole, z hole depth, T top on the bottom, x top as
 * felt, b lower end, h height over the bottom.
 *
 * <p>Source: arithmetic. Range: F not more than z. Accuracy: that of the lengths; a broken rod leaves an end unknown.
 */
public final class FishTop {
  static final QuantityField DEPTH = HoleVolume.DEPTH;

  static final Answer FISH = new Answer("fish", Phrase.of("length of the fish", "longitud de lo perdido"), Scale.DEPTH);
  static final Answer TOP =
      new Answer("top", Phrase.of("top expected, on the bottom", "tope esperado, en el fondo"), Scale.DEPTH);
  static final Answer LOWER =
      new Answer("lower-end", Phrase.of("lower end, as felt", "extremo inferior, según lo tocado"), Scale.DEPTH);
  static final Answer HANGS =
      new Answer("above-bottom", Phrase.of("hangs above the bottom", "cuelga sobre el fondo"), Scale.DEPTH);

  public static final Reckoning RECKONING = new Reckoning(
      "fish-top",
      DrillingStage.NAME,
      Phrase.of("Top of lost tools", "Tope de la herramienta perdida"),
      List.of(DEPTH, TroubleEntries.LENGTHS, TroubleEntries.FELT),
      List.of(FISH, TOP, LOWER, HANGS),
      Source.derived("Arithmetic.", "Aritmética."),
      List.of(Phrase.of(
          "Tools upright on a bottom without fill; where they lean or stand on fill, the top is higher.",
          "Herramienta parada en un fondo sin relleno; si se recarga o hay relleno, el tope está más arriba.")),
      FishTop::reckon);

  private FishTop() {}

  static Outcome of(Length depth, List<Quantity> lengths, Optional<Length> felt) {
    Inputs inputs = Inputs.none().with(DEPTH, depth).with(TroubleEntries.LENGTHS, lengths);
    return RECKONING.of(felt.map(f -> inputs.with(TroubleEntries.FELT, f)).orElse(inputs));
  }

  private static Outcome reckon(Inputs inputs) {
    List<Term> lengths = new ArrayList<>();
    for (Quantity length : inputs.value(TroubleEntries.LENGTHS)) {
      String symbol = "l" + Term.index(lengths.size() + 1);
      lengths.add(Term.given(symbol, TroubleEntries.LENGTHS.label(), Scale.DEPTH, length));
    }
    Term fish = Term.sum(lengths).named("F", FISH.label(), FISH.scale());
    Term depth = inputs.given("z", DEPTH);
    Term top = depth.minus(fish).named("T", TOP.label(), TOP.scale());
    if (top.quantity().coherent() < 0) {
      throw new NotReckonable(
          "What is left in the hole is longer than the hole is deep.",
          "Lo que quedó en el barreno es más largo que su profundidad.");
    }
    Outcome outcome = Outcome.empty().with(FISH.name(), fish).with(TOP.name(), top);
    if (inputs.find(TroubleEntries.FELT).isEmpty()) return outcome;
    Term lower = inputs.given("x", TroubleEntries.FELT).plus(fish).named("b", LOWER.label(), LOWER.scale());
    Term hangs = depth.minus(lower).named("h", HANGS.label(), HANGS.scale());
    return outcome.with(LOWER.name(), lower).with(HANGS.name(), hangs);
  }
}
