package steening.office.web;

import java.util.Optional;
import java.util.function.Supplier;
import steening.journal.Moment;
import steening.language.Reader;
import steening.office.paper.ReportPrinter;
import steening.page.Request;
import steening.page.Shelf;
import steening.report.Paper;

/** The pages that are printed: {@code /well/<id>/report.pdf}, with {@code ?paper=a4} or {@code letter}. */
record Papers(Shelf shelf, Supplier<Moment> clock) {
  private static final String WELL = "/well/";
  private static final String REPORT = "/report.pdf";

  /** The printed page; empty where the address is another or there is no such well. One at a time, to spare memory. */
  synchronized Optional<byte[]> print(Request request) {
    String path = request.path();
    if (!path.startsWith(WELL) || !path.endsWith(REPORT) || path.length() <= WELL.length() + REPORT.length()) {
      return Optional.empty();
    }
    String well = path.substring(WELL.length(), path.length() - REPORT.length());
    if (!shelf.wells().contains(well)) return Optional.empty();
    return Optional.of(ReportPrinter.print(shelf.job(well), request.reader(), paper(request), clock.get()));
  }

  /** As asked; else what goes with the reader's units. */
  private static Paper paper(Request request) {
    Reader reader = request.reader();
    String usual = reader.metric() ? Paper.A4.code() : Paper.LETTER.code();
    return Paper.of(request.values().getOrDefault("paper", usual));
  }
}
