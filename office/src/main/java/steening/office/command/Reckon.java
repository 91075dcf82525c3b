package steening.office.command;

import com.eclipsesource.json.JsonArray;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import steening.job.Stages;
import steening.json.ReckoningJson;
import steening.language.Reader;
import steening.language.UnitSystem;
import steening.page.ReckonApi;
import steening.page.Reply;
import steening.reckoning.NotReckonable;
import steening.reckoning.Question;
import steening.reckoning.Reckoning;

/** {@code reckon}: one reckoning of the trade, with its working; or a list of all of them. */
@Command(name = "reckon")
public final class Reckon implements Callable<Integer> {
  @Option(names = "--list")
  private boolean list;

  @Option(names = "--json")
  private boolean json;

  @Option(names = "--metric")
  private boolean metric;

  @Parameters(index = "0", arity = "0..1", paramLabel = "NAME", descriptionKey = "name")
  private Optional<String> name;

  @Parameters(index = "1..*", paramLabel = "name=value", descriptionKey = "values")
  private Map<String, String> values = new LinkedHashMap<>();

  private final Terminal terminal;

  Reckon(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    Reader reader = terminal.reader(metric ? UnitSystem.METRIC : UnitSystem.US);
    if (list || name.isEmpty()) return list(reader);
    Reckoning reckoning = Stages.reckoning(name.get()).orElseThrow(() -> new WrongUsage(
        "There is no reckoning named \"{0}\"; all of them: ./steening reckon --list",
        "No hay un cálculo llamado «{0}»; todos: ./steening reckon --list",
        name.get()));
    return json ? asJson(reckoning, reader) : asText(reckoning, reader);
  }

  private int list(Reader reader) {
    if (json) {
      JsonArray all = new JsonArray();
      for (Reckoning reckoning : Stages.reckonings()) all.add(ReckoningJson.declaration(reckoning, reader));
      terminal.out().println(all);
    } else {
      for (Reckoning reckoning : Stages.reckonings()) ReckonText.declare(reckoning, reader, terminal.out());
    }
    return ExitStatus.FINE;
  }

  /** The same answer as over HTTP, also where it tells of troubles. */
  private int asJson(Reckoning reckoning, Reader reader) {
    Reply reply = ReckonApi.answer(reckoning, values, reader);
    terminal.out().println(reply.body());
    return reply.status() == 200 ? ExitStatus.FINE : ExitStatus.WRONG_USAGE;
  }

  private int asText(Reckoning reckoning, Reader reader) {
    Question question = Question.of(reckoning, values, reader);
    // Names that are no input, and inputs that cannot be meant, are refused in the same words as for an entry.
    TypedEntry.body(reckoning.form(), question.surely(values), reader);
    try {
      ReckonText.tell(reckoning, question.answer(), reader, terminal.out());
      return ExitStatus.FINE;
    } catch (NotReckonable contradiction) {
      terminal.complain(contradiction.sentence());
      return ExitStatus.WRONG_USAGE;
    }
  }
}
