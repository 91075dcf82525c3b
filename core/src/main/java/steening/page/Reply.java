package steening.page;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import steening.journal.Entry;

/**
 * What goes back to the browser, and what must be on disk before it does.
 *
 * @param status an HTTP status
 * @param contentType with its charset
 * @param body text; all pages are text
 * @param location where to go next, or empty
 * @param cookies to be set, for a year, for the whole site
 * @param entries to be stored durably; if that fails the reply must not be sent
 */
public record Reply(
    int status, String contentType, String body, String location, Map<String, String> cookies, List<Entry> entries) {
  private static final String HTML = "text/html; charset=utf-8";

  public Reply {
    cookies = Collections.unmodifiableMap(new LinkedHashMap<>(cookies));
    entries = List.copyOf(entries);
  }

  public static Reply page(String html) {
    return new Reply(200, HTML, html, "", Map.of(), List.of());
  }

  public static Reply page(int status, String html) {
    return new Reply(status, HTML, html, "", Map.of(), List.of());
  }

  public static Reply json(int status, String json) {
    return new Reply(status, "application/json; charset=utf-8", json, "", Map.of(), List.of());
  }

  /** After a form was taken: store, then look at the result. */
  public static Reply seeOther(String location, List<Entry> entries) {
    return new Reply(303, HTML, "", location, Map.of(), entries);
  }

  public Reply withCookie(String name, String value) {
    return new Reply(status, contentType, body, location, Map.of(name, value), entries);
  }
}
