package steening.field;

import java.util.Optional;
import steening.journal.Body;
import steening.language.Phrase;
import steening.language.Reader;

/** One named value, declared once. Immutable; the methods that change something answer a changed copy. */
public abstract class Field {
  private final String name;
  private final Phrase label;
  private final boolean required;

  protected Field(String name, Phrase label, boolean required) {
    this.name = name;
    this.label = label;
    this.required = required;
  }

  /** The name in files and commands: lower case, words joined by hyphens. */
  public final String name() {
    return name;
  }

  public final Phrase label() {
    return label;
  }

  public final boolean isRequired() {
    return required;
  }

  /** One word for what it holds: {@code length}, {@code date}, {@code choice}. */
  public abstract String holds();

  /** An example of the right form, in the reader's units. */
  public abstract String example(Reader reader);

  /** The same field, which may be left empty. */
  public abstract Field optional();

  /**
   * Reads what was typed.
   *
   * @param sure the hand was asked already, and means it
   */
  public final Reading read(String typed, Reader reader, boolean sure) {
    String text = typed == null ? "" : typed.trim();
    if (!text.isEmpty()) return understand(text, reader, sure);
    if (!required) return new Reading.Absent();
    return new Reading.Refused(
        Phrase.of("{0} is missing. Example: {1}.", "Falta {0}. Ejemplo: {1}.", label, example(reader)));
  }

  /** The text of this field in a body. */
  public final Optional<String> text(Body body) {
    return body.text(name);
  }

  public final boolean isIn(Body body) {
    return body.text(name).isPresent();
  }

  /**
   * Reads what was typed where something was. What is taken keeps what was typed, and only a unit that was left out is
   * added; a choice is kept by its code, whatever language it was made in.
   *
   * @param text trimmed, never empty
   */
  protected abstract Reading understand(String text, Reader reader, boolean sure);

  /** The plain answer to nonsense. */
  protected final Reading refused(String text, Reader reader) {
    return new Reading.Refused(
        Phrase.of(
            "{0}: \"{1}\" is not understood. Example: {2}.", "{0}: no se entiende «{1}». Ejemplo: {2}.",
            label, text, example(reader)));
  }
}
