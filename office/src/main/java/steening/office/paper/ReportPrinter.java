package steening.office.paper;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import steening.job.Job;
import steening.journal.Moment;
import steening.language.Reader;
import steening.report.CompletionReport;
import steening.report.Paper;

/** Prints the completion report of a well. The two fonts are embedded, as far as their letters are used. */
public final class ReportPrinter {
  private static final String FONT = "DejaVu Sans Condensed";
  private static final int BOLD = 700;
  private static final int REGULAR = 400;

  static {
    // Resetting java.util.logging does not silence it.
    XRLog.setLoggingEnabled(false);
  }

  private ReportPrinter() {}

  public static byte[] print(Job job, Reader reader, Paper paper, Moment now) {
    String xhtml = CompletionReport.xhtml(job, reader, paper, FONT, now);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PdfRendererBuilder builder = new PdfRendererBuilder();
    builder.useFastMode();
    builder.useFont(() -> font("DejaVuSansCondensed.ttf"), FONT, REGULAR, FontStyle.NORMAL, true);
    builder.useFont(() -> font("DejaVuSansCondensed-Bold.ttf"), FONT, BOLD, FontStyle.NORMAL, true);
    builder.useSVGDrawer(new BatikSVGDrawer());
    builder.withProducer("Steening");
    builder.withHtmlContent(xhtml, null);
    builder.toStream(out);
    try {
      builder.run();
    } catch (IOException e) {
      throw new UncheckedIOException("the report could not be printed", e);
    }
    return out.toByteArray();
  }

  private static InputStream font(String file) {
    return ReportPrinter.class.getResourceAsStream("/fonts/" + file);
  }
}
