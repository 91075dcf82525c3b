package steening.stage;

import com.eclipsesource.json.Json;
import com.eclipsesource.json.JsonObject;
import java.util.ArrayList;
import java.util.List;
import steening.cases.CaseFiles;

/** Worked examples and tables kept as data; each row names its source and how it was read. */
public final class WorkedExamples {
  private static final String CASES = "construction/";

  private WorkedExamples() {}

  public static JsonObject named(String id) {
    for (var row : Json.parse(CaseFiles.text(CASES + "worked_examples.json")).asArray()) {
      if (row.asObject().getString("id", "").equals(id)) return row.asObject();
    }
    throw new AssertionError("no example " + id);
  }

  public static double input(JsonObject row, String name) {
    return row.get("inputs").asObject().get(name).asDouble();
  }

  public static double expected(JsonObject row, String name) {
    return row.get("expected").asObject().get(name).asObject().get("value").asDouble();
  }

  /** The rows of a table below its heads, cell by cell; quoted cells may hold commas. */
  public static List<List<String>> rows(String file) {
    List<String> lines = CaseFiles.text(CASES + file).lines().filter(l -> !l.isBlank()).toList();
    return lines.subList(1, lines.size()).stream().map(WorkedExamples::cells).toList();
  }

  private static List<String> cells(String line) {
    List<String> cells = new ArrayList<>();
    StringBuilder cell = new StringBuilder();
    boolean quoted = false;
    for (char c : line.toCharArray()) {
      if (c == '"') quoted = !quoted;
      else if (c == ',' && !quoted) {
        cells.add(cell.toString());
        cell.setLength(0);
      } else cell.append(c);
    }
    cells.add(cell.toString());
    return cells;
  }
}
