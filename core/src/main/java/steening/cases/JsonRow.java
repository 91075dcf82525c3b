package steening.cases;

import com.eclipsesource.json.JsonArray;
import com.eclipsesource.json.JsonValue;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * An object of a JSON text. A name is a path of members and places, {@code expected.depth.value} or {@code source.0};
 * it is looked for in the object, then among its {@code inputs}, then from the root of the text.
 */
record JsonRow(JsonValue here, JsonValue root) implements Row {
  private static final String INPUTS = "inputs.";

  @Override
  public Optional<String> text(String name) {
    for (JsonValue value : places(name)) {
      String text = JsonText.of(value).trim();
      if (!text.isEmpty()) return Optional.of(text);
    }
    return Optional.empty();
  }

  @Override
  public List<String> names(String name) {
    return at(here, name).filter(JsonValue::isObject).map(v -> v.asObject().names()).orElse(List.of());
  }

  /** All rows under a path of the text: the objects of an array, or one object. */
  static List<Row> rows(JsonValue root, String path) {
    List<Row> rows = new ArrayList<>();
    JsonValue found = path.isEmpty() ? root : at(root, path).orElse(new JsonArray());
    if (!found.isArray()) return List.of(new JsonRow(found, root));
    for (JsonValue value : found.asArray()) rows.add(new JsonRow(value, root));
    return rows;
  }

  private List<JsonValue> places(String name) {
    List<JsonValue> places = new ArrayList<>();
    at(here, name).ifPresent(places::add);
    at(here, INPUTS + name).ifPresent(places::add);
    at(root, name).ifPresent(places::add);
    return places;
  }

  private static Optional<JsonValue> at(JsonValue from, String path) {
    JsonValue value = from;
    for (String step : path.split("[.]")) {
      value = step(value, step);
      if (value == null) return Optional.empty();
    }
    return Optional.of(value);
  }

  /** Null where there is nothing of that name, or no such place. */
  private static JsonValue step(JsonValue value, String step) {
    if (value.isObject()) return value.asObject().get(step);
    boolean there = value.isArray() && isPlace(step, value.asArray());
    return there ? value.asArray().get(Integer.parseInt(step)) : null;
  }

  private static boolean isPlace(String step, JsonArray array) {
    boolean digits = !step.isEmpty() && step.length() < 6;
    for (int i = 0; i < step.length(); i++) digits &= step.charAt(i) >= '0' && step.charAt(i) <= '9';
    return digits && Integer.parseInt(step) < array.size();
  }
}
