package steening.reckoning;

import steening.language.Phrase;
import steening.language.Reader;

/** The inputs contradict each other, and this sentence says how. */
public final class NotReckonable extends RuntimeException {
  private final transient Phrase sentence;

  public NotReckonable(Phrase sentence) {
    super(sentence.shownTo(Reader.US_ENGLISH));
    this.sentence = sentence;
  }

  public NotReckonable(String english, String spanish, Object... arguments) {
    this(Phrase.of(english, spanish, arguments));
  }

  public Phrase sentence() {
    return sentence;
  }
}
