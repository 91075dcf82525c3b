package steening.field;

import steening.language.Phrase;
import steening.language.Reader;

/** Words as they were typed. Too many are refused, never cut. */
public final class TextField extends Field {
  private static final int LONGEST = 10_000;
  private final String example;

  private TextField(String name, Phrase label, boolean required, String example) {
    super(name, label, required);
    this.example = example;
  }

  public static TextField of(String name, Phrase label, String example) {
    return new TextField(name, label, true, example);
  }

  @Override
  public TextField optional() {
    return new TextField(name(), label(), false, example);
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
    if (text.length() <= LONGEST) return new Reading.Taken(text);
    return new Reading.Refused(
        Phrase.of(
            "{0}: {1} characters are more than the {2} that fit. Split it in two remarks.",
            "{0}: {1} caracteres son más que los {2} que caben. Divídalo en dos notas.",
            label(), Integer.toString(text.length()), Integer.toString(LONGEST)));
  }
}
