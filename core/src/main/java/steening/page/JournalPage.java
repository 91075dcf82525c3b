package steening.page;

import static j2html.TagCreator.a;
import static j2html.TagCreator.button;
import static j2html.TagCreator.div;
import static j2html.TagCreator.each;
import static j2html.TagCreator.form;
import static j2html.TagCreator.h1;
import static j2html.TagCreator.h2;
import static j2html.TagCreator.input;
import static j2html.TagCreator.label;
import static j2html.TagCreator.li;
import static j2html.TagCreator.nav;
import static j2html.TagCreator.ol;
import static j2html.TagCreator.p;
import static j2html.TagCreator.span;
import static j2html.TagCreator.text;

import j2html.tags.DomContent;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import steening.field.ChoiceField;
import steening.field.Kind;
import steening.job.Job;
import steening.job.Stages;
import steening.job.WellName;
import steening.journal.Dates;
import steening.journal.Entry;

/**
 * The entries of a well as they were typed, the latest first and so many to a page, the replaced ones struck through;
 * and the page to correct one.
 */
final class JournalPage {
  /** The id of the entry that those on the page lie before. */
  private static final String BEFORE = "before";

  private static final int ON_A_PAGE = 200;

  private JournalPage() {}

  static Reply answer(Visit visit, Job job) {
    String name = WellName.of(job.journal());
    List<Entry> all = job.journal().entries();
    int end = all.indexOf(job.journal().entry(visit.request().value(BEFORE)));
    int to = end < 0 ? all.size() : end;
    int from = Math.max(0, to - ON_A_PAGE);
    List<Entry> shown = new ArrayList<>();
    for (int i = to - 1; i >= from; i--) shown.add(all.get(i));
    return Reply.page(Layout.page(
        visit, name,
        h1(visit.say(Words.JOURNAL)),
        nav(a(name).withHref("/well/" + job.well().id())).withClass("others"),
        ol(each(shown, entry -> li(one(visit, job, entry)).withId("entry-" + entry.id()))).withClass("journal"),
        turning(visit, job, from, to)));
  }

  /** To the entries that are not on this page; nothing where all of them are. */
  private static DomContent turning(Visit visit, Job job, int from, int to) {
    List<Entry> all = job.journal().entries();
    if (to - from == all.size()) return text("");
    String address = "/well/" + job.well().id() + "/journal";
    List<DomContent> parts = new ArrayList<>();
    parts.add(span(visit.say(Words.OF_ALL.about(
            Integer.toString(from + 1), Integer.toString(to), Integer.toString(all.size()))))
        .withClass("label"));
    if (from > 0) {
      parts.add(a(visit.say(Words.OLDER)).withHref(address + "?" + BEFORE + "=" + all.get(from).id()));
    }
    if (to < all.size()) parts.add(a(visit.say(Words.NEWEST)).withHref(address));
    return nav(parts.toArray(DomContent[]::new)).withClass("others");
  }

  /** The page on which one entry is corrected or withdrawn. */
  static Reply correct(Visit visit, Job job, Entry entry, Optional<EntryForm> sent) {
    String address = "/well/" + job.well().id();
    List<DomContent> parts = new ArrayList<>();
    parts.add(h1(visit.say(Words.CORRECT)));
    parts.add(nav(a(WellName.of(job.journal())).withHref(address)).withClass("others"));
    parts.add(div(one(visit, job, entry)).withClass("journal"));
    Optional<Kind> kind = Stages.kind(entry.kind());
    if (kind.isPresent()) {
      EntryForm form = sent.orElseGet(() -> new EntryForm(
          kind.get(), address + "/entries", Writing.typedOf(entry), Map.of(), Optional.empty()));
      parts.add(h2(visit.say(kind.get().title())));
      parts.add(form.shown(visit));
    }
    parts.add(h2(visit.say(Words.WITHDRAW)));
    DomContent why = div(
            label(span(visit.say(Words.WHY))).withFor("why"),
            input().withType("text").withName("why").withId("why"))
        .withClass("field");
    parts.add(form(why, button(visit.say(Words.WITHDRAW)))
        .withMethod("post")
        .withAction(address + "/entry/" + entry.id() + "/withdrawal")
        .withClass("entry"));
    int status = sent.isPresent() ? 422 : 200;
    return Reply.page(status, Layout.page(visit, visit.say(Words.CORRECT), parts.toArray(DomContent[]::new)));
  }

  private static DomContent one(Visit visit, Job job, Entry entry) {
    List<DomContent> parts = new ArrayList<>();
    String title = entry.isWithdrawal()
        ? visit.say(Words.WITHDRAW)
        : Stages.kind(entry.kind()).map(k -> visit.say(k.title())).orElse(entry.kind());
    parts.add(p(
        span(Dates.format(entry.happenedAt().date()) + " " + entry.happenedAt().clock()).withClass("when"),
        span(title).withClass("title"),
        span(entry.who()).withClass("who"),
        span(state(visit, job, entry)).withClass("state")));
    parts.add(p(each(
        entry.body().values().entrySet(),
        value -> span(fieldName(entry, value.getKey(), visit) + ": " + said(entry, value.getKey(), visit))
            .withClass("value"))));
    if (!entry.isWithdrawal() && job.journal().replacementsOf(entry).isEmpty()) {
      parts.add(a(visit.say(Words.CORRECT)).withHref("/well/" + job.well().id() + "/entry/" + entry.id()));
    }
    boolean replaced = !job.journal().replacementsOf(entry).isEmpty();
    return div(parts.toArray(DomContent[]::new)).withClass(replaced ? "entry-line replaced" : "entry-line");
  }

  /** What was typed; a choice by its name and not by its code. */
  private static String said(Entry entry, String field, Visit visit) {
    return Stages.kind(entry.kind()).flatMap(k -> k.field(field))
        .flatMap(f -> f instanceof ChoiceField choice ? choice.in(entry.body()) : Optional.empty())
        .map(option -> visit.say(option.label()))
        .orElseGet(() -> entry.body().text(field).orElse(""));
  }

  private static String fieldName(Entry entry, String field, Visit visit) {
    return Stages.kind(entry.kind()).flatMap(k -> k.field(field)).map(f -> visit.say(f.label())).orElse(field);
  }

  private static String state(Visit visit, Job job, Entry entry) {
    List<Entry> replacements = job.journal().replacementsOf(entry);
    if (!replacements.isEmpty()) {
      boolean withdrawn = replacements.stream().allMatch(Entry::isWithdrawal);
      return visit.say(withdrawn ? Words.WITHDRAWN : Words.CORRECTED);
    }
    if (job.journal().waiting().contains(entry)) return visit.say(Words.WAITING);
    return entry.replaces().isEmpty() ? "" : visit.say(Words.CORRECTION);
  }
}
