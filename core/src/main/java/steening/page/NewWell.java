package steening.page;

import static j2html.TagCreator.h1;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import steening.field.Kind;
import steening.job.Stages;
import steening.journal.Entry;

/** The first call: its entry makes the well. */
final class NewWell {
  private static final String ADDRESS = "/new";

  private NewWell() {}

  static Reply answer(Visit visit) {
    Kind first = Stages.all().get(0).kinds().get(0);
    if (!visit.request().isPost()) return page(visit, EntryForm.after(Optional.empty(), first, Map.of(), ADDRESS, visit.reader()), 200);
    // The second fresh id is the new well's own; the first is the entry's.
    String well = visit.pen().ids().get(1);
    Writing.Written written = Writing.read(visit, first, well, ADDRESS);
    if (written.entry().isEmpty()) return page(visit, written.form(), 422);
    Entry entry = written.entry().get();
    return Reply.seeOther("/well/" + well, List.of(entry)).withCookie(Visit.HAND, entry.who());
  }

  private static Reply page(Visit visit, EntryForm form, int status) {
    String title = visit.say(Words.NEW_WELL);
    return Reply.page(status, Layout.page(visit, title, h1(title), form.shown(visit)));
  }
}
