package steening.stage.seal;

import com.eclipsesource.json.Json;
import com.eclipsesource.json.JsonObject;
import com.eclipsesource.json.JsonValue;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Published mixes and worked examples of grout kept as data; each row names its source and how it was read. */
final class GroutExamples {
  private GroutExamples() {}

  static List<JsonObject> worked() {
    List<JsonObject> rows = new ArrayList<>();
    for (JsonValue row : Json.parse(text("grout_examples.json")).asArray()) rows.add(row.asObject());
    return rows;
  }

  static JsonObject worked(String id) {
    return worked().stream().filter(r -> r.getString("id", "").equals(id)).findFirst().orElseThrow();
  }

  static double input(JsonObject row, String name) {
    return row.get("inputs").asObject().get(name).asDouble();
  }

  static double expected(JsonObject row, String name) {
    return row.get("expected").asObject().get(name).asObject().get("value").asDouble();
  }

  /** The rows of a table, by the names in its head; cells may be quoted. */
  static List<Map<String, String>> table(String file) {
    String[] lines = text(file).split("\n");
    List<String> heads = cells(lines[0]);
    List<Map<String, String>> rows = new ArrayList<>();
    for (int i = 1; i < lines.length; i++) {
      List<String> cells = cells(lines[i]);
      Map<String, String> row = new LinkedHashMap<>();
      for (int j = 0; j < heads.size(); j++) row.put(heads.get(j), cells.get(j));
      rows.add(row);
    }
    return rows;
  }

  private static List<String> cells(String line) {
    List<String> cells = new ArrayList<>();
    StringBuilder cell = new StringBuilder();
    boolean quoted = false;
    for (char c : line.trim().toCharArray()) {
      if (c == '"') quoted = !quoted;
      else if (c == ',' && !quoted) {
        cells.add(cell.toString());
        cell.setLength(0);
      } else cell.append(c);
    }
    cells.add(cell.toString());
    return cells;
  }

  private static String text(String file) {
    try (InputStream in = GroutExamples.class.getResourceAsStream("/cases/construction/" + file)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new AssertionError(file, e);
    }
  }
}
