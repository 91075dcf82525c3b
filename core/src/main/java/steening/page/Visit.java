package steening.page;

import java.util.Optional;
import steening.job.Job;
import steening.journal.Moment;
import steening.language.Phrase;
import steening.language.Reader;

/** One request with all that is needed to answer it. */
record Visit(Request request, Shelf shelf, Moment now, Pen pen, Reader reader) {
  static final String UNITS = "units";
  static final String LANGUAGE = Request.LANGUAGE;
  static final String HAND = "hand";

  static Visit of(Request request, Shelf shelf, Moment now, Pen pen) {
    return new Visit(request, shelf, now, pen, request.reader());
  }

  String say(Phrase phrase) {
    return phrase.shownTo(reader);
  }

  /** The name of the hand that types, as this browser remembers it. */
  Optional<String> hand() {
    return Optional.ofNullable(request.cookies().get(HAND)).filter(name -> !name.isBlank());
  }

  /** The well of an address, if there is one of that id. */
  Optional<Job> job(String id) {
    return shelf.wells().contains(id) ? Optional.of(shelf.job(id)) : Optional.empty();
  }
}
