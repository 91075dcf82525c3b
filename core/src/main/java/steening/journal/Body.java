package steening.journal;

import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The named values of an entry, each as text: what was typed, with its unit ({@code "57' 3\""}, {@code "7.875 in"}).
 * What the text means is declared by the entry's {@code Kind}; a body of an unknown kind is carried untouched.
 *
 * @param values in the order of their names, whatever order they were said in
 */
public record Body(Map<String, String> values) {
  public static final Body EMPTY = new Body(Map.of());

  public Body {
    values = Collections.unmodifiableMap(new TreeMap<>(values));
  }

  /** Names and texts in turn: {@code Body.of("bags", "3", "weight", "50 lb")}. */
  public static Body of(String... namesAndTexts) {
    if (namesAndTexts.length % 2 != 0) throw new IllegalArgumentException("a name without a text");
    Map<String, String> values = new TreeMap<>();
    for (int i = 0; i < namesAndTexts.length; i += 2) values.put(namesAndTexts[i], namesAndTexts[i + 1]);
    return new Body(values);
  }

  public Optional<String> text(String name) {
    return Optional.ofNullable(values.get(name));
  }

  public Body with(String name, String text) {
    Map<String, String> more = new TreeMap<>(values);
    more.put(name, text);
    return new Body(more);
  }
}
