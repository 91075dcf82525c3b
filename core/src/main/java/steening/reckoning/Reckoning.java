package steening.reckoning;

import java.util.List;
import java.util.function.Function;
import steening.field.Field;
import steening.field.Kind;
import steening.language.Phrase;

/**
 * A named computation of the trade, declared once. The command line, the page without a well, the HTTP interface and
 * the well itself all use this declaration.
 *
 * @param name in commands: lower case, words joined by hyphens
 * @param stage the room it belongs to
 * @param validity the limits it holds in, a sentence each
 * @param method from inputs that their fields have taken to answers; throws {@link NotReckonable} where the inputs
 *     contradict each other
 */
public record Reckoning(
    String name,
    String stage,
    Phrase title,
    List<Field> inputs,
    List<Answer> answers,
    Source source,
    List<Phrase> validity,
    Function<Inputs, Outcome> method) {

  public Reckoning {
    inputs = List.copyOf(inputs);
    answers = List.copyOf(answers);
    validity = List.copyOf(validity);
  }

  /** The inputs as a form, for a page or a command that reads what was typed. */
  public Kind form() {
    return new Kind(name, 1, title, inputs);
  }

  /**
   * The answers for these inputs.
   *
   * @throws NotReckonable where the inputs contradict each other
   */
  public Outcome of(Inputs inputs) {
    Outcome outcome = method.apply(inputs);
    if (!outcome.isFinite()) {
      throw new NotReckonable(
          Phrase.of(
              "{0}: these numbers give no finite answer.", "{0}: estos números no dan un resultado finito.", title));
    }
    return outcome;
  }
}
