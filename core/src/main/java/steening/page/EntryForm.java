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
import java.util.List;
import java.util.Map;
import java.util.Optional;
import steening.field.Field;
import steening.field.Kind;
import steening.field.Reading;
import steening.language.Phrase;

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

  static EntryForm empty(Kind kind, String action) {
    return new EntryForm(kind, action, Map.of(), Map.of(), Optional.empty());
  }

  DomContent shown(Visit visit) {
    String sure = typed.getOrDefault(Kind.SURE.name(), "");
    List<DomContent> parts = new ArrayList<>();
    // The first button is the one that the enter key presses: it must not be one of the answers to a question.
    parts.add(button(visit.say(Words.TAKE_DOWN)).withClass("unseen").attr("tabindex", "-1").attr("aria-hidden", "true"));
    parts.add(hidden(KIND, kind.name()));
    if (typed.containsKey(REPLACES)) parts.add(hidden(REPLACES, typed.get(REPLACES)));
    parts.add(hidden(Kind.SURE.name(), sure));
    trouble.ifPresent(sentence -> parts.add(p(visit.say(sentence)).withClass("sentence").attr("role", "alert")));
    for (Field field : kind.fields()) {
      parts.add(FieldInput.of(field, typed.getOrDefault(field.name(), ""), readings.get(field), sure, visit.reader()));
    }
    parts.add(whenAndWho(visit));
    parts.add(button(visit.say(Words.TAKE_DOWN)).withClass("main"));
    return form(parts.toArray(DomContent[]::new)).withMethod("post").withAction(action).withClass("entry").withId("entry");
  }

  private DomContent whenAndWho(Visit visit) {
    String happened = typed.getOrDefault(HAPPENED, "");
    DomContent when = div(
            label(span(visit.say(Words.WHEN))).withFor(HAPPENED),
            input().withType(happened.isEmpty() ? "datetime-local" : "text").withName(HAPPENED).withId(HAPPENED).withValue(happened))
        .withClass("field");
    String hand = typed.getOrDefault(HAND, visit.hand().orElse(""));
    DomContent who = div(
            label(span(visit.say(Words.HAND))).withFor(HAND),
            input().withType("text").withName(HAND).withId(HAND).withValue(hand).attr("autocomplete", "name"))
        .withClass("field");
    if (visit.hand().isEmpty()) return div(who, folded(visit, when));
    return folded(visit, div(when, who));
  }

  private static DomContent folded(Visit visit, DomContent content) {
    return details(summary(visit.say(Words.WHEN)), content).withClass("aside");
  }

  private static DomContent hidden(String name, String value) {
    return input().withType("hidden").withName(name).withValue(value);
  }
}
