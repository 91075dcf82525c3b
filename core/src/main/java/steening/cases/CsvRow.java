package steening.cases;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A row of a table of comma-separated values. A name is the head of a column, or {@code #4} for the fourth one. Lines
 * that begin with {@code #} are remarks; the first other line holds the heads; quotes may stand around a value.
 */
record CsvRow(List<String> heads, List<String> values) implements Row {
  @Override
  public Optional<String> text(String name) {
    int column = name.startsWith("#") ? Integer.parseInt(name.substring(1)) - 1 : heads.indexOf(name);
    if (column < 0 || column >= values.size()) return Optional.empty();
    String text = values.get(column).trim();
    return text.isEmpty() ? Optional.empty() : Optional.of(text);
  }

  static List<Row> rows(String text) {
    List<Row> rows = new ArrayList<>();
    List<String> heads = List.of();
    int number = 0;
    for (String line : text.split("\r?\n")) {
      number++;
      if (line.startsWith("#") || line.isBlank()) continue;
      List<String> values = values(line);
      if (heads.isEmpty()) heads = values;
      else if (values.size() != heads.size()) throw uneven(number, values.size(), heads.size());
      else rows.add(new CsvRow(heads, values));
    }
    return rows;
  }

  private static List<String> values(String line) {
    List<String> values = new ArrayList<>();
    StringBuilder value = new StringBuilder();
    boolean quoted = false;
    for (int i = 0; i < line.length(); i++) {
      char c = line.charAt(i);
      boolean doubled = c == '"' && quoted && i + 1 < line.length() && line.charAt(i + 1) == '"';
      if (doubled) value.append(line.charAt(i++));
      else if (c == '"') quoted = !quoted;
      else if (c == ',' && !quoted) {
        values.add(value.toString());
        value.setLength(0);
      } else value.append(c);
    }
    values.add(value.toString());
    return values;
  }

  private static UnreadableCases uneven(int line, int values, int heads) {
    return new UnreadableCases(
        "Line {0} has {1} values where there are {2} columns.", "La línea {0} tiene {1} valores y hay {2} columnas.",
        line, values, heads);
  }
}
