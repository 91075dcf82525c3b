package steening.reckoning;

import java.util.Optional;
import steening.language.Phrase;
import steening.quantity.Scale;

/**
 * One thing a reckoning answers, as declared.
 *
 * @param measured the scale of an amount; nothing where the answer is a word
 */
public record Answer(String name, Phrase label, Optional<Scale> measured) {
  public Answer(String name, Phrase label, Scale scale) {
    this(name, label, Optional.of(scale));
  }

  /** An answer that names something: a soil, a grade. */
  public static Answer word(String name, Phrase label) {
    return new Answer(name, label, Optional.empty());
  }

  /**
   * The scale of an amount.
   *
   * @throws IllegalStateException where the answer is a word
   */
  public Scale scale() {
    return measured.orElseThrow(() -> new IllegalStateException(name + " is a word"));
  }
}
