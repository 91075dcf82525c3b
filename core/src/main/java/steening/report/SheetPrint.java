package steening.report;

import static j2html.TagCreator.caption;
import static j2html.TagCreator.div;
import static j2html.TagCreator.each;
import static j2html.TagCreator.rawHtml;
import static j2html.TagCreator.span;
import static j2html.TagCreator.table;
import static j2html.TagCreator.tbody;
import static j2html.TagCreator.td;
import static j2html.TagCreator.text;
import static j2html.TagCreator.th;
import static j2html.TagCreator.thead;
import static j2html.TagCreator.tr;

import j2html.tags.DomContent;
import java.util.ArrayList;
import java.util.List;
import steening.drawing.Chart;
import steening.drawing.ChartDrawing;
import steening.language.Reader;
import steening.language.Shown;
import steening.stage.Sheet;

/** A stage's sheet on paper; a figure with a working carries its number in the appendix. */
final class SheetPrint {
  /** A table up to so many rows stays on one page. */
  private static final int LONGEST_UNBROKEN = 14;

  private SheetPrint() {}

  static DomContent of(Sheet sheet, Reader reader, Appendix appendix) {
    List<DomContent> parts = new ArrayList<>();
    if (!sheet.lines().isEmpty()) parts.add(facts(sheet.lines(), reader, appendix));
    for (Sheet.Table printed : sheet.tables()) parts.add(rows(printed, reader));
    for (Chart chart : sheet.charts()) parts.add(div(rawHtml(ChartDrawing.draw(chart, reader))).withClass("chart"));
    return div(parts.toArray(DomContent[]::new));
  }

  /** Facts side by side, two to a row, read down the left half and then down the right. */
  private static DomContent facts(List<Sheet.Line> lines, Reader reader, Appendix appendix) {
    List<DomContent[]> cells = new ArrayList<>();
    for (Sheet.Line line : lines) {
      DomContent reference = line.working()
          .<DomContent>map(outcome -> span(" [" + appendix.number(line.label(), outcome) + "]").withClass("reference"))
          .orElse(text(""));
      cells.add(new DomContent[] {
        td(line.label().shownTo(reader)), td(text(line.value().shownTo(reader)), reference).withClass("value")
      });
    }
    int half = (cells.size() + 1) / 2;
    List<DomContent> rows = new ArrayList<>();
    for (int i = 0; i < half; i++) {
      DomContent[] left = cells.get(i);
      DomContent[] empty = {td().withClass("gap"), td().withClass("gap")};
      DomContent[] right = i + half < cells.size() ? cells.get(i + half) : empty;
      rows.add(tr(left[0], left[1], td().withClass("gap"), right[0], right[1]));
    }
    return table(rows.toArray(DomContent[]::new)).withClass("facts");
  }

  private static DomContent row(List<Shown> row, Reader reader) {
    return tr(each(row, cell -> td(cell.shownTo(reader))));
  }

  private static DomContent rows(Sheet.Table sheetTable, Reader reader) {
    String width = Integer.toString(sheetTable.heads().size());
    return table(
            caption(sheetTable.title().shownTo(reader)),
            thead(tr(each(sheetTable.heads(), head -> th(head.shownTo(reader))))),
            tbody(
                each(sheetTable.first(), row -> row(row, reader)),
                each(sheetTable.gap().stream().map(gap -> tr(td(gap.shownTo(reader)).attr("colspan", width)))),
                each(sheetTable.last(), row -> row(row, reader))))
        .withClass(sheetTable.rows().size() > LONGEST_UNBROKEN ? "rows" : "rows short");
  }
}
