package steening.cases;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import steening.field.SeriesField;
import steening.number.Decimal;

/**
 * Text with holes that a row fills: {@code {hole_in} in}. In a hole stands a name, or names and numbers with operators
 * between spaces, worked from left to right: {@code {share * 100} %}, {@code {screen_ft + above_ft} ft};
 * {@code {7 of length_ft} ft} is a series of seven, and {@code {nominal_in in inside}} is looked up in a list.
 */
record Template(String text) {
  private static final int PLACES = 20;

  /** The text, or nothing where the row has nothing for a hole. */
  Optional<String> fill(Row row, Map<String, Map<String, String>> lists) {
    StringBuilder out = new StringBuilder();
    int end = 0;
    for (int start = text.indexOf('{'); start >= 0; start = text.indexOf('{', end)) {
      out.append(text, end, start);
      end = text.indexOf('}', start) + 1;
      if (end == 0) throw unclear();
      Optional<String> value = value(text.substring(start + 1, end - 1).trim().split(" +"), row, lists);
      if (value.isEmpty()) return Optional.empty();
      out.append(value.get());
    }
    return Optional.of(out.append(text.substring(end)).toString());
  }

  private Optional<String> value(String[] words, Row row, Map<String, Map<String, String>> lists) {
    Optional<String> value = operand(words[0], row);
    for (int i = 1; i + 1 < words.length; i += 2) {
      boolean looksUp = words[i].equals("in");
      Optional<String> second = looksUp ? Optional.of(words[i + 1]) : operand(words[i + 1], row);
      if (value.isEmpty() || second.isEmpty()) return Optional.empty();
      value = looksUp
          ? Optional.ofNullable(lists.getOrDefault(second.get(), Map.of()).get(value.get()))
          : Optional.of(worked(value.get(), words[i], second.get()));
    }
    return value;
  }

  private static Optional<String> operand(String word, Row row) {
    return Decimal.parse(word).isPresent() ? Optional.of(word) : row.text(word);
  }

  private String worked(String first, String operator, String second) {
    BigDecimal a = number(first);
    BigDecimal b = operator.equals("of") ? BigDecimal.ONE : number(second);
    return switch (operator) {
      case "+" -> Decimal.shortest(a.add(b));
      case "-" -> Decimal.shortest(a.subtract(b));
      case "*" -> Decimal.shortest(a.multiply(b));
      case "/" -> b.signum() == 0 ? "" : Decimal.shortest(a.divide(b, PLACES, RoundingMode.HALF_UP));
      case "of" -> SeriesField.joined(List.copyOf(Collections.nCopies(Math.max(0, a.intValue()), second)));
      default -> throw unclear();
    };
  }

  private BigDecimal number(String text) {
    return Decimal.parse(text).orElseThrow(this::unclear);
  }

  private UnreadableCases unclear() {
    return new UnreadableCases(
        "The template \"{0}\" cannot be filled.", "La plantilla «{0}» no se puede llenar.", text);
  }
}
