package steening.journal;

import com.eclipsesource.json.Json;
import com.eclipsesource.json.JsonArray;
import com.eclipsesource.json.JsonObject;
import java.util.Map;

/**
 * The text form of an entry: one line of JSON, in UTF-8 where it is stored. Equal entries have equal texts, so texts
 * can be compared to tell whether two entries say the same. See docs/journal-format.md.
 */
public final class Codec {
  private Codec() {}

  /** The canonical line: parts in the order of {@link Part}, names of the body in the order of their characters. */
  public static String write(Entry entry) {
    JsonObject body = new JsonObject();
    for (Map.Entry<String, String> value : entry.body().values().entrySet()) body.add(value.getKey(), value.getValue());
    JsonArray replaces = new JsonArray();
    for (String id : entry.replaces()) replaces.add(id);
    return Json.object()
        .add(Part.ID.key, entry.id())
        .add(Part.WELL.key, entry.well())
        .add(Part.DEVICE.key, entry.device())
        .add(Part.SEQUENCE.key, entry.sequence())
        .add(Part.WHO.key, entry.who())
        .add(Part.HAPPENED_AT.key, entry.happenedAt().toString())
        .add(Part.RECORDED_AT.key, entry.recordedAt().toString())
        .add(Part.KIND.key, entry.kind())
        .add(Part.SCHEMA.key, entry.schema())
        .add(Part.BODY.key, body)
        .add(Part.REPLACES.key, replaces)
        .toString();
  }

  /**
   * Reads a line in any spelling JSON allows; kinds and schemas that are not known here are carried untouched.
   *
   * @throws UnreadableEntry when a part is missing, unknown, given twice or of the wrong form
   */
  public static Entry read(String line) {
    Line parts = Line.of(line);
    Entry entry =
        new Entry(
            parts.id(Part.ID),
            parts.name(Part.WELL),
            parts.name(Part.DEVICE),
            parts.sequence(),
            parts.text(Part.WHO),
            parts.moment(Part.HAPPENED_AT),
            parts.moment(Part.RECORDED_AT),
            parts.name(Part.KIND),
            parts.schema(),
            parts.body(),
            parts.replaces());
    // UTF-8 has no way to write half a character: such a text would come back from the disk as another
    if (hasHalfCharacter(write(entry))) throw UnreadableEntry.halfCharacter();
    return entry;
  }

  private static boolean hasHalfCharacter(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (!Character.isSurrogate(c)) continue;
      boolean first = Character.isHighSurrogate(c) && i + 1 < text.length();
      if (!first || !Character.isLowSurrogate(text.charAt(i + 1))) return true;
      i++;
    }
    return false;
  }
}
