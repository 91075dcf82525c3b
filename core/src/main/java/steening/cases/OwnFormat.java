package steening.cases;

import com.eclipsesource.json.JsonObject;
import com.eclipsesource.json.JsonValue;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import steening.number.Decimal;

/** Cases in the format of docs/case-format.md: one object, or an array of them. */
final class OwnFormat {
  private static final List<String> NEEDED = List.of("id", "reckoning", "inputs", "expected", "source");
  private static final List<String> PARTS = List.of("id", "reckoning", "inputs", "expected", "source", "note");
  private static final List<String> EXPECTED_PARTS = List.of("value", "unit", "tolerance", "word");

  private static final String UNNAMED = "?";

  private OwnFormat() {}

  /** Whether a text is meant to be in this format. */
  static boolean isIn(JsonValue text) {
    JsonValue first = text.isArray() && !text.asArray().isEmpty() ? text.asArray().get(0) : text;
    return first.isObject() && first.asObject().get("reckoning") != null;
  }

  static List<Case> read(JsonValue text) {
    List<Case> cases = new ArrayList<>();
    if (!text.isArray()) return List.of(one(text.asObject()));
    for (JsonValue one : text.asArray()) cases.add(one(object(one, UNNAMED)));
    return cases;
  }

  private static Case one(JsonObject json) {
    String id = text(json, "id", UNNAMED);
    known(id, json, PARTS);
    for (String part : NEEDED) {
      if (json.get(part) == null) throw wrong(id, "\"" + part + "\" is missing", "falta «" + part + "»");
    }
    Map<String, String> inputs = new LinkedHashMap<>();
    for (JsonObject.Member input : object(json.get("inputs"), id)) {
      inputs.put(input.getName(), typed(id, input.getValue()));
    }
    return new Case(id, text(json, "reckoning", ""), inputs, expected(id, object(json.get("expected"), id)));
  }

  private static String typed(String id, JsonValue value) {
    if (value.isString() || value.isNumber() || value.isArray()) return JsonText.of(value);
    throw wrong(id, "an input is a text, a number or a list", "un dato es un texto, un número o una lista");
  }

  private static List<Expected> expected(String id, JsonObject json) {
    if (json.get("refused") != null) {
      if (json.size() == 1 && json.get("refused").isTrue()) return List.of();
      throw wrong(id, "\"refused\": true stands alone", "\"refused\": true va solo");
    }
    List<Expected> expected = new ArrayList<>();
    for (JsonObject.Member answer : json) {
      expected.add(expected(id, answer.getName(), object(answer.getValue(), id)));
    }
    if (expected.isEmpty()) throw wrong(id, "\"expected\" names no answer", "«expected» no nombra ninguna respuesta");
    return expected;
  }

  private static Expected expected(String id, String answer, JsonObject json) {
    known(id, json, EXPECTED_PARTS);
    String word = text(json, "word", "");
    if (!word.isEmpty()) {
      if (json.size() == 1) return Expected.word(answer, word);
      throw wrong(id, answer + ": a \"word\" stands alone", answer + ": «word» va solo");
    }
    JsonValue number = json.get("value");
    boolean isNumber = number != null && number.isNumber();
    Optional<BigDecimal> value = isNumber ? Decimal.parse(JsonText.of(number)) : Optional.empty();
    Optional<Tolerance> tolerance = Tolerance.read(text(json, "tolerance", ""));
    if (value.isEmpty()) {
      throw wrong(id, answer + " needs a \"value\": 22.78", answer + " necesita «value»: 22.78");
    }
    if (tolerance.isEmpty()) {
      throw wrong(
          id, answer + " needs a \"tolerance\": \"0.5 %\", \"0.02 ft\" or \"exact\"",
          answer + " necesita «tolerance»: \"0.5 %\", \"0.02 ft\" o \"exact\"");
    }
    return Expected.amount(answer, value.get(), text(json, "unit", ""), tolerance.get());
  }

  private static void known(String id, JsonObject json, List<String> names) {
    for (String name : json.names()) {
      if (!names.contains(name)) throw wrong(id, "\"" + name + "\" is not understood", "no se entiende «" + name + "»");
    }
  }

  private static String text(JsonObject json, String name, String otherwise) {
    JsonValue value = json.get(name);
    return value != null && value.isString() ? value.asString() : otherwise;
  }

  private static JsonObject object(JsonValue value, String id) {
    if (value.isObject()) return value.asObject();
    throw wrong(id, "an object in braces was expected", "se esperaba un objeto entre llaves");
  }

  private static UnreadableCases wrong(String id, String english, String spanish) {
    return new UnreadableCases("Case {0}: {1}.", "Caso {0}: {2}.", id, english, spanish);
  }
}
