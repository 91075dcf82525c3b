package steening.journal;

/** The named parts of an entry's line, in the order they are written; each with an example of its right form. */
enum Part {
  ID("id", "\"0197a3c0-5b1e-7d42-9c1f-3f6a2b8c4d10\""),
  WELL("well", "\"0197a3bf-11d0-7a90-8e55-6d0c9b7a2e01\""),
  DEVICE("device", "\"0197a000-0000-7000-8000-00000000000a\""),
  SEQUENCE("sequence", "17"),
  WHO("who", "\"Ana\""),
  HAPPENED_AT("happenedAt", "\"2026-05-06T14:05:00-05:00\""),
  RECORDED_AT("recordedAt", "\"2026-05-06T14:07:31-05:00\""),
  KIND("kind", "\"withdrawal\""),
  SCHEMA("schema", "1"),
  BODY("body", "{\"length\": \"19.98 ft\"}"),
  REPLACES("replaces", "[\"0197a3c0-5b1e-7d42-9c1f-3f6a2b8c4d10\"]");

  final String key;
  final String example;

  Part(String key, String example) {
    this.key = key;
    this.example = example;
  }

  static boolean isKey(String text) {
    for (Part part : values()) if (part.key.equals(text)) return true;
    return false;
  }
}
