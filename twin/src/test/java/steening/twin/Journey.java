package steening.twin;

import static org.assertj.core.api.Assertions.assertThat;

import com.eclipsesource.json.Json;
import com.eclipsesource.json.JsonArray;
import com.eclipsesource.json.JsonObject;
import com.eclipsesource.json.JsonValue;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import steening.phone.Phone;

/** A hand that goes from page to page in both worlds at once, and takes along what was written down on the way. */
final class Journey {
  private static final int IDS = 4;

  private final Browser browser;
  private final Map<String, String> cookies;
  private final JsonArray entries = new JsonArray();
  private final List<String> differences = new ArrayList<>();
  private int requests = 0;

  Journey(Browser browser, Map<String, String> cookies) {
    this.browser = browser;
    this.cookies = cookies;
  }

  /** Begins with journals that are there already, each entry as its line. */
  void carry(List<String> lines) {
    lines.forEach(entries::add);
  }

  JsonObject get(String path, Map<String, String> values) {
    return ask("GET", path, values);
  }

  /** A page that has to be there. */
  void mustFind(String path) {
    assertThat(get(path, Map.of()).get("status").asInt()).as(path).isEqualTo(200);
  }

  JsonObject post(String path, Map<String, String> values) {
    return ask("POST", path, values);
  }

  int requests() {
    return requests;
  }

  int entries() {
    return entries.size();
  }

  List<String> differences() {
    return differences;
  }

  private JsonObject ask(String method, String path, Map<String, String> values) {
    String question = question(method, path, values);
    String here = Phone.handle(question);
    String there = browser.call("handle", question);
    if (!here.equals(there)) differences.add(method + " " + path + " " + values + " " + firstDifference(here, there));
    JsonObject answer = Json.parse(here).asObject();
    for (JsonValue line : answer.get("entries").asArray()) entries.add(line);
    requests++;
    return answer;
  }

  private String question(String method, String path, Map<String, String> values) {
    JsonArray ids = new JsonArray();
    for (int i = 0; i < IDS; i++) ids.add(id(requests * IDS + i));
    JsonObject request = new JsonObject()
        .add("method", method)
        .add("path", path)
        .add("values", object(values))
        .add("cookies", object(cookies));
    return new JsonObject()
        .add("request", request)
        .add("now", "2026-05-06T14:" + (10 + requests / 60 % 50) + ":" + (10 + requests % 50) + "-05:00")
        .add("device", id(0x1000000))
        .add("nextSequence", entries.size() + 1)
        .add("ids", ids)
        .add("entries", entries)
        .toString();
  }

  private static JsonObject object(Map<String, String> values) {
    JsonObject object = new JsonObject();
    values.forEach(object::add);
    return object;
  }

  private static String id(int number) {
    return "0196a5b0-0000-7000-8000-" + String.format("%012x", number);
  }

  private static String firstDifference(String here, String there) {
    int i = 0;
    while (i < Math.min(here.length(), there.length()) && here.charAt(i) == there.charAt(i)) i++;
    return "at character " + i + ": JVM ..." + around(here, i) + "... browser ..." + around(there, i) + "...";
  }

  private static String around(String text, int i) {
    return text.substring(Math.max(0, i - 60), Math.min(text.length(), i + 60));
  }
}
