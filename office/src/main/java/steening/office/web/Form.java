package steening.office.web;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;

/** Names and values as {@code application/x-www-form-urlencoded}, in a query or in a body. */
final class Form {
  private Form() {}

  /**
   * @param text may be null
   * @return in the order of the text; of a repeated name the last
   * @throws IllegalArgumentException on a per cent sign without two hexadecimal digits
   */
  static Map<String, String> read(String text) {
    Map<String, String> values = new LinkedHashMap<>();
    if (text == null) return values;
    for (String pair : text.split("&")) {
      if (pair.isEmpty()) continue;
      int equals = pair.indexOf('=');
      String name = equals < 0 ? pair : pair.substring(0, equals);
      String value = equals < 0 ? "" : pair.substring(equals + 1);
      values.put(decoded(name), decoded(value));
    }
    return values;
  }

  static String decoded(String text) {
    return URLDecoder.decode(text, StandardCharsets.UTF_8);
  }
}
