package steening.report;

import static j2html.TagCreator.body;
import static j2html.TagCreator.div;
import static j2html.TagCreator.each;
import static j2html.TagCreator.h1;
import static j2html.TagCreator.h2;
import static j2html.TagCreator.head;
import static j2html.TagCreator.html;
import static j2html.TagCreator.p;
import static j2html.TagCreator.rawHtml;
import static j2html.TagCreator.span;
import static j2html.TagCreator.strong;
import static j2html.TagCreator.style;
import static j2html.TagCreator.table;
import static j2html.TagCreator.td;
import static j2html.TagCreator.text;
import static j2html.TagCreator.title;
import static j2html.TagCreator.tr;

import j2html.Config;
import j2html.rendering.FlatHtml;
import j2html.tags.DomContent;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import steening.drawing.Section;
import steening.drawing.Style;
import steening.finding.Finding;
import steening.job.Holes;
import steening.job.Job;
import steening.job.Stages;
import steening.job.WellName;
import steening.journal.Dates;
import steening.journal.Moment;
import steening.language.Phrase;
import steening.language.Reader;
import steening.stage.Sheet;
import steening.stage.Stage;
import steening.well.Well;

/**
 * The completion report: who, where, permit and tag; the section; each stage with its figures, tables and charts; what
 * was found; a line to sign; and an appendix with the working of every figure.
 */
public final class CompletionReport {
  private static final Phrase TITLE = Phrase.of("Well completion report", "Informe de terminación de pozo");
  private static final Phrase SECTION = Phrase.of("Section of the well", "Corte del pozo");
  private static final Phrase FINDINGS = Phrase.of("Findings", "Hallazgos");
  private static final Phrase DEPTHS = Phrase.of(
      "All depths are below the ground surface unless the point they were read from is named.",
      "Todas las profundidades son bajo el terreno, salvo que se nombre el punto de lectura.");
  private static final Phrase PRINTED = Phrase.of("Printed {0} from {1} entries.", "Impreso el {0} de {1} registros.");
  static final Phrase SIGNED = Phrase.of(
      "Signature of the licensed driller", "Firma del perforador con licencia");
  static final Phrase DATE = Phrase.of("Date", "Fecha");
  private static final Phrase CAUTION = Phrase.of(
      "Local code, product labels and the licensed person decide where this paper and they differ.",
      "La norma local, las etiquetas y la persona con licencia deciden donde este papel y ellas difieran.");

  private final Job job;
  private final Reader reader;
  private final Appendix appendix;

  private CompletionReport(Job job, Reader reader) {
    this.job = job;
    this.reader = reader;
    this.appendix = new Appendix(reader);
  }

  /**
   * The report as well-formed XHTML with its style in it, ready to be printed.
   *
   * @param font the name of the font family that the printer embeds
   */
  public static String xhtml(Job job, Reader reader, Paper paper, String font, Moment now) {
    return new CompletionReport(job, reader).document(paper, font, now);
  }

  private String document(Paper paper, String font, Moment now) {
    String name = WellName.of(job.journal());
    List<DomContent> parts = new ArrayList<>();
    parts.add(h1(say(TITLE)));
    parts.add(p(name).withClass("name"));
    parts.add(first());
    for (Stage stage : Stages.all()) if (!stage.isBesideTheLine()) parts.add(stage(stage));
    parts.add(findings());
    parts.add(signature(now));
    for (Well hole : job.well().earlier()) parts.add(HolePart.of(hole, reader, appendix));
    for (Well hole : Holes.closed(job.well())) parts.add(PluggingRecord.of(hole, name, reader, appendix));
    parts.add(appendix.written());
    DomContent whole = html(
            head(title(say(TITLE) + ": " + name), style(rawHtml(Print.of(paper, font)))),
            body(parts.toArray(DomContent[]::new)))
        .withLang(reader.language().code())
        .attr("xmlns", "http://www.w3.org/1999/xhtml");
    try {
      return whole.render(FlatHtml.inMemory(Config.defaults().withEmptyTagsClosed(true))).toString();
    } catch (IOException impossible) {
      throw new IllegalStateException("writing to memory failed", impossible);
    }
  }

  /** The first page: the section, as large as the page lets it be. */
  private DomContent first() {
    String drawing = Section.draw(job.well(), reader, Style.PAGE.named("report-"));
    return div(h2(say(SECTION)), rawHtml(drawing), p(say(DEPTHS)).withClass("note")).withClass("first");
  }

  private DomContent stage(Stage stage) {
    Sheet sheet = stage.sheet(job.well());
    if (sheet.isEmpty()) return text("");
    return div(h2(say(stage.title())), SheetPrint.of(sheet, reader, appendix)).withClass("stage");
  }

  private DomContent findings() {
    List<Finding> findings = job.findings();
    if (findings.isEmpty()) return text("");
    return div(h2(say(FINDINGS)), each(findings, f -> p(strong(say(f.weight().label()) + ". "), span(say(f.text())))));
  }

  private DomContent signature(Moment now) {
    String count = Integer.toString(job.journal().size());
    return div(
            p(say(PRINTED.about(Dates.format(now.date()), count))).withClass("note"),
            p(say(CAUTION)).withClass("note"),
            table(tr(td(say(SIGNED)), td(say(DATE)))).withClass("sign"))
        .withClass("stage");
  }

  private String say(Phrase phrase) {
    return phrase.shownTo(reader);
  }
}
