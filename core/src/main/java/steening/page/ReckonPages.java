package steening.page;

import static j2html.TagCreator.a;
import static j2html.TagCreator.button;
import static j2html.TagCreator.dd;
import static j2html.TagCreator.div;
import static j2html.TagCreator.dl;
import static j2html.TagCreator.dt;
import static j2html.TagCreator.each;
import static j2html.TagCreator.form;
import static j2html.TagCreator.h1;
import static j2html.TagCreator.h2;
import static j2html.TagCreator.input;
import static j2html.TagCreator.li;
import static j2html.TagCreator.p;
import static j2html.TagCreator.section;
import static j2html.TagCreator.span;
import static j2html.TagCreator.ul;

import j2html.tags.DomContent;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import steening.field.Field;
import steening.field.Kind;
import steening.field.Reading;
import steening.job.Stages;
import steening.language.Phrase;
import steening.language.Shown;
import steening.reckoning.Answer;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.reckoning.Question;
import steening.reckoning.Reckoning;
import steening.stage.Stage;

/** The reckonings without any well, for the cab of the truck. */
final class ReckonPages {
  /** Sent with every form, so that a first visit is told from one with empty fields. */
  private static final String SENT = "sent";

  private ReckonPages() {}

  static Reply list(Visit visit) {
    List<DomContent> parts = new ArrayList<>();
    parts.add(h1(visit.say(Words.RECKON)));
    for (Stage stage : Stages.all()) {
      if (stage.reckonings().isEmpty()) continue;
      DomContent reckonings = ul(each(
          stage.reckonings(),
          r -> li(a(span(visit.say(r.title())).withClass("name")).withHref("/reckon/" + r.name()))));
      parts.add(section(h2(visit.say(stage.title())), reckonings).withClass("wells"));
    }
    return Reply.page(Layout.page(visit, visit.say(Words.RECKON), parts.toArray(DomContent[]::new)));
  }

  static Reply one(Visit visit, Reckoning reckoning) {
    Map<String, String> typed = visit.request().values();
    Kind fields = reckoning.form();
    boolean sent = typed.containsKey(SENT);
    Question question = Question.of(reckoning, typed, visit.reader());
    boolean answered = sent && question.body().isPresent();
    List<DomContent> parts = new ArrayList<>();
    parts.add(h1(visit.say(reckoning.title())));
    if (answered) parts.add(answer(visit, question));
    parts.add(asked(visit, fields, typed, sent ? question.readings() : Map.of()));
    String page = Layout.page(visit, visit.say(reckoning.title()), parts.toArray(DomContent[]::new));
    return Reply.page(sent && !answered ? 422 : 200, page);
  }

  private static DomContent asked(Visit visit, Kind fields, Map<String, String> typed, Map<Field, Reading> readings) {
    String sure = typed.getOrDefault(Kind.SURE.name(), "");
    List<DomContent> parts = new ArrayList<>();
    parts.add(button(visit.say(Words.RECKON_IT))
        .withClass("unseen").attr("tabindex", "-1").attr("aria-hidden", "true"));
    parts.add(input().withType("hidden").withName(SENT).withValue("1"));
    parts.add(input().withType("hidden").withName(Kind.SURE.name()).withValue(sure));
    for (Field field : fields.fields()) {
      parts.add(FieldInput.of(field, typed.getOrDefault(field.name(), ""), readings.get(field), sure, visit.reader()));
    }
    parts.add(button(visit.say(Words.RECKON_IT)).withClass("main"));
    return form(parts.toArray(DomContent[]::new)).withMethod("get").withClass("entry");
  }

  private static DomContent answer(Visit visit, Question question) {
    Reckoning reckoning = question.reckoning();
    try {
      Outcome outcome = question.answer();
      List<DomContent> lines = new ArrayList<>();
      for (Answer answer : reckoning.answers()) {
        Optional<Shown> shown = outcome.shown(answer.name());
        if (shown.isEmpty()) continue;
        String text = shown.get().shownTo(visit.reader());
        lines.add(div(dt(visit.say(answer.label())), dd(span(text).withClass("number"))));
      }
      List<DomContent> parts = new ArrayList<>();
      parts.add(dl(lines.toArray(DomContent[]::new)).withClass("facts"));
      for (Phrase remark : outcome.remarks()) parts.add(p(visit.say(remark)).withClass("sentence"));
      parts.add(WorkingBlock.whole(reckoning, outcome, visit.reader()));
      return section(parts.toArray(DomContent[]::new)).withClass("next").attr("role", "status");
    } catch (NotReckonable contradiction) {
      return p(visit.say(contradiction.sentence())).withClass("sentence").attr("role", "alert");
    }
  }
}
