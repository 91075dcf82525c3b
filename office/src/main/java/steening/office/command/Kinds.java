package steening.office.command;

import com.eclipsesource.json.JsonArray;
import com.eclipsesource.json.JsonObject;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import steening.field.ChoiceField;
import steening.field.Field;
import steening.field.Kind;
import steening.job.Stages;
import steening.language.Reader;
import steening.language.UnitSystem;
import steening.stage.Stage;

/** {@code kinds}: the kinds of entries and their fields, for whoever writes a journal by hand or by program. */
@Command(name = "kinds")
public final class Kinds implements Callable<Integer> {
  @Option(names = "--json")
  private boolean json;

  @Option(names = "--metric")
  private boolean metric;

  private final Terminal terminal;

  Kinds(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    Reader reader = terminal.reader(metric ? UnitSystem.METRIC : UnitSystem.US);
    if (json) terminal.out().println(asJson(reader));
    else tell(reader);
    return ExitStatus.FINE;
  }

  private void tell(Reader reader) {
    for (Stage stage : Stages.all()) {
      for (Kind kind : stage.kinds()) {
        String titles = stage.title().shownTo(reader) + ": " + kind.title().shownTo(reader);
        terminal.out().println(kind.name() + "  " + titles);
        for (Field field : kind.fields()) terminal.out().println("    " + line(field, reader));
      }
    }
  }

  /** The name with an example, in brackets where it may be left out; then the words of a choice, or what it is. */
  private static String line(Field field, Reader reader) {
    String typed = field.name() + "=\"" + field.example(reader) + "\"";
    String name = field.isRequired() ? typed : "[" + typed + "]";
    String what = field instanceof ChoiceField choice
        ? String.join(" | ", choice.options().stream().map(ChoiceField.Option::code).toList())
        : field.label().shownTo(reader);
    return name + "  " + what;
  }

  private static JsonArray asJson(Reader reader) {
    JsonArray kinds = new JsonArray();
    for (Stage stage : Stages.all()) {
      for (Kind kind : stage.kinds()) {
        JsonArray fields = new JsonArray();
        for (Field field : kind.fields()) fields.add(field(field, reader));
        kinds.add(new JsonObject()
            .add("kind", kind.name()).add("schema", kind.schema()).add("stage", stage.name())
            .add("title", kind.title().shownTo(reader)).add("fields", fields));
      }
    }
    return kinds;
  }

  private static JsonObject field(Field field, Reader reader) {
    JsonObject json = new JsonObject()
        .add("name", field.name())
        .add("label", field.label().shownTo(reader))
        .add("quantity", field.holds())
        .add("required", field.isRequired())
        .add("example", field.example(reader));
    if (field instanceof ChoiceField choice) {
      JsonArray options = new JsonArray();
      for (ChoiceField.Option option : choice.options()) options.add(option.code());
      json.add("options", options);
    }
    return json;
  }
}
