package steening.field;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import steening.journal.Body;
import steening.language.Phrase;
import steening.language.Reader;

/** One of a few things. */
public final class ChoiceField extends Valued<ChoiceField.Option> implements Offering {
  private final List<Option> options;
  private final int atOnce;
  private final Function<String, Optional<Guess>> guesses;

  /** What is stored, and what is read. */
  public record Option(String code, Phrase label) {}

  /** What a word that is none of the options may stand for, the likeliest first, and perhaps what else to say. */
  public record Guess(List<Option> options, Optional<Phrase> note) {
    public Guess {
      options = List.copyOf(options);
    }
  }

  private ChoiceField(
      String name, Phrase label, boolean required, List<Option> options, int atOnce,
      Function<String, Optional<Guess>> guesses) {
    super(name, label, required);
    this.options = List.copyOf(options);
    this.atOnce = atOnce;
    this.guesses = guesses;
  }

  public static ChoiceField of(String name, Phrase label, Option... options) {
    return new ChoiceField(name, label, true, List.of(options), options.length, null);
  }

  public static Option option(String code, String english, String spanish) {
    return new Option(code, Phrase.of(english, spanish));
  }

  @Override
  public ChoiceField optional() {
    return new ChoiceField(name(), label(), false, options, atOnce, guesses);
  }

  /** The same, whose form shows the first of many options at once, and the others when asked. */
  public ChoiceField showing(int first) {
    return new ChoiceField(name(), label(), isRequired(), options, first, guesses);
  }

  /** The same, which asks back when it knows what else a word may stand for. */
  public ChoiceField guessing(Function<String, Optional<Guess>> guesses) {
    return new ChoiceField(name(), label(), isRequired(), options, atOnce, guesses);
  }

  @Override
  public List<Option> offered() {
    return options;
  }

  @Override
  public int atOnce() {
    return atOnce;
  }

  @Override
  public boolean takesWords() {
    return guesses != null;
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
    Optional<Guess> guess = guesses == null ? Optional.empty() : guesses.apply(text);
    if (guess.isPresent()) return asked(text, guess.get(), reader);
    StringBuilder codes = new StringBuilder();
    for (Option option : options) codes.append(codes.isEmpty() ? "" : ", ").append(option.code());
    return new Reading.Refused(
        Phrase.of("{0}: \"{1}\" is none of {2}.", "{0}: «{1}» no es ninguno de {2}.", label(), text, codes.toString()));
  }

  private Reading asked(String text, Guess guess, Reader reader) {
    List<String> meanings = guess.options().stream().map(option -> option.label().shownTo(reader)).toList();
    Phrase question = Phrase.of(
        "{0}: what is \"{1}\" in the standard terms?", "{0}: ¿qué es «{1}» en los términos normales?", label(), text);
    return new Reading.Asked(guess.note().map(note -> question.followedBy(note)).orElse(question), meanings);
  }
}
