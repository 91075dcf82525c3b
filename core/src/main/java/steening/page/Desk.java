package steening.page;

import com.eclipsesource.json.Json;
import com.eclipsesource.json.JsonObject;
import com.eclipsesource.json.JsonValue;
import com.eclipsesource.json.ParseException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import steening.field.Kind;
import steening.job.Job;
import steening.job.Stages;
import steening.journal.Entry;
import steening.journal.Moment;
import steening.language.Language;
import steening.language.UnitSystem;
import steening.reckoning.Reckoning;
import steening.stage.Stage;

/** Where every request is answered. Pure: the same request, shelf, moment and pen give the same reply. */
public final class Desk {
  /** The name under which a shell hands over a body that is not a form. */
  public static final String RAW_BODY = "";

  private Desk() {}

  public static Reply answer(Request request, Shelf shelf, Moment now, Pen pen) {
    Visit visit = Visit.of(request, shelf, now, pen);
    String[] path = request.path().substring(1).split("/");
    return switch (path[0]) {
      case "" -> WellsPage.answer(visit);
      case "new" -> NewWell.answer(visit);
      case "settings" -> settings(visit);
      case "reckon" -> reckon(visit, path);
      case "api" -> api(visit, path);
      case "well" -> path.length > 1 ? well(visit, path) : Layout.nothingHere(visit);
      default -> Layout.nothingHere(visit);
    };
  }

  private static Reply well(Visit visit, String[] path) {
    Optional<Job> found = visit.job(path[1]);
    if (found.isEmpty()) return Layout.nothingHere(visit);
    Job job = found.get();
    if (path.length == 2) return stage(visit, job, job.present());
    if (path.length > 3 && path[2].equals("hole")) return hole(visit, job, path[3]);
    if (path.length > 3) return entry(visit, job, path);
    return switch (path[2]) {
      case "journal" -> JournalPage.answer(visit, job);
      case "load-list" -> LoadListPage.answer(visit, job);
      case "earlier-wells" -> EarlierWellsPage.answer(visit, job);
      case "tailgate" -> TailgatePage.answer(visit, job);
      case "entries" -> visit.request().isPost() ? write(visit, job) : stage(visit, job, job.present());
      default -> Stages.named(path[2]).map(s -> stage(visit, job, s)).orElseGet(() -> Layout.nothingHere(visit));
    };
  }

  /** The page of an earlier hole; the present one has the well's own. */
  private static Reply hole(Visit visit, Job job, String number) {
    return job.well().earlier().stream()
        .filter(hole -> Integer.toString(hole.number()).equals(number))
        .findFirst()
        .map(hole -> HolePage.answer(visit, job, hole))
        .orElseGet(() -> Layout.nothingHere(visit));
  }

  private static Reply stage(Visit visit, Job job, Stage stage) {
    String asked = visit.request().value(EntryForm.KIND);
    Kind kind = stage.kinds().stream().filter(k -> k.name().equals(asked)).findFirst()
        .or(() -> Stages.kind(stage.nextKind(job.well())))
        .orElse(stage.kinds().get(0));
    EntryForm form = EntryForm.after(
        job.last(kind), kind, stage.begun(job.well(), kind), "/well/" + job.well().id() + "/entries", visit.reader());
    return WellPage.answer(visit, job, stage, form, 200);
  }

  private static Reply write(Visit visit, Job job) {
    Optional<Kind> kind = Stages.kind(visit.request().value(EntryForm.KIND));
    if (kind.isEmpty()) return Layout.nothingHere(visit);
    Stage stage = Stages.ofKind(kind.get().name()).orElseThrow();
    String address = "/well/" + job.well().id();
    Writing.Written written = Writing.read(visit, kind.get(), job.well().id(), address + "/entries");
    if (written.entry().isPresent()) {
      Entry entry = written.entry().get();
      return Reply.seeOther(address + "?saved=" + entry.id(), List.of(entry)).withCookie(Visit.HAND, entry.who());
    }
    Entry target = job.journal().entry(visit.request().value(EntryForm.REPLACES));
    if (target != null) return JournalPage.correct(visit, job, target, Optional.of(written.form()));
    return WellPage.answer(visit, job, stage, written.form(), 422);
  }

  private static Reply entry(Visit visit, Job job, String[] path) {
    Entry entry = path[2].equals("entry") ? job.journal().entry(path[3]) : null;
    if (entry == null) return Layout.nothingHere(visit);
    boolean withdrawal = path.length == 5 && path[4].equals("withdrawal") && visit.request().isPost();
    if (!withdrawal) return JournalPage.correct(visit, job, entry, Optional.empty());
    Entry taken = Writing.withdrawal(visit, entry, visit.hand().orElse(entry.who()), visit.request().value("why"));
    return Reply.seeOther("/well/" + job.well().id() + "/journal", List.of(taken));
  }

  private static Reply reckon(Visit visit, String[] path) {
    if (path.length == 1) return ReckonPages.list(visit);
    return Stages.reckoning(path[1]).map(r -> ReckonPages.one(visit, r)).orElseGet(() -> Layout.nothingHere(visit));
  }

  private static Reply api(Visit visit, String[] path) {
    if (path.length < 2 || !path[1].equals("reckon")) return Reply.json(404, "{}");
    if (path.length == 2) return ReckonApi.list(visit.reader());
    Optional<Reckoning> reckoning = Stages.reckoning(path[2]);
    if (reckoning.isEmpty()) return Reply.json(404, "{}");
    try {
      return ReckonApi.answer(reckoning.get(), apiValues(visit.request()), visit.reader());
    } catch (ParseException | UnsupportedOperationException unreadable) {
      String sentence = "The body is a JSON object of texts, {\"hole\":\"7 7/8 in\"}.";
      return Reply.json(400, new JsonObject().add("sentence", sentence).toString());
    }
  }

  /** The fields of a posted form, or of a JSON object whose values are texts or numbers. */
  private static Map<String, String> apiValues(Request request) {
    String raw = request.value(RAW_BODY);
    if (raw.isBlank()) return request.values();
    Map<String, String> values = new LinkedHashMap<>();
    for (JsonObject.Member member : Json.parse(raw).asObject()) {
      JsonValue value = member.getValue();
      values.put(member.getName(), value.isString() ? value.asString() : value.toString());
    }
    return values;
  }

  private static Reply settings(Visit visit) {
    Request request = visit.request();
    String back = request.value("back");
    // Only a path of our own: two slashes would lead to another host.
    String safe = back.startsWith("/") && !back.startsWith("//") ? back : "/";
    Reply reply = Reply.seeOther(safe, List.of());
    if (request.values().containsKey(Visit.UNITS)) {
      return reply.withCookie(Visit.UNITS, UnitSystem.of(request.value(Visit.UNITS)).code());
    }
    return reply.withCookie(Visit.LANGUAGE, Language.of(request.value(Visit.LANGUAGE)).code());
  }
}
