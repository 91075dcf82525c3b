package steening.bench;

import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.text.PDFTextStripper;
import steening.job.Job;
import steening.journal.Entry;
import steening.journal.Journal;
import steening.journal.Moment;
import steening.language.Reader;
import steening.office.demo.DemoFirm;
import steening.office.paper.ReportPrinter;
import steening.report.Paper;

/** Printing the everyday well's report, against writing the same lines of text straight onto pages with PDFBox. */
final class ReportBench {
  private static final int RUNS = 30;
  private static final float SIZE = 8;
  private static final float LEFT = 50;
  private static final float TOP = 740;

  private ReportBench() {}

  static Row measure() throws Exception {
    List<Entry> entries = DemoFirm.well("everyday-well");
    Job job = Job.of(entries.get(0).well(), Journal.of(entries));
    Moment now = entries.get(entries.size() - 1).recordedAt();
    byte[] printed = ReportPrinter.print(job, Reader.US_ENGLISH, Paper.LETTER, now);
    List<List<String>> pages = linesOf(printed);
    double ours = Stopwatch.median(RUNS, () -> ReportPrinter.print(job, Reader.US_ENGLISH, Paper.LETTER, now));
    double floor = Stopwatch.median(RUNS, () -> write(pages));
    return Row.time("report of " + pages.size() + " pages, warm", ours, "its bare text by PDFBox", floor);
  }

  private static List<List<String>> linesOf(byte[] pdf) throws Exception {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      PDFTextStripper stripper = new PDFTextStripper();
      List<List<String>> pages = new ArrayList<>();
      for (int page = 1; page <= document.getNumberOfPages(); page++) {
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        pages.add(stripper.getText(document).lines().toList());
      }
      return pages;
    }
  }

  private static void write(List<List<String>> pages) throws Exception {
    try (PDDocument document = new PDDocument();
        InputStream file = ReportPrinter.class.getResourceAsStream("/fonts/DejaVuSansCondensed.ttf")) {
      PDType0Font font = PDType0Font.load(document, file, true);
      for (List<String> lines : pages) {
        PDPage page = new PDPage();
        document.addPage(page);
        try (PDPageContentStream content = new PDPageContentStream(document, page)) {
          content.beginText();
          content.setFont(font, SIZE);
          content.setLeading(SIZE);
          content.newLineAtOffset(LEFT, TOP);
          for (String line : lines) {
            content.showText(line.replace('\t', ' '));
            content.newLine();
          }
          content.endText();
        }
      }
      document.save(new ByteArrayOutputStream());
    }
  }
}
