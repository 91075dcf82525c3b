package steening.reckoning;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import steening.field.Field;
import steening.field.Kind;
import steening.field.Reading;
import steening.journal.Body;
import steening.language.Phrase;
import steening.language.Reader;

/**
 * A reckoning asked for with inputs as typed. An unusual input is reckoned with all the same, since nothing is stored;
 * the doubt goes with the answer.
 *
 * @param readings what became of each input
 * @param body the inputs, where every one of them can be reckoned with
 * @param doubts what would have been asked back
 */
public record Question(
    Reckoning reckoning, Map<Field, Reading> readings, Optional<Body> body, List<Phrase> doubts) {

  public static Question of(Reckoning reckoning, Map<String, String> typed, Reader reader) {
    Kind form = reckoning.form();
    Map<Field, Reading> readings = form.read(typed, reader);
    Map<Field, Reading> sure = form.read(surely(form, typed), reader);
    List<Phrase> doubts = new ArrayList<>();
    for (Map.Entry<Field, Reading> reading : readings.entrySet()) {
      boolean possible = sure.get(reading.getKey()) instanceof Reading.Taken;
      if (reading.getValue() instanceof Reading.Asked asked && possible) doubts.add(asked.question());
    }
    return new Question(reckoning, readings, form.body(sure, ""), doubts);
  }

  /** What was typed, by a hand that is sure of all of it. */
  public Map<String, String> surely(Map<String, String> typed) {
    return surely(reckoning.form(), typed);
  }

  private static Map<String, String> surely(Kind form, Map<String, String> typed) {
    Map<String, String> sure = new LinkedHashMap<>(typed);
    sure.put(Kind.SURE.name(), form.fields().stream().map(Field::name).collect(Collectors.joining(" ")));
    return sure;
  }

  /**
   * The answers, with the doubts among their remarks.
   *
   * @throws NotReckonable where the inputs contradict each other
   * @throws IllegalStateException where an input was refused
   */
  public Outcome answer() {
    Body inputs = body.orElseThrow(() -> new IllegalStateException("an input was refused"));
    Outcome outcome = reckoning.of(Inputs.of(inputs));
    for (Phrase doubt : doubts) outcome = outcome.remarking(doubt);
    return outcome;
  }
}
