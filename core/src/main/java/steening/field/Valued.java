package steening.field;

import java.util.Optional;
import steening.journal.Body;
import steening.language.Phrase;

/** A field whose text stands for a value of one type: an amount, a count, a day, a series of amounts. */
public abstract class Valued<T> extends Field {
  protected Valued(String name, Phrase label, boolean required) {
    super(name, label, required);
  }

  /** The value in a body whose texts were checked when they were taken. */
  public abstract Optional<T> in(Body body);
}
