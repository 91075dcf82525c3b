package steening.language;

import java.util.List;

/**
 * One thing to say, in both languages, with the things it speaks of: {@code {0}} stands for the first argument. A
 * {@link Shown} argument, a quantity for example, is written in the reader's own units.
 *
 * @param english never empty
 * @param spanish never empty
 */
public record Phrase(String english, String spanish, List<Object> arguments) implements Shown {
  public Phrase {
    arguments = List.copyOf(arguments);
  }

  public static Phrase of(String english, String spanish, Object... arguments) {
    return new Phrase(english, spanish, List.of(arguments));
  }

  /** The same in both languages: a name, a number, a code. */
  public static Phrase same(String text) {
    return new Phrase("{0}", "{0}", List.of(text));
  }

  /** The same words about other things. */
  public Phrase about(Object... others) {
    return new Phrase(english, spanish, List.of(others));
  }

  /** This sentence, then another. */
  public Phrase followedBy(Phrase other) {
    return new Phrase("{0} {1}", "{0} {1}", List.of(this, other));
  }

  @Override
  public String shownTo(Reader reader) {
    String pattern = reader.language() == Language.SPANISH ? spanish : english;
    StringBuilder out = new StringBuilder(pattern.length() + 32);
    int i = 0;
    while (i < pattern.length()) {
      char c = pattern.charAt(i);
      boolean placeholder = c == '{' && i + 2 < pattern.length() && pattern.charAt(i + 2) == '}';
      int index = placeholder ? pattern.charAt(i + 1) - '0' : -1;
      if (index >= 0 && index < arguments.size()) {
        Object argument = arguments.get(index);
        out.append(argument instanceof Shown shown ? shown.shownTo(reader) : argument.toString());
        i += 3;
      } else {
        out.append(c);
        i++;
      }
    }
    return out.toString();
  }
}
