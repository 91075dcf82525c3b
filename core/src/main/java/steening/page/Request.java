package steening.page;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What a browser asked for.
 *
 * @param method {@code GET} or {@code POST}
 * @param path decoded, from the first slash, without the question mark
 * @param values the fields of the query or of the posted form, last one wins
 * @param cookies name to value
 */
public record Request(String method, String path, Map<String, String> values, Map<String, String> cookies) {
  public Request {
    values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
    cookies = Collections.unmodifiableMap(new LinkedHashMap<>(cookies));
  }

  public String value(String name) {
    return values.getOrDefault(name, "");
  }

  public boolean isPost() {
    return method.equals("POST");
  }
}
