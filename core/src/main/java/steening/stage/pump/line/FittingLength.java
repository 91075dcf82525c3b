package steening.stage.pump.line;

import java.util.List;
import java.util.stream.Stream;
import steening.field.ChoiceField;
import steening.field.CountField;
import steening.language.Phrase;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Answer;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Term;

/**
 * The length of straight pipe that fittings are worth, by each source that has them: n times the table's length.
 * Sources
 * and marks: {@link Fitting}. Range: nominal 1/2 to 3 in. Accuracy: the sources differ by up to a factor of four.
 */
public final class FittingLength {
  static final ChoiceField FITTING = ChoiceField.of(
      "fitting", Phrase.of("fitting", "accesorio"),
      Stream.of(Fitting.values()).map(Fitting::option).toArray(ChoiceField.Option[]::new));
  static final ChoiceField SIZE = ChoiceField.of(
      "size", Phrase.of("nominal size, inches", "tamaño nominal, pulgadas"),
      Stream.of("1", "0.5", "0.75", "1.25", "1.5", "2", "2.5", "3")
          .map(s -> ChoiceField.option(s, s + " in", s + " in"))
          .toArray(ChoiceField.Option[]::new));
  static final CountField COUNT =
      CountField.of("count", Phrase.of("how many", "cuántos"), 1, 1000).usuallyUpTo(20);

  static final Answer PLASTIC = new Answer(
      "length-plastic", Phrase.of("by a page on plastic pipe", "según una hoja de tubo plástico"), Scale.DEPTH);
  static final Answer WROUGHT = new Answer(
      "length-wrought", Phrase.of("by 77 Ill. Adm. Code 890, wrought", "según 77 Ill. Adm. Code 890, forjado"),
      Scale.DEPTH);
  static final Answer CAST = new Answer(
      "length-cast", Phrase.of("by 77 Ill. Adm. Code 890, cast", "según 77 Ill. Adm. Code 890, fundido"), Scale.DEPTH);
  static final Answer DIAMETERS = new Answer(
      "length-diameters", Phrase.of("by so many diameters", "según tantos diámetros"), Scale.DEPTH);

  public static final Reckoning RECKONING = new Reckoning(
      "fitting-length",
      "pump",
      Phrase.of("Pipe that fittings are worth", "Tubo equivalente de los accesorios"),
      List.of(FITTING, SIZE, COUNT),
      List.of(PLASTIC, WROUGHT, CAST, DIAMETERS),
      Source.seen(
          "77 Illinois Administrative Code 890, Appendix A, Table Q; a page on PVC pipe; a piping design sheet.",
          "77 Illinois Administrative Code 890, apéndice A, tabla Q; una hoja de tubo de PVC; una hoja de diseño."),
      List.of(
          Phrase.of("Nominal 1/2 to 3 in. A source without such a fitting is left out.",
              "Nominal de 1/2 a 3 in. Se omite la fuente que no tiene tal accesorio."),
          Phrase.of("The sources differ by up to a factor of four: say which one you use.",
              "Las fuentes difieren hasta cuatro veces: diga cuál usa.")),
      FittingLength::reckon);

  private static final List<Answer> BY_SOURCE = List.of(PLASTIC, WROUGHT, CAST, DIAMETERS);

  private FittingLength() {}

  private static Outcome reckon(Inputs inputs) {
    Fitting fitting = Fitting.of(inputs.value(FITTING));
    String size = inputs.value(SIZE).code();
    Outcome outcome = Outcome.empty();
    for (int source = 0; source < BY_SOURCE.size(); source++) {
      double feet = fitting.feet(source, size);
      if (feet == 0) continue;
      Answer answer = BY_SOURCE.get(source);
      String mark = Term.index(source + 1);
      Term one = Term.given("e" + mark, Phrase.of("one of them", "uno de ellos"), Scale.DEPTH,
          Length.of(feet, Unit.FOOT));
      outcome = outcome.with(answer.name(),
          inputs.given("n", COUNT).times(one).named("L" + mark, answer.label(), answer.scale()));
    }
    if (!outcome.answers().isEmpty()) return outcome;
    throw new NotReckonable(
        "No source has a {0} of {1}.", "Ninguna fuente tiene {0} de {1}.",
        fitting.option().label(), inputs.value(SIZE).label());
  }
}
