package steening.stage.test;

import com.eclipsesource.json.Json;
import com.eclipsesource.json.JsonObject;
import com.eclipsesource.json.JsonValue;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** Published tests kept as data; each file names its sources and how they were read. */
final class Cases {
  private Cases() {}

  static JsonObject read(String name) {
    try (InputStream in = Cases.class.getResourceAsStream("/cases/hydraulics/" + name);
        Reader text = new InputStreamReader(in, StandardCharsets.UTF_8)) {
      return Json.parse(text).asObject();
    } catch (IOException e) {
      throw new AssertionError(name, e);
    }
  }

  /** The value at a path of names. */
  static JsonValue at(JsonObject object, String... path) {
    JsonValue value = object;
    for (String name : path) value = value.asObject().get(name);
    return value;
  }

  static double number(JsonObject object, String... path) {
    return at(object, path).asDouble();
  }

  /** A column as the text a person would type. */
  static String series(JsonObject object, String unit, String... path) {
    List<String> amounts = new ArrayList<>();
    for (JsonValue value : at(object, path).asArray()) amounts.add(value.toString());
    return String.join("; ", amounts) + " " + unit;
  }
}
