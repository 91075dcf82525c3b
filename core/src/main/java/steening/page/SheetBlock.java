package steening.page;

import static j2html.TagCreator.caption;
import static j2html.TagCreator.dd;
import static j2html.TagCreator.div;
import static j2html.TagCreator.dl;
import static j2html.TagCreator.dt;
import static j2html.TagCreator.each;
import static j2html.TagCreator.figure;
import static j2html.TagCreator.li;
import static j2html.TagCreator.rawHtml;
import static j2html.TagCreator.span;
import static j2html.TagCreator.tbody;
import static j2html.TagCreator.td;
import static j2html.TagCreator.th;
import static j2html.TagCreator.thead;
import static j2html.TagCreator.tr;
import static j2html.TagCreator.ul;

import j2html.tags.DomContent;
import java.util.ArrayList;
import java.util.List;
import steening.drawing.Chart;
import steening.drawing.ChartDrawing;
import steening.language.Reader;
import steening.language.Shown;
import steening.quantity.Figure;
import steening.stage.Sheet;

/** What a stage has to show. */
final class SheetBlock {
  private SheetBlock() {}

  static DomContent of(Sheet sheet, Reader reader) {
    List<DomContent> parts = new ArrayList<>();
    if (!sheet.lines().isEmpty()) parts.add(dl(each(sheet.lines(), line -> line(line, reader))).withClass("facts"));
    for (Sheet.Table table : sheet.tables()) parts.add(div(table(table, reader)).withClass("scroll"));
    if (!sheet.cautions().isEmpty()) parts.add(0, cautions(sheet, reader));
    for (Chart chart : sheet.charts()) parts.add(figure(rawHtml(ChartDrawing.draw(chart, reader))));
    return div(parts.toArray(DomContent[]::new)).withClass("sheet");
  }

  private static DomContent cautions(Sheet sheet, Reader reader) {
    return ul(each(sheet.cautions(), caution -> li(caution.shownTo(reader)))).withClass("cautions");
  }

  private static DomContent line(Sheet.Line line, Reader reader) {
    List<DomContent> value = new ArrayList<>();
    value.add(span(line.value().shownTo(reader)).withClass("value"));
    line.working().ifPresent(outcome -> value.add(WorkingBlock.of(outcome, reader)));
    return div(dt(line.label().shownTo(reader)), dd(value.toArray(DomContent[]::new)));
  }

  private static DomContent table(Sheet.Table table, Reader reader) {
    return j2html.TagCreator.table(
        caption(table.title().shownTo(reader)),
        thead(tr(each(table.heads(), head -> th(head.shownTo(reader)).attr("scope", "col")))),
        tbody(
            each(table.first(), row -> row(row, reader)),
            gap(table, reader),
            each(table.last(), row -> row(row, reader))));
  }

  private static DomContent gap(Sheet.Table table, Reader reader) {
    String width = Integer.toString(table.heads().size());
    return each(table.gap().stream().map(gap -> tr(td(gap.shownTo(reader)).attr("colspan", width))));
  }

  private static DomContent row(List<Shown> row, Reader reader) {
    return tr(each(row, cell -> cell(cell, reader)));
  }

  /** A number stays on one line with its unit. */
  private static DomContent cell(Shown cell, Reader reader) {
    return td(cell.shownTo(reader)).condAttr(cell instanceof Figure, "class", "figure");
  }
}
