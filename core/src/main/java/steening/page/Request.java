package steening.page;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import steening.language.Language;
import steening.language.Reader;
import steening.language.UnitSystem;

/**
 * What a browser asked for.
 *
 * @param method {@code GET} or {@code POST}
 * @param path decoded, from the first slash, without the question mark
 * @param values the fields of the query or of the posted form, last one wins
 * @param cookies name to value
 */
public record Request(String method, String path, Map<String, String> values, Map<String, String> cookies) {
  /** The cookie that holds the reader's language; a shell may fill it in from what the browser prefers. */
  public static final String LANGUAGE = "language";

  public Request {
    values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
    cookies = Collections.unmodifiableMap(new LinkedHashMap<>(cookies));
  }

  /** The person who asks, as this browser's settings say. */
  public Reader reader() {
    return new Reader(
        Language.of(cookies.getOrDefault(LANGUAGE, "")), UnitSystem.of(cookies.getOrDefault(Visit.UNITS, "")));
  }

  public String value(String name) {
    return values.getOrDefault(name, "");
  }

  public boolean isPost() {
    return method.equals("POST");
  }
}
