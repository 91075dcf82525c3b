package steening.page;

import static j2html.TagCreator.details;
import static j2html.TagCreator.div;
import static j2html.TagCreator.each;
import static j2html.TagCreator.p;
import static j2html.TagCreator.span;
import static j2html.TagCreator.summary;
import static j2html.TagCreator.text;

import j2html.tags.DomContent;
import java.util.ArrayList;
import java.util.List;
import steening.language.Phrase;
import steening.language.Reader;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Working;

/** The working of a figure, folded away until someone opens it. */
final class WorkingBlock {
  private WorkingBlock() {}

  static DomContent of(Outcome outcome, Reader reader) {
    if (outcome.answers().isEmpty()) return text("");
    return details(summary(Words.WORKING.shownTo(reader)), lines(outcome, reader)).withClass("working");
  }

  /** Open, with the reckoning's source and limits. */
  static DomContent whole(Reckoning reckoning, Outcome outcome, Reader reader) {
    List<DomContent> parts = new ArrayList<>();
    parts.add(lines(outcome, reader));
    for (Phrase limit : reckoning.validity()) {
      parts.add(p(Words.HOLDS_FOR.shownTo(reader) + ": " + limit.shownTo(reader)).withClass("limit"));
    }
    parts.add(p(source(reckoning.source(), reader)).withClass("source"));
    return div(parts.toArray(DomContent[]::new)).withClass("working");
  }

  static DomContent lines(Outcome outcome, Reader reader) {
    return div(each(outcome.working(reader).lines(), line -> line(line, reader))).withClass("lines");
  }

  private static String source(Source source, Reader reader) {
    String text = Words.SOURCE.shownTo(reader) + ": " + source.publication().shownTo(reader);
    return source.read() == Source.Read.MEMORY ? text + " (" + Words.FROM_MEMORY.shownTo(reader) + ")" : text;
  }

  private static DomContent line(Working.Line line, Reader reader) {
    String unit = line.unit().isEmpty() ? "" : " " + line.unit();
    String made = line.value() + unit;
    if (line.isGiven()) {
      String sum = line.symbol() + " = " + made;
      return p(span(sum).withClass("sum"), span(line.label().shownTo(reader)).withClass("what"));
    }
    return p(
        span(line.symbol() + " = " + line.formula()).withClass("formula"),
        span("= " + line.figures()).withClass("figures"),
        span("= " + made).withClass("sum"),
        span(line.label().shownTo(reader)).withClass("what"));
  }
}
