package steening.page;

import steening.journal.Moment;

/** Where every request is answered. Pure: the same request, shelf, moment and pen give the same reply. */
public final class Desk {
  private Desk() {}

  public static Reply answer(Request request, Shelf shelf, Moment now, Pen pen) {
    return Reply.page(404, "");
  }
}
