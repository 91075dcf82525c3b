package steening.field;

import java.util.List;
import java.util.function.Predicate;
import steening.language.Phrase;
import steening.language.Reader;

/** Words as they were typed. Too many are refused, never cut. */
public final class TextField extends Field implements Offering {
  private static final int LONGEST = 10_000;
  private final String example;
  private final List<ChoiceField.Option> offered;
  private final int atOnce;
  private final Predicate<String> isWrong;

  private TextField(
      String name, Phrase label, boolean required, String example, List<ChoiceField.Option> offered, int atOnce,
      Predicate<String> isWrong) {
    super(name, label, required);
    this.example = example;
    this.offered = List.copyOf(offered);
    this.atOnce = atOnce;
    this.isWrong = isWrong;
  }

  public static TextField of(String name, Phrase label, String example) {
    return new TextField(name, label, true, example, List.of(), 0, text -> false);
  }

  @Override
  public TextField optional() {
    return new TextField(name(), label(), false, example, offered, atOnce, isWrong);
  }

  /** The same, which offers words to choose from, the first of them at once; any others may still be typed. */
  public TextField offering(int first, List<ChoiceField.Option> options) {
    return new TextField(name(), label(), isRequired(), example, options, first, isWrong);
  }

  /** The same, which refuses some texts with its example of the right form. */
  public TextField refusing(Predicate<String> wrong) {
    return new TextField(name(), label(), isRequired(), example, offered, atOnce, wrong);
  }

  @Override
  public List<ChoiceField.Option> offered() {
    return offered;
  }

  @Override
  public int atOnce() {
    return atOnce;
  }

  @Override
  public boolean takesWords() {
    return true;
  }

  @Override
  public String holds() {
    return "text";
  }

  @Override
  public String example(Reader reader) {
    return example;
  }

  @Override
  protected Reading understand(String text, Reader reader, boolean sure) {
    if (isWrong.test(text)) return refused(text, reader);
    if (text.length() <= LONGEST) return new Reading.Taken(text);
    return new Reading.Refused(
        Phrase.of(
            "{0}: {1} characters are more than the {2} that fit. Split it in two remarks.",
            "{0}: {1} caracteres son más que los {2} que caben. Divídalo en dos notas.",
            label(), Integer.toString(text.length()), Integer.toString(LONGEST)));
  }
}
