package steening.report;

import static j2html.TagCreator.div;
import static j2html.TagCreator.each;
import static j2html.TagCreator.h1;
import static j2html.TagCreator.h2;
import static j2html.TagCreator.p;
import static j2html.TagCreator.rawHtml;

import j2html.tags.DomContent;
import java.util.ArrayList;
import java.util.List;
import steening.drawing.Section;
import steening.drawing.Style;
import steening.job.Holes;
import steening.language.Reader;
import steening.stage.Stage;
import steening.well.Well;

/** A hole that was given up, as a part of the report of its own: how it was left, its section, its own volumes. */
final class HolePart {
  private HolePart() {}

  static DomContent of(Well hole, Reader reader, Appendix appendix) {
    List<DomContent> parts = new ArrayList<>();
    parts.add(h1(Holes.name(hole.number()).shownTo(reader)));
    Holes.givenUp(hole).ifPresent(said -> parts.add(p(said.shownTo(reader))));
    String drawing = Section.draw(hole, reader, Style.PAGE.named("hole-" + hole.number() + "-"));
    parts.add(div(rawHtml(drawing)).withClass("first"));
    for (Stage stage : Holes.stages(hole)) {
      if (stage.isBesideTheLine()) continue;
      parts.add(div(h2(stage.title().shownTo(reader)), SheetPrint.of(Holes.sheet(stage, hole), reader, appendix))
          .withClass("stage"));
    }
    parts.add(each(Holes.findings(hole), found -> p(found.text().shownTo(reader))));
    return div(parts.toArray(DomContent[]::new)).withClass("hole");
  }
}
