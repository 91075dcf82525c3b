package steening.field;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import steening.journal.Body;
import steening.language.Phrase;
import steening.language.Reader;

/**
 * A kind of entry, declared once.
 *
 * @param name in files and commands: lower case, words joined by hyphens
 * @param schema the version of its body, from 1
 * @param title what the form is headed with
 * @param fields in the order of the form
 * @param steady names of fields that usually stay as they were in the entry before; a form fills them in
 * @param seldom names of fields that mostly stay empty; a form folds them away until someone wants them
 */
public record Kind(
    String name, int schema, Phrase title, List<Field> fields, List<String> steady, List<String> seldom) {
  /** The words that any entry may carry. */
  public static final TextField REMARK =
      TextField.of("remark", Phrase.of("remark", "nota"), "hard drilling at 61 ft").optional();

  /** Names of fields whose unusual values were asked about and confirmed. */
  public static final TextField SURE =
      TextField.of("sure", Phrase.of("confirmed", "confirmado"), "hole-diameter").optional();

  public Kind {
    fields = List.copyOf(fields);
    steady = List.copyOf(steady);
    seldom = List.copyOf(seldom);
  }

  /** A form that carries nothing over. */
  public Kind(String name, int schema, Phrase title, List<Field> fields) {
    this(name, schema, title, fields, List.of(), List.of());
  }

  public static Kind of(String name, Phrase title, Field... fields) {
    List<Field> all = new ArrayList<>(List.of(fields));
    all.add(REMARK);
    return new Kind(name, 1, title, all);
  }

  /** The same kind, whose form fills these fields in from the entry before. */
  public Kind carrying(Field... fields) {
    return new Kind(name, schema, title, this.fields, names(fields), seldom);
  }

  /** The same kind, whose form folds these optional fields away. */
  public Kind seldom(Field... fields) {
    return new Kind(name, schema, title, this.fields, steady, names(fields));
  }

  /** Whether a form shows a field from the start: all but words and fields that mostly stay empty. */
  public boolean asksAtOnce(Field field) {
    boolean words = field instanceof TextField text && text.offered().isEmpty();
    return field.isRequired() || !words && !seldom.contains(field.name());
  }

  private static List<String> names(Field... fields) {
    return Stream.of(fields).map(Field::name).toList();
  }

  /** What a form begins with after an entry of this kind. */
  public Map<String, String> begun(Body before) {
    Map<String, String> begun = new LinkedHashMap<>();
    for (Field field : fields) {
      if (steady.contains(field.name())) field.text(before).ifPresent(text -> begun.put(field.name(), text));
    }
    return begun;
  }

  public Optional<Field> field(String name) {
    return fields.stream().filter(f -> f.name().equals(name)).findFirst();
  }

  /** What became of a whole form: a reading for each field, in order. */
  public Map<Field, Reading> read(Map<String, String> typed, Reader reader) {
    List<String> sure = List.of(typed.getOrDefault(SURE.name(), "").split(" "));
    Map<Field, Reading> readings = new LinkedHashMap<>();
    for (Field field : fields) {
      readings.put(field, field.read(typed.get(field.name()), reader, sure.contains(field.name())));
    }
    return readings;
  }

  /** The body of a form in which every field was taken; empty where one was refused or must be asked about. */
  public Optional<Body> body(Map<Field, Reading> readings, String sure) {
    Body body = Body.EMPTY;
    for (Map.Entry<Field, Reading> reading : readings.entrySet()) {
      if (reading.getValue() instanceof Reading.Taken taken) body = body.with(reading.getKey().name(), taken.text());
      else if (!(reading.getValue() instanceof Reading.Absent)) return Optional.empty();
    }
    return Optional.of(sure.isBlank() ? body : body.with(SURE.name(), sure.trim()));
  }

  /** What is wrong with a body that came from elsewhere: each missing, extra or impossible value, by name. */
  public List<Phrase> faults(Body body) {
    List<Phrase> faults = new ArrayList<>();
    for (Field field : fields) {
      Reading reading = field.read(field.text(body).orElse(""), Reader.US_ENGLISH, true);
      if (reading instanceof Reading.Refused refused) {
        faults.add(Phrase.of("{0}: {1}", "{0}: {1}", field.name(), refused.sentence()));
      } else if (reading instanceof Reading.Asked asked) {
        faults.add(Phrase.of("{0}: {1}", "{0}: {1}", field.name(), asked.question()));
      }
    }
    for (String name : body.values().keySet()) {
      if (field(name).isEmpty() && !name.equals(SURE.name())) {
        faults.add(Phrase.of(
            "{0}: {1} has no such field; its fields are {2}.", "{0}: {1} no tiene ese campo; sus campos son {2}.",
            name, this.name, names()));
      }
    }
    return faults;
  }

  private String names() {
    StringBuilder names = new StringBuilder();
    for (Field field : fields) names.append(names.isEmpty() ? "" : ", ").append(field.name());
    return names.toString();
  }
}
