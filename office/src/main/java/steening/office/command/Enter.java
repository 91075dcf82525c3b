package steening.office.command;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import steening.field.Kind;
import steening.journal.Body;
import steening.journal.Entry;
import steening.journal.Ids;
import steening.journal.Moment;
import steening.language.Phrase;
import steening.language.UnitSystem;
import steening.office.FreshIds;
import steening.office.OfficeClock;
import steening.office.OfficeShelf;
import steening.office.Store;

/** {@code enter}: stores one entry and prints its id. */
@Command(name = "enter")
public final class Enter implements Callable<Integer> {
  /** As on the pages: a clock a few minutes fast is no reason to refuse. */
  private static final long MINUTES_AHEAD = 10;

  @Option(names = "--database", paramLabel = "FILE")
  private Optional<Path> database;

  @Option(names = "--well", paramLabel = "W", required = true)
  private String well;

  @Option(names = "--kind", paramLabel = "K", required = true)
  private String kind;

  @Option(names = "--who", paramLabel = "NAME")
  private String who = System.getProperty("user.name", "");

  @Option(names = "--happened", paramLabel = "TIME")
  private Optional<String> happened;

  @Option(names = "--replaces", paramLabel = "ID")
  private List<String> replaces = List.of();

  @Option(names = "--metric")
  private boolean metric;

  @Parameters(paramLabel = "name=value", arity = "0..*", descriptionKey = "values")
  private Map<String, String> values = new LinkedHashMap<>();

  private final Terminal terminal;

  Enter(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    Moment now = new OfficeClock().get();
    Kind known = TypedEntry.kind(kind);
    Body body = TypedEntry.body(known, values, terminal.reader(metric ? UnitSystem.METRIC : UnitSystem.US));
    Moment when = happened.map(text -> moment(text, now)).orElse(now);
    checkNames();
    FreshIds ids = new FreshIds();
    try (Store store = Store.open(Places.database(database, Places.FIRM), ids)) {
      OfficeShelf shelf = new OfficeShelf(store);
      boolean fresh = shelf.journal(well).size() == 0;
      Entry entry =
          new Entry(
              ids.next(), well, store.device(), store.nextSequence(), who, when, now, known.name(), known.schema(),
              body, replaces);
      shelf.append(List.of(entry));
      terminal.out().println(entry.id());
      if (fresh) {
        terminal.complain(Phrase.of(
            "This is the first entry of a well named {0}.",
            "Este es el primer registro de un pozo llamado {0}.",
            well));
      }
      return ExitStatus.FINE;
    }
  }

  private void checkNames() {
    if (!Ids.isName(well)) {
      throw new WrongUsage(
          "A well is named by 1 to 64 letters, digits, hyphens, points or underscores, not \"{0}\".",
          "Un pozo se nombra con 1 a 64 letras, cifras, guiones, puntos o guiones bajos, no «{0}».",
          well);
    }
    for (String id : replaces) {
      if (!Ids.isUuid(id)) {
        throw new WrongUsage(
            "--replaces takes the id of an entry, as enter prints it, not \"{0}\".",
            "--replaces lleva el id de un registro, como lo imprime enter, no «{0}».",
            id);
      }
    }
    if (kind.equals(Entry.WITHDRAWAL) && replaces.isEmpty()) {
      throw new WrongUsage(
          "A withdrawal takes another entry back; name it with --replaces.",
          "Un retiro anula otro registro; indíquelo con --replaces.");
    }
  }

  /** With or without an offset; without one, the clock on the wall. */
  private static Moment moment(String text, Moment now) {
    String offset = new Moment(0, now.offsetMinutes()).toString().substring("1970-01-01T00:00:00".length());
    for (String candidate : List.of(text, text + offset)) {
      Moment moment;
      try {
        moment = Moment.parse(candidate);
      } catch (IllegalArgumentException unreadable) {
        continue; // the other form may do
      }
      if (!moment.isAfter(now.plusMinutes(MINUTES_AHEAD))) return moment;
      throw new WrongUsage("{0} has not come yet.", "{0} todavía no llega.", text);
    }
    throw new WrongUsage(
        "\"{0}\" is not a time; example 2026-05-06T14:05.", "«{0}» no es una hora; ejemplo 2026-05-06T14:05.", text);
  }
}
