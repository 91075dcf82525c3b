package steening.stage.casing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.finding.Expectation;
import steening.language.Phrase;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.reckoning.Outcome;
import steening.reckoning.Term;
import steening.well.CasingString;
import steening.well.Piece;
import steening.well.Plan;
import steening.well.Well;

/**
 * What is still to come while the string is run: joints, the cut piece before the saw, the stick-up before it is set.
 */
final class CasingExpectations {
  private CasingExpectations() {}

  static List<Expectation> of(Well well) {
    CasingString string = well.get(CasingString.PART);
    Optional<ToCome> toCome = ToCome.of(well);
    if (string.isSet() || string.pieces().isEmpty() || toCome.isEmpty()) return List.of();
    boolean cut = string.count(Piece.Sort.CUT_PIECE) > 0;
    return cut || toCome.get().isComplete() ? stickUp(well, string) : pieces(toCome.get());
  }

  private static List<Expectation> pieces(ToCome toCome) {
    Outcome outcome = toCome.outcome();
    List<Expectation> expectations = new ArrayList<>();
    expectations.add(new Expectation(
        Phrase.of("casing still to come", "ademe que falta"), outcome.figure("casing"), Optional.empty(), outcome));
    expectations.add(new Expectation(
        Phrase.of("whole joints still to come", "tubos enteros que faltan"), outcome.figure("joints"), Optional.empty(),
        outcome));
    expectations.add(new Expectation(
        Phrase.of("length of the cut piece", "longitud del tramo cortado"), outcome.figure("cut-piece"),
        Optional.empty(), outcome));
    return expectations;
  }

  /** The string as it hangs, standing where it is planned to end. */
  private static List<Expectation> stickUp(Well well, CasingString string) {
    Optional<Length> bottom = well.get(Plan.PART).stringBottom();
    if (bottom.isEmpty()) return List.of();
    Term stickUp = Term.given("S", StringLength.STRING.label(), Scale.DEPTH, string.length())
        .minus(Term.given(
            "B", Phrase.of("planned string bottom", "fondo planeado de la columna"), Scale.DEPTH, bottom.get()))
        .named("a", Plan.STICK_UP.label(), Scale.DEPTH);
    Outcome outcome = Outcome.empty().with("stick-up", stickUp);
    return List.of(new Expectation(
        Phrase.of("stick-up when the string is set", "altura sobre el terreno al colocar la columna"),
        outcome.figure("stick-up"),
        Optional.empty(),
        outcome));
  }
}
