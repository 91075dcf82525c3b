package steening.field;

import java.util.List;
import java.util.Optional;
import steening.journal.Body;
import steening.language.Phrase;
import steening.language.Reader;

/** One of a few things. */
public final class ChoiceField extends Valued<ChoiceField.Option> {
  private final List<Option> options;

  /** What is stored, and what is read. */
  public record Option(String code, Phrase label) {}

  private ChoiceField(String name, Phrase label, boolean required, List<Option> options) {
    super(name, label, required);
    this.options = List.copyOf(options);
  }

  public static ChoiceField of(String name, Phrase label, Option... options) {
    return new ChoiceField(name, label, true, List.of(options));
  }

  public static Option option(String code, String english, String spanish) {
    return new Option(code, Phrase.of(english, spanish));
  }

  @Override
  public ChoiceField optional() {
    return new ChoiceField(name(), label(), false, options);
  }

  public List<Option> options() {
    return options;
  }

  @Override
  public Optional<Option> in(Body body) {
    return text(body).flatMap(code -> options.stream().filter(o -> o.code().equals(code)).findFirst());
  }

  @Override
  public String holds() {
    return "choice";
  }

  @Override
  public String example(Reader reader) {
    return options.get(0).code();
  }

  @Override
  protected Reading understand(String text, Reader reader, boolean sure) {
    for (Option option : options) if (option.code().equalsIgnoreCase(text)) return new Reading.Taken(option.code());
    for (Option option : options) {
      if (option.label().shownTo(reader).equalsIgnoreCase(text)) return new Reading.Taken(option.code());
    }
    StringBuilder codes = new StringBuilder();
    for (Option option : options) codes.append(codes.isEmpty() ? "" : ", ").append(option.code());
    return new Reading.Refused(
        Phrase.of("{0}: \"{1}\" is none of {2}.", "{0}: «{1}» no es ninguno de {2}.", label(), text, codes.toString()));
  }
}
