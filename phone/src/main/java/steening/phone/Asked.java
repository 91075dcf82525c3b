package steening.phone;

import com.eclipsesource.json.JsonObject;
import com.eclipsesource.json.JsonValue;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import steening.journal.Codec;
import steening.journal.Entry;
import steening.journal.Moment;
import steening.page.Pen;
import steening.page.Request;
import steening.page.Shelf;

/**
 * A question from the script: {@code {"request": {"method", "path", "values", "cookies"}, "now", "device",
 * "nextSequence", "ids", "entries"}}. Entries are texts, each the line as it is stored.
 */
record Asked(Request request, Shelf shelf, Moment now, Pen pen) {
  static Asked read(JsonObject asked) {
    JsonObject request = asked.get("request").asObject();
    List<Entry> entries = new ArrayList<>();
    for (String line : texts(asked.get("entries"))) entries.add(Codec.read(line));
    return new Asked(
        new Request(
            request.get("method").asString(),
            request.get("path").asString(),
            named(request.get("values")),
            named(request.get("cookies"))),
        Pocket.of(entries),
        Moment.parse(asked.get("now").asString()),
        new Pen(asked.get("device").asString(), asked.get("nextSequence").asLong(), texts(asked.get("ids"))));
  }

  private static List<String> texts(JsonValue array) {
    List<String> texts = new ArrayList<>();
    for (JsonValue value : array.asArray()) texts.add(value.asString());
    return texts;
  }

  private static Map<String, String> named(JsonValue object) {
    Map<String, String> values = new LinkedHashMap<>();
    for (JsonObject.Member member : object.asObject()) values.put(member.getName(), member.getValue().asString());
    return values;
  }
}
