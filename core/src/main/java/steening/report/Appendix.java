package steening.report;

import static j2html.TagCreator.div;
import static j2html.TagCreator.h2;
import static j2html.TagCreator.h3;
import static j2html.TagCreator.p;
import static j2html.TagCreator.span;
import static j2html.TagCreator.text;

import j2html.tags.DomContent;
import java.util.ArrayList;
import java.util.List;
import steening.language.Phrase;
import steening.language.Reader;
import steening.reckoning.Outcome;
import steening.reckoning.Working;

/** The working of every figure of a report, numbered in the order the figures appear. */
final class Appendix {
  private static final Phrase TITLE = Phrase.of(
      "Appendix: the working of every figure", "Anexo: el desarrollo de cada cifra");

  private final Reader reader;
  private final List<DomContent> items = new ArrayList<>();

  Appendix(Reader reader) {
    this.reader = reader;
  }

  /** Takes a working in and answers the number it is found under. */
  int number(Phrase of, Outcome outcome) {
    List<DomContent> parts = new ArrayList<>();
    int number = items.size() + 1;
    parts.add(h3("[" + number + "] " + of.shownTo(reader)));
    for (Working.Line line : outcome.working(reader).lines()) parts.add(p(line(line)).withClass("line"));
    items.add(div(parts.toArray(DomContent[]::new)).withClass("item"));
    return number;
  }

  DomContent written() {
    if (items.isEmpty()) return text("");
    List<DomContent> parts = new ArrayList<>();
    parts.add(h2(TITLE.shownTo(reader)));
    parts.addAll(items);
    return div(parts.toArray(DomContent[]::new)).withClass("appendix");
  }

  private DomContent[] line(Working.Line line) {
    String made = line.value() + (line.unit().isEmpty() ? "" : " " + line.unit());
    String sum = line.isGiven()
        ? line.symbol() + " = " + made
        : line.symbol() + " = " + line.formula() + " = " + line.figures() + " = " + made;
    return new DomContent[] {span(sum), span("  " + line.label().shownTo(reader)).withClass("what")};
  }
}
