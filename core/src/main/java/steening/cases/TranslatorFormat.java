package steening.cases;

import com.eclipsesource.json.Json;
import com.eclipsesource.json.JsonObject;
import com.eclipsesource.json.JsonValue;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import steening.language.Phrase;

/** Translators as data: the JSON described in docs/case-format.md. */
final class TranslatorFormat {
  private TranslatorFormat() {}

  static List<Translator> read(String text) {
    List<Translator> translators = new ArrayList<>();
    for (JsonValue one : Json.parse(text).asArray()) translators.add(translator(one.asObject()));
    return translators;
  }

  private static Translator translator(JsonObject json) {
    List<Translation> translations = new ArrayList<>();
    if (json.get("cases") != null) {
      for (JsonValue one : json.get("cases").asArray()) translations.add(translation(one.asObject()));
    }
    Map<String, Map<String, String>> lists = new LinkedHashMap<>();
    if (json.get("lists") != null) {
      for (JsonObject.Member list : json.get("lists").asObject()) {
        lists.put(list.getName(), texts(list.getValue().asObject()));
      }
    }
    return new Translator(
        List.of(json.get("files").asString().split(" ")),
        json.getString("rows", ""),
        json.getString("id", "{id}"),
        json.getString("expected", ""),
        lists,
        translations,
        reason(json));
  }

  private static Translation translation(JsonObject json) {
    return new Translation(
        member(json, "where"),
        json.getString("reckoning", ""),
        member(json, "inputs"),
        member(json, "answers"),
        reason(json).orElse(Verdict.NOTHING));
  }

  /** In English and Spanish. */
  private static Optional<Phrase> reason(JsonObject json) {
    return Optional.ofNullable(json.get("reason"))
        .map(r -> Phrase.of(r.asArray().get(0).asString(), r.asArray().get(1).asString()));
  }

  private static Map<String, String> member(JsonObject json, String name) {
    return json.get(name) == null ? Map.of() : texts(json.get(name).asObject());
  }

  private static Map<String, String> texts(JsonObject json) {
    Map<String, String> texts = new LinkedHashMap<>();
    for (JsonObject.Member member : json) texts.put(member.getName(), member.getValue().asString());
    return texts;
  }
}
