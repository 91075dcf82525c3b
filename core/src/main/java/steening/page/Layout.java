package steening.page;

import static j2html.TagCreator.a;
import static j2html.TagCreator.body;
import static j2html.TagCreator.button;
import static j2html.TagCreator.document;
import static j2html.TagCreator.footer;
import static j2html.TagCreator.form;
import static j2html.TagCreator.h1;
import static j2html.TagCreator.head;
import static j2html.TagCreator.header;
import static j2html.TagCreator.html;
import static j2html.TagCreator.input;
import static j2html.TagCreator.link;
import static j2html.TagCreator.main;
import static j2html.TagCreator.meta;
import static j2html.TagCreator.nav;
import static j2html.TagCreator.span;
import static j2html.TagCreator.title;

import j2html.tags.DomContent;
import j2html.tags.specialized.ButtonTag;
import steening.language.Language;
import steening.language.Phrase;
import steening.language.UnitSystem;

/** The frame around every page. */
final class Layout {
  private Layout() {}

  static String page(Visit visit, String title, DomContent... content) {
    return document(
        html(
                head(
                    meta().withCharset("utf-8"),
                    meta().withName("viewport").withContent("width=device-width, initial-scale=1"),
                    title(title + " · Steening"),
                    link().withRel("stylesheet").withHref("/style.css"),
                    link().withRel("icon").withHref("/icon.svg").withType("image/svg+xml")),
                body(
                    a(visit.say(Words.SKIP)).withHref("#content").withClass("skip"),
                    header(
                            a("Steening").withHref("/").withClass("mark"),
                            nav(
                                a(visit.say(Words.WELLS)).withHref("/"),
                                a(visit.say(Words.RECKON)).withHref("/reckon")))
                        .withClass("top"),
                    main(content).withId("content"),
                    footer(units(visit), language(visit)).withClass("foot")))
            .withLang(visit.reader().language().code()));
  }

  static Reply nothingHere(Visit visit) {
    return Reply.page(404, page(visit, visit.say(Words.WELLS), h1(visit.say(Words.NOTHING_HERE))));
  }

  private static DomContent units(Visit visit) {
    return choice(
        visit, Words.UNITS, Visit.UNITS,
        option(visit.say(Words.US_UNITS), UnitSystem.US.code(), !visit.reader().metric()),
        option(visit.say(Words.METRIC_UNITS), UnitSystem.METRIC.code(), visit.reader().metric()));
  }

  private static DomContent language(Visit visit) {
    boolean spanish = visit.reader().language() == Language.SPANISH;
    return choice(
        visit, Words.LANGUAGE, Visit.LANGUAGE,
        option("English", Language.ENGLISH.code(), !spanish), option("Español", Language.SPANISH.code(), spanish));
  }

  private static DomContent choice(Visit visit, Phrase label, String name, DomContent... options) {
    DomContent[] named = new DomContent[options.length + 2];
    named[0] = input().withType("hidden").withName("back").withValue(visit.request().path());
    named[1] = span(visit.say(label)).withClass("label");
    for (int i = 0; i < options.length; i++) {
      named[i + 2] = options[i] instanceof ButtonTag tag ? tag.withName(name) : options[i];
    }
    return form(named).withMethod("post").withAction("/settings").withClass("setting");
  }

  private static DomContent option(String text, String value, boolean chosen) {
    return button(text).withValue(value).attr("aria-pressed", chosen ? "true" : "false");
  }
}
