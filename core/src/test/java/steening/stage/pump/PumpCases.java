package steening.stage.pump;

import com.eclipsesource.json.Json;
import com.eclipsesource.json.JsonObject;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;

/** Published figures kept as data; each file names its sources and how they were read. */
final class PumpCases {
  private PumpCases() {}

  static JsonObject json(String name) {
    return Json.parse(lines(name).stream().collect(Collectors.joining("\n"))).asObject();
  }

  /** The rows of a table, without its remarks and its head. */
  static List<String[]> rows(String name) {
    return lines(name).stream().filter(l -> !l.startsWith("#")).skip(1).map(l -> l.split(",")).toList();
  }

  private static List<String> lines(String name) {
    try (BufferedReader reader = new BufferedReader(new InputStreamReader(
        PumpCases.class.getResourceAsStream("/cases/hydraulics/" + name), StandardCharsets.UTF_8))) {
      return reader.lines().toList();
    } catch (IOException e) {
      throw new AssertionError(name, e);
    }
  }
}
