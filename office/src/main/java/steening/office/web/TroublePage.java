package steening.office.web;

import static j2html.TagCreator.a;
import static j2html.TagCreator.body;
import static j2html.TagCreator.document;
import static j2html.TagCreator.h1;
import static j2html.TagCreator.head;
import static j2html.TagCreator.html;
import static j2html.TagCreator.link;
import static j2html.TagCreator.main;
import static j2html.TagCreator.meta;
import static j2html.TagCreator.p;
import static j2html.TagCreator.title;

import steening.language.Language;
import steening.language.Phrase;
import steening.language.Reader;
import steening.language.UnitSystem;

/** What is shown when the office itself cannot answer. In both languages: who asks is not always known yet. */
final class TroublePage {
  private static final Reader SPANISH = new Reader(Language.SPANISH, UnitSystem.US);

  private TroublePage() {}

  static String of(Phrase phrase) {
    return document(
        html(
                head(
                    meta().withCharset("utf-8"),
                    meta().withName("viewport").withContent("width=device-width, initial-scale=1"),
                    title("Steening"),
                    link().withRel("stylesheet").withHref("/style.css")),
                body(
                    main(
                            h1(phrase.shownTo(Reader.US_ENGLISH)),
                            p(phrase.shownTo(SPANISH)).withLang(Language.SPANISH.code()),
                            p(a("Steening").withHref("/")))
                        .withId("content")))
            .withLang(Language.ENGLISH.code()));
  }
}
