package steening.cases;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import steening.language.Phrase;
import steening.number.Decimal;

/**
 * How the rows of one kind become cases.
 *
 * @param where what a row must have under a name or in a template: a text, or the beginning of one before {@code *}, or
 *     any but the one after {@code !}
 * @param reckoning the name of the reckoning; empty where there is none for such rows
 * @param inputs templates by the names of the reckoning's fields; one that cannot be filled is left out
 * @param answers templates of {@code 22.78 ft3 ± 0.5 %}, or {@code = SP} for a word, by the names of answers; likewise
 * @param reason why such rows are not covered
 */
record Translation(
    Map<String, String> where,
    String reckoning,
    Map<String, String> inputs,
    Map<String, String> answers,
    Phrase reason) {
  private static final String WORD = "= ";

  boolean fits(Row row, Map<String, Map<String, String>> lists) {
    for (Map.Entry<String, String> wanted : where.entrySet()) {
      String place = wanted.getKey();
      Optional<String> text = place.contains("{") ? new Template(place).fill(row, lists) : row.text(place);
      if (!fits(text.orElse(""), wanted.getValue())) return false;
    }
    return true;
  }

  private static boolean fits(String text, String wanted) {
    if (wanted.startsWith("!")) return !text.equals(wanted.substring(1));
    if (wanted.equals("*")) return !text.isEmpty();
    if (wanted.endsWith("*")) return text.startsWith(wanted.substring(0, wanted.length() - 1));
    return text.equals(wanted);
  }

  /** The case in a row that fits; nothing where the row has none of the answers. */
  Optional<Case> of(String id, Row row, Map<String, Map<String, String>> lists) {
    Map<String, String> texts = new LinkedHashMap<>();
    inputs.forEach((name, text) -> new Template(text).fill(row, lists).ifPresent(filled -> texts.put(name, filled)));
    List<Expected> expected = new ArrayList<>();
    answers.forEach((name, text) ->
        new Template(text).fill(row, lists).ifPresent(filled -> expected.add(expected(name, filled))));
    return expected.isEmpty() ? Optional.empty() : Optional.of(new Case(id, reckoning, texts, expected));
  }

  private static Expected expected(String answer, String text) {
    if (text.startsWith(WORD)) return Expected.word(answer, text.substring(WORD.length()).trim());
    String[] sides = text.split("±");
    String[] words = sides[0].trim().split(" ", 2);
    Optional<BigDecimal> value = Decimal.parse(words[0]);
    Optional<Tolerance> tolerance = sides.length == 2 ? Tolerance.read(sides[1]) : Optional.empty();
    if (value.isEmpty() || tolerance.isEmpty()) {
      throw new UnreadableCases(
          "\"{0}\" is no value with its tolerance; example: 22.78 ft3 ± 0.5 %.",
          "«{0}» no es un valor con su tolerancia; ejemplo: 22.78 ft3 ± 0.5 %.",
          text);
    }
    return Expected.amount(answer, value.get(), words.length > 1 ? words[1] : "", tolerance.get());
  }
}
