package steening.office.command;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import steening.field.Field;
import steening.field.Kind;
import steening.field.Reading;
import steening.job.Stages;
import steening.journal.Body;
import steening.journal.Entry;
import steening.language.Phrase;
import steening.language.Reader;

/** What was typed after {@code enter}, read as the forms of the pages are read. */
final class TypedEntry {
  private TypedEntry() {}

  /** The kind of that name; a withdrawal is a kind with nothing but a remark. */
  static Kind kind(String name) {
    if (name.equals(Entry.WITHDRAWAL)) return Kind.of(name, Phrase.of("Withdrawal", "Retiro"));
    return Stages.kind(name).orElseThrow(() -> new WrongUsage(
        "There is no kind of entry named \"{0}\"; there are {1}.",
        "No hay un tipo de registro «{0}»; hay {1}.",
        name,
        kinds()));
  }

  /**
   * The body, when every value was taken.
   *
   * @throws WrongUsage with a sentence for each value that was not, and for each name the kind does not have
   */
  static Body body(Kind kind, Map<String, String> typed, Reader reader) {
    Map<String, String> known = new LinkedHashMap<>(typed);
    List<Phrase> troubles = new ArrayList<>();
    for (String name : typed.keySet()) {
      if (kind.field(name).isPresent() || name.equals(Kind.SURE.name())) continue;
      known.remove(name);
      troubles.add(Phrase.of(
          "{0} has no \"{1}\"; it has {2}.", "{0} no tiene «{1}»; tiene {2}.",
          kind.name(), name, names(kind)));
    }
    Map<Field, Reading> readings = kind.read(known, reader);
    for (Map.Entry<Field, Reading> one : readings.entrySet()) {
      Field field = one.getKey();
      boolean canBeRight = field.read(known.get(field.name()), reader, true) instanceof Reading.Taken;
      trouble(field, one.getValue(), canBeRight).ifPresent(troubles::add);
    }
    Optional<Body> body = kind.body(readings, known.getOrDefault(Kind.SURE.name(), ""));
    if (!troubles.isEmpty() || body.isEmpty()) throw new WrongUsage(troubles);
    return body.get();
  }

  private static Optional<Phrase> trouble(Field field, Reading reading, boolean canBeRight) {
    if (reading instanceof Reading.Refused refused) return Optional.of(of(field, refused.sentence()));
    if (!(reading instanceof Reading.Asked asked)) return Optional.empty();
    if (!canBeRight) return Optional.of(of(field, asked.question()));
    return Optional.of(Phrase.of(
        "{0}: {1} If it is right as typed, add sure={0}.", "{0}: {1} Si está bien como se escribió, agregue sure={0}.",
        field.name(), asked.question()));
  }

  private static Phrase of(Field field, Phrase sentence) {
    return Phrase.of("{0}: {1}", "{0}: {1}", field.name(), sentence);
  }

  private static String kinds() {
    return String.join(", ", Stages.all().stream().flatMap(s -> s.kinds().stream()).map(Kind::name).toList());
  }

  private static String names(Kind kind) {
    return String.join(", ", kind.fields().stream().map(Field::name).toList());
  }
}
