package steening.journal;

import com.eclipsesource.json.Json;
import com.eclipsesource.json.JsonObject;
import com.eclipsesource.json.JsonValue;
import com.eclipsesource.json.ParseException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import steening.language.Phrase;

/** A line taken apart, with every part known to be there once and nothing beside. */
final class Line {
  private static final int MOST_DIGITS = 15;
  private static final int MOST_SCHEMA_DIGITS = 9;

  private final JsonObject parts;

  private Line(JsonObject parts) {
    this.parts = parts;
  }

  static Line of(String text) {
    JsonValue value;
    try {
      value = Json.parse(text);
    } catch (ParseException e) {
      throw UnreadableEntry.notJson(e.getLocation().column);
    }
    if (!value.isObject()) throw UnreadableEntry.notAnObject();
    JsonObject parts = value.asObject();
    Set<String> seen = new LinkedHashSet<>();
    for (String name : parts.names()) {
      if (!Part.isKey(name)) throw UnreadableEntry.unknown(name);
      if (!seen.add(name)) throw UnreadableEntry.twice(name);
    }
    for (Part part : Part.values()) if (!seen.contains(part.key)) throw UnreadableEntry.missing(part);
    return new Line(parts);
  }

  String text(Part part) {
    JsonValue value = parts.get(part.key);
    if (!value.isString()) throw UnreadableEntry.wrong(part, Phrase.of("a text in quotes", "un texto entre comillas"));
    return value.asString();
  }

  String id(Part part) {
    return id(part, parts.get(part.key));
  }

  String name(Part part) {
    String text = text(part);
    if (Ids.isName(text)) return text;
    throw UnreadableEntry.wrong(
        part,
        Phrase.of(
            "1 to 64 letters, digits, hyphens, points or underscores",
            "de 1 a 64 letras, cifras, guiones, puntos o guiones bajos"));
  }

  Moment moment(Part part) {
    String text = text(part);
    try {
      return Moment.parse(text);
    } catch (IllegalArgumentException e) {
      throw UnreadableEntry.wrong(
          part, Phrase.of("a time with its offset from UTC", "una hora con su diferencia respecto a UTC"));
    }
  }

  long sequence() {
    return count(Part.SEQUENCE, MOST_DIGITS);
  }

  int schema() {
    return Math.toIntExact(count(Part.SCHEMA, MOST_SCHEMA_DIGITS));
  }

  Body body() {
    JsonValue value = parts.get(Part.BODY.key);
    if (!value.isObject()) {
      throw UnreadableEntry.wrong(
          Part.BODY, Phrase.of("an object of names and texts", "un objeto de textos con nombre"));
    }
    Map<String, String> values = new TreeMap<>();
    for (JsonObject.Member member : value.asObject()) {
      JsonValue said = member.getValue();
      if (!said.isString() && !said.isNumber()) throw UnreadableEntry.wrongBody(member.getName());
      // a number keeps the text it was written with: 6.50 stays 6.50
      String text = said.isString() ? said.asString() : said.toString();
      if (values.put(member.getName(), text) != null) throw UnreadableEntry.twice(member.getName());
    }
    return new Body(values);
  }

  List<String> replaces() {
    JsonValue value = parts.get(Part.REPLACES.key);
    if (!value.isArray()) {
      throw UnreadableEntry.wrong(
          Part.REPLACES, Phrase.of("a list of ids, [] for none", "una lista de ids, [] si no hay"));
    }
    List<String> ids = new ArrayList<>();
    for (JsonValue id : value.asArray()) ids.add(id(Part.REPLACES, id));
    return ids;
  }

  private static String id(Part part, JsonValue value) {
    if (value.isString() && Ids.isUuid(value.asString())) return Ids.lower(value.asString());
    throw UnreadableEntry.wrong(
        part,
        part == Part.REPLACES
            ? Phrase.of("a list of ids in the form of UUIDs", "una lista de ids en forma de UUID")
            : Phrase.of("an id in the form of a UUID", "un id en forma de UUID"));
  }

  private long count(Part part, int mostDigits) {
    JsonValue value = parts.get(part.key);
    String digits = value.isNumber() ? value.toString() : "";
    boolean whole = !digits.isEmpty() && digits.length() <= mostDigits;
    for (int i = 0; i < digits.length(); i++) whole &= digits.charAt(i) >= '0' && digits.charAt(i) <= '9';
    long count = whole ? Long.parseLong(digits) : 0;
    if (count < 1) {
      throw UnreadableEntry.wrong(
          part,
          Phrase.of(
              "a whole number from 1, of at most {0} digits, without quotes",
              "un número entero desde 1, de {0} cifras como máximo, sin comillas",
              mostDigits));
    }
    return count;
  }
}
