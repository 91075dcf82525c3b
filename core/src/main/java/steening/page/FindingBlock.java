package steening.page;

import static j2html.TagCreator.dd;
import static j2html.TagCreator.div;
import static j2html.TagCreator.dl;
import static j2html.TagCreator.dt;
import static j2html.TagCreator.p;
import static j2html.TagCreator.section;
import static j2html.TagCreator.strong;
import static j2html.TagCreator.text;

import j2html.tags.DomContent;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import steening.finding.Finding;
import steening.language.Phrase;
import steening.language.Reader;

/** Findings, each with its weight in words first, so that it is read without colour. */
final class FindingBlock {
  private static final int OF_A_CODE = 10;

  private FindingBlock() {}

  /** Of findings with one code only the first few: the next step is the same for all of them. */
  static DomContent all(List<Finding> findings, Reader reader) {
    Map<String, Integer> counts = new TreeMap<>();
    for (Finding finding : findings) counts.merge(finding.code(), 1, Integer::sum);
    Map<String, Integer> shown = new TreeMap<>();
    List<DomContent> blocks = new ArrayList<>();
    for (Finding finding : findings) {
      int place = shown.merge(finding.code(), 1, Integer::sum);
      int more = place == OF_A_CODE ? counts.get(finding.code()) - place : 0;
      if (place <= OF_A_CODE) blocks.add(one(finding, more, reader));
    }
    return section(blocks.toArray(DomContent[]::new)).withClass("findings");
  }

  private static DomContent one(Finding finding, int more, Reader reader) {
    List<DomContent> parts = new ArrayList<>();
    parts.add(p(strong(finding.weight().label().shownTo(reader)), text(" " + finding.text().shownTo(reader))));
    List<DomContent> pairs = new ArrayList<>();
    finding.measured().ifPresent(
        figure -> pairs.add(pair("number-pair", Words.MEASURED, figure.shownTo(reader), reader)));
    finding.expected().ifPresent(
        figure -> pairs.add(pair("number-pair", Words.EXPECTED, figure.shownTo(reader), reader)));
    finding.next().ifPresent(next -> pairs.add(pair("words-pair", Words.DO_NOW, next.shownTo(reader), reader)));
    finding.cause().ifPresent(cause -> pairs.add(pair("words-pair", Words.CAUSE, cause.shownTo(reader), reader)));
    if (!pairs.isEmpty()) parts.add(dl(pairs.toArray(DomContent[]::new)));
    finding.working().ifPresent(outcome -> parts.add(WorkingBlock.of(outcome, reader)));
    if (more > 0) parts.add(p(Words.MORE_LIKE_THIS.about(Integer.toString(more)).shownTo(reader)));
    return div(parts.toArray(DomContent[]::new))
        .withClass("finding " + finding.weight().code())
        .attr("data-code", finding.code());
  }

  private static DomContent pair(String sort, Phrase label, String text, Reader reader) {
    return div(dt(label.shownTo(reader)), dd(text)).withClass(sort);
  }
}
