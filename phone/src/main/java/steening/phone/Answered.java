package steening.phone;

import com.eclipsesource.json.Json;
import com.eclipsesource.json.JsonArray;
import com.eclipsesource.json.JsonObject;
import java.util.Map;
import java.util.TreeMap;
import steening.journal.Codec;
import steening.journal.Entry;
import steening.page.Reply;

/**
 * The answer to the script: {@code {"status", "contentType", "body", "location", "cookies", "entries"}}. Entries are
 * texts, each the line to be stored, and must be on disk before the body is shown.
 */
final class Answered {
  private Answered() {}

  static String write(Reply reply) {
    JsonObject cookies = new JsonObject();
    // by name: a map of the platform has an order of its own in each world
    for (Map.Entry<String, String> cookie : new TreeMap<>(reply.cookies()).entrySet()) {
      cookies.add(cookie.getKey(), cookie.getValue());
    }
    JsonArray entries = new JsonArray();
    for (Entry entry : reply.entries()) entries.add(Codec.write(entry));
    return Json.object()
        .add("status", reply.status())
        .add("contentType", reply.contentType())
        .add("body", reply.body())
        .add("location", reply.location())
        .add("cookies", cookies)
        .add("entries", entries)
        .toString();
  }
}
