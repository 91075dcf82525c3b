package steening.field;

import java.util.List;
import java.util.Optional;
import steening.journal.Body;
import steening.language.Phrase;
import steening.language.Reader;

/** A whole number of things: bags, joints, bedrooms. */
public final class CountField extends Valued<Integer> {
  private final int least;
  private final int most;
  private final int usualMost;

  private CountField(String name, Phrase label, boolean required, int least, int most, int usualMost) {
    super(name, label, required);
    this.least = least;
    this.most = most;
    this.usualMost = usualMost;
  }

  public static CountField of(String name, Phrase label, int least, int most) {
    return new CountField(name, label, true, least, most, most);
  }

  /** More than this is asked about. */
  public CountField usuallyUpTo(int usual) {
    return new CountField(name(), label(), isRequired(), least, most, usual);
  }

  @Override
  public CountField optional() {
    return new CountField(name(), label(), false, least, most, usualMost);
  }

  @Override
  public Optional<Integer> in(Body body) {
    return text(body).map(Integer::parseInt);
  }

  public int least() {
    return least;
  }

  public int most() {
    return most;
  }

  @Override
  public String holds() {
    return "count";
  }

  @Override
  public String example(Reader reader) {
    return Integer.toString(Math.max(least, Math.min(usualMost, 3)));
  }

  @Override
  protected Reading understand(String text, Reader reader, boolean sure) {
    boolean digits = text.length() < 8;
    for (int i = 0; i < text.length(); i++) digits &= text.charAt(i) >= '0' && text.charAt(i) <= '9';
    if (!digits) return refused(text, reader);
    int count = Integer.parseInt(text);
    if (count < least || count > most) {
      return new Reading.Refused(
          Phrase.of(
              "{0}: {1} is outside {2} to {3}. Example: {4}.",
              "{0}: {1} está fuera de {2} a {3}. Ejemplo: {4}.",
              label(), text, Integer.toString(least), Integer.toString(most), example(reader)));
    }
    if (count > usualMost && !sure) {
      return new Reading.Asked(
          Phrase.of("{0}: {1} is a lot. Is it right?", "{0}: {1} es mucho. ¿Está bien?", label(), text),
          List.of(text));
    }
    return new Reading.Taken(text);
  }
}
