package steening.ground;

import java.util.List;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Scale;
import steening.reckoning.Answer;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Term;

/**
 * The grade of a grain, and its phi.
 *
 * <p>φ = −log₂ d, d in millimetres. Source: Wentworth 1922; phi after Krumbein (seen). Range: any grain.
 * Accuracy: exact, the limits are powers of two.
 */
public final class WentworthGrade {
  static final QuantityField SIZE = Grain.size("size", Phrase.of("grain size", "tamaño del grano"), "0.31 mm");

  static final Answer GRADE = Answer.word("grade", Phrase.of("grade", "grado"));
  static final Answer PHI = new Answer(
      "phi", Phrase.of("phi, powers of two below 1 mm", "phi, potencias de dos bajo 1 mm"), Scale.NUMBER);

  public static final Reckoning RECKONING = new Reckoning(
      "wentworth-grade",
      Grain.STAGE,
      Phrase.of("Grade of a grain by Wentworth", "Grado de un grano según Wentworth"),
      List.of(SIZE),
      List.of(GRADE, PHI),
      Source.seen("Wentworth 1922; phi after Krumbein.", "Wentworth 1922; phi según Krumbein."),
      List.of(Phrase.of(
          "These are not the limits of the soil classification: its sand goes from 0.075 to 4.75 mm.",
          "No son los límites de la clasificación de suelos: su arena va de 0.075 a 4.75 mm.")),
      WentworthGrade::reckon);

  private WentworthGrade() {}

  private static Outcome reckon(Inputs inputs) {
    Term phi = Term.number(1).over(inputs.given("d", SIZE)).log10().over(Term.number(2).log10());
    return Outcome.empty()
        .naming(GRADE.name(), Wentworth.of(inputs.length(SIZE)).label())
        .with(PHI.name(), phi.named("φ", PHI.label(), PHI.scale()));
  }
}
