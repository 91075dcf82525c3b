package steening.office.command;

import java.io.PrintStream;
import java.util.List;
import java.util.Optional;
import steening.field.Field;
import steening.language.Phrase;
import steening.language.Reader;
import steening.language.Shown;
import steening.reckoning.Answer;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Working;

/** A reckoning as lines of text. */
final class ReckonText {
  private static final Phrase WITH = Phrase.of("with", "con");
  private static final Phrase WORKING = Phrase.of("Working", "Desarrollo");
  private static final Phrase HOLDS_FOR = Phrase.of("Holds for", "Vale para");
  private static final Phrase SOURCE = Phrase.of("Source", "Fuente");
  private static final Phrase FROM_MEMORY = Phrase.of("from memory", "de memoria");

  private ReckonText() {}

  /** What it is called with: a line for the name, a line for the inputs; those that may be left out in brackets. */
  static void declare(Reckoning reckoning, Reader reader, PrintStream out) {
    out.println(reckoning.name() + "  " + reckoning.title().shownTo(reader));
    List<String> inputs = reckoning.inputs().stream().map(field -> input(field, reader)).toList();
    if (!inputs.isEmpty()) out.println("    " + WITH.shownTo(reader) + " " + String.join(" ", inputs));
  }

  static void tell(Reckoning reckoning, Outcome outcome, Reader reader, PrintStream out) {
    out.println(reckoning.title().shownTo(reader));
    for (Answer answer : reckoning.answers()) {
      Optional<Shown> shown = outcome.shown(answer.name());
      if (shown.isEmpty()) continue;
      out.println("  " + answer.label().shownTo(reader) + ": " + shown.get().shownTo(reader));
    }
    for (Phrase remark : outcome.remarks()) out.println("  " + remark.shownTo(reader));
    out.println();
    out.println(WORKING.shownTo(reader));
    for (Working.Line line : outcome.working(reader).lines()) out.println("  " + line(line, reader));
    out.println();
    for (Phrase limit : reckoning.validity()) out.println(HOLDS_FOR.shownTo(reader) + ": " + limit.shownTo(reader));
    Source source = reckoning.source();
    String memory = source.read() == Source.Read.MEMORY ? " (" + FROM_MEMORY.shownTo(reader) + ")" : "";
    out.println(SOURCE.shownTo(reader) + ": " + source.publication().shownTo(reader) + memory);
  }

  private static String input(Field field, Reader reader) {
    String typed = field.name() + "=\"" + field.example(reader) + "\"";
    return field.isRequired() ? typed : "[" + typed + "]";
  }

  private static String line(Working.Line line, Reader reader) {
    String made = line.value() + (line.unit().isEmpty() ? "" : " " + line.unit());
    String steps = line.isGiven() ? made : line.formula() + " = " + line.figures() + " = " + made;
    return line.symbol() + " = " + steps + "    " + line.label().shownTo(reader);
  }
}
