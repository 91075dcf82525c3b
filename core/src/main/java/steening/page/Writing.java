package steening.page;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import steening.field.Field;
import steening.field.Kind;
import steening.field.Reading;
import steening.journal.Body;
import steening.journal.Entry;
import steening.journal.Moment;
import steening.language.Phrase;

/** What was sent becomes an entry, or the form comes back with what was wrong. */
final class Writing {
  /** A clock a few minutes fast is no reason to refuse. */
  private static final long MINUTES_AHEAD = 10;

  private Writing() {}

  /** Either an entry or the form again; never both. */
  record Written(Optional<Entry> entry, EntryForm form) {}

  static Written read(Visit visit, Kind kind, String well, String action) {
    Map<String, String> typed = visit.request().values();
    Map<Field, Reading> readings = kind.read(typed, visit.reader());
    Optional<Body> body = kind.body(readings, typed.getOrDefault(Kind.SURE.name(), ""));
    String hand = typed.getOrDefault(EntryForm.HAND, visit.hand().orElse("")).trim();
    String happened = typed.getOrDefault(EntryForm.HAPPENED, "").trim();
    Optional<Moment> at = happened.isEmpty() ? Optional.of(visit.now()) : moment(happened, visit.now());
    Moment latest = visit.now().plusMinutes(MINUTES_AHEAD);
    Optional<Phrase> trouble = Optional.empty();
    if (body.isEmpty()) trouble = Optional.of(Words.NOT_TAKEN);
    else if (hand.isEmpty()) trouble = Optional.of(Words.HAND_MISSING);
    else if (at.isEmpty()) trouble = Optional.of(Words.WHEN_UNREADABLE.about(happened));
    else if (at.get().isAfter(latest)) trouble = Optional.of(Words.WHEN_AHEAD.about(happened));
    EntryForm form = new EntryForm(kind, action, typed, readings, trouble);
    if (trouble.isPresent()) return new Written(Optional.empty(), form);
    List<String> replaces =
        typed.containsKey(EntryForm.REPLACES) ? List.of(typed.get(EntryForm.REPLACES).split(" ")) : List.of();
    Entry entry = entry(visit, well, hand, at.get(), kind.name(), kind.schema(), body.get(), replaces);
    return new Written(Optional.of(entry), form);
  }

  /** An entry that takes another back. */
  static Entry withdrawal(Visit visit, Entry target, String hand, String why) {
    Body body = why.isBlank() ? Body.EMPTY : Body.of(Kind.REMARK.name(), why.trim());
    return entry(visit, target.well(), hand, target.happenedAt(), Entry.WITHDRAWAL, 1, body, List.of(target.id()));
  }

  /** What stands in the form when an entry is to be corrected. */
  static Map<String, String> typedOf(Entry entry) {
    Map<String, String> typed = new LinkedHashMap<>(entry.body().values());
    typed.put(EntryForm.REPLACES, entry.id());
    typed.put(EntryForm.HAPPENED, entry.happenedAt().toString());
    return typed;
  }

  private static Entry entry(
      Visit visit, String well, String hand, Moment at, String kind, int schema, Body body, List<String> replaces) {
    Pen pen = visit.pen();
    return new Entry(
        pen.ids().get(0), well, pen.device(), pen.nextSequence(), hand, at, visit.now(), kind, schema, body, replaces);
  }

  /** With or without an offset; without one, the clock is the one of now. */
  private static Optional<Moment> moment(String text, Moment now) {
    for (String candidate : List.of(text, text + now.toString().substring(zoneStart(now.toString())))) {
      try {
        return Optional.of(Moment.parse(candidate));
      } catch (IllegalArgumentException unreadable) {
        // The other form may do.
      }
    }
    return Optional.empty();
  }

  private static int zoneStart(String moment) {
    int i = 16;
    while (i < moment.length() && "Z+-".indexOf(moment.charAt(i)) < 0) i++;
    return i;
  }
}
