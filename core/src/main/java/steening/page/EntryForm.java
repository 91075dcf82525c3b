package steening.page;

import static j2html.TagCreator.button;
import static j2html.TagCreator.details;
import static j2html.TagCreator.div;
import static j2html.TagCreator.form;
import static j2html.TagCreator.input;
import static j2html.TagCreator.label;
import static j2html.TagCreator.p;
import static j2html.TagCreator.span;
import static j2html.TagCreator.summary;

import j2html.tags.DomContent;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import steening.field.Field;
import steening.field.Kind;
import steening.field.Reading;
import steening.journal.Entry;
import steening.language.Phrase;
import steening.language.Reader;
import steening.language.Shown;

/**
 * The form of one kind of entry: empty, or as it was sent and with what was wrong.
 *
 * @param action where it is posted to
 * @param typed what stands in the fields
 * @param readings what became of them; empty before anything was sent
 * @param trouble a sentence about the form as a whole
 */
record EntryForm(
    Kind kind, String action, Map<String, String> typed, Map<Field, Reading> readings, Optional<Phrase> trouble) {
  static final String KIND = "kind";
  static final String HAPPENED = "happened";
  static final String REPLACES = "replaces";
  static final String HAND = "hand";

  /** A form to begin with, with what the well suggests, and what usually stays as it was in the entry before. */
  static EntryForm after(Optional<Entry> before, Kind kind, Map<String, Shown> suggested, String action, Reader reader) {
    Map<String, String> begun = new LinkedHashMap<>();
    suggested.forEach((field, shown) -> begun.put(field, shown.shownTo(reader)));
    before.ifPresent(entry -> begun.putAll(kind.begun(entry.body())));
    return new EntryForm(kind, action, begun, Map.of(), Optional.empty());
  }

  DomContent shown(Visit visit) {
    String sure = typed.getOrDefault(Kind.SURE.name(), "");
    List<DomContent> parts = new ArrayList<>();
    // The first button is the one that the enter key presses: it must not be one of the answers to a question.
    parts.add(button(visit.say(Words.TAKE_DOWN))
        .withClass("unseen").attr("tabindex", "-1").attr("aria-hidden", "true"));
    parts.add(hidden(KIND, kind.name()));
    if (typed.containsKey(REPLACES)) parts.add(hidden(REPLACES, typed.get(REPLACES)));
    parts.add(hidden(Kind.SURE.name(), sure));
    trouble.ifPresent(sentence -> parts.add(p(visit.say(sentence)).withClass("sentence").attr("role", "alert")));
    List<DomContent> more = new ArrayList<>();
    for (Field field : kind.fields()) {
      String sent = typed.getOrDefault(field.name(), "");
      DomContent shown = FieldInput.of(field, sent, readings.get(field), sure, visit.reader());
      (isFolded(field) ? more : parts).add(shown);
    }
    if (!more.isEmpty()) {
      DomContent inside = div(more.toArray(DomContent[]::new)).withClass("entry");
      parts.add(folded(visit.say(Words.MORE), inside));
    }
    parts.add(whenAndWho(visit));
    parts.add(button(visit.say(Words.TAKE_DOWN)).withClass("main"));
    return form(parts.toArray(DomContent[]::new))
        .withMethod("post").withAction(action).withClass("entry").withId("entry");
  }

  /** What mostly stays empty is out of the way of a thumb until someone wants it, or until it is in trouble. */
  private boolean isFolded(Field field) {
    boolean quiet = readings.get(field) == null || readings.get(field) instanceof Reading.Absent;
    return !kind.asksAtOnce(field) && quiet && typed.getOrDefault(field.name(), "").isBlank();
  }

  private DomContent whenAndWho(Visit visit) {
    String happened = typed.getOrDefault(HAPPENED, "");
    String type = happened.isEmpty() ? "datetime-local" : "text";
    DomContent when = div(
            label(span(visit.say(Words.WHEN))).withFor(HAPPENED),
            input().withType(type).withName(HAPPENED).withId(HAPPENED).withValue(happened))
        .withClass("field");
    String hand = typed.getOrDefault(HAND, visit.hand().orElse(""));
    DomContent who = div(
            label(span(visit.say(Words.HAND))).withFor(HAND),
            input().withType("text").withName(HAND).withId(HAND).withValue(hand).attr("autocomplete", "name"))
        .withClass("field");
    if (visit.hand().isEmpty()) return div(who, folded(visit.say(Words.WHEN), when));
    return folded(visit.say(Words.WHEN), div(when, who));
  }

  private static DomContent folded(String title, DomContent content) {
    return details(summary(title), content).withClass("aside");
  }

  private static DomContent hidden(String name, String value) {
    return input().withType("hidden").withName(name).withValue(value);
  }
}
