package steening.stage.pack;

import com.eclipsesource.json.Json;
import com.eclipsesource.json.JsonObject;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;

/** Worked examples of filter packs kept as data; each row names its source and how it was read. */
final class PackExamples {
  private PackExamples() {}

  static JsonObject named(String id) {
    try (InputStream in = PackExamples.class.getResourceAsStream("/cases/construction/filter_pack_examples.json");
        Reader text = new InputStreamReader(in, StandardCharsets.UTF_8)) {
      for (var row : Json.parse(text).asArray()) {
        if (row.asObject().getString("id", "").equals(id)) return row.asObject();
      }
      throw new AssertionError("no example " + id);
    } catch (IOException e) {
      throw new AssertionError(id, e);
    }
  }

  static double input(JsonObject row, String name) {
    return row.get("inputs").asObject().get(name).asDouble();
  }

  static double expected(JsonObject row, String name) {
    return row.get("expected").asObject().get(name).asObject().get("value").asDouble();
  }
}
