package steening.cases;

import steening.language.Phrase;
import steening.language.Reader;

/** A text with cases that cannot be read, and why. */
public final class UnreadableCases extends RuntimeException {
  private static final long serialVersionUID = 1;

  private final transient Phrase phrase;

  UnreadableCases(String english, String spanish, Object... arguments) {
    this(Phrase.of(english, spanish, arguments));
  }

  private UnreadableCases(Phrase phrase) {
    super(phrase.shownTo(Reader.US_ENGLISH));
    this.phrase = phrase;
  }

  public Phrase phrase() {
    return phrase;
  }
}
