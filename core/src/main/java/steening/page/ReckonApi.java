package steening.page;

import com.eclipsesource.json.JsonArray;
import com.eclipsesource.json.JsonObject;
import java.util.Map;
import steening.field.Field;
import steening.field.Kind;
import steening.field.Reading;
import steening.job.Stages;
import steening.language.Reader;
import steening.reckoning.NotReckonable;
import steening.reckoning.Question;
import steening.reckoning.Reckoning;
import steening.json.ReckoningJson;

/**
 * The reckonings for programs: values in by name as text, answers, working and source out as JSON. An unusual value is
 * reckoned with, and doubted among the remarks; one that cannot be meant is a trouble, with the meanings it may have.
 */
public final class ReckonApi {
  private ReckonApi() {}

  /** Status 200 with the outcome, or 422 with {@code {"troubles":[{"input","sentence","meanings"}]}}. */
  public static Reply answer(Reckoning reckoning, Map<String, String> typed, Reader reader) {
    Kind fields = reckoning.form();
    Question question = Question.of(reckoning, typed, reader);
    JsonArray troubles = question.body().isPresent() ? new JsonArray() : troubles(question.readings(), reader);
    for (String name : typed.keySet()) {
      if (fields.field(name).isEmpty() && !name.equals(Kind.SURE.name())) {
        troubles.add(trouble(name, reckoning.name() + " has no input of this name.", new JsonArray()));
      }
    }
    if (!troubles.isEmpty()) return Reply.json(422, new JsonObject().add("troubles", troubles).toString());
    try {
      return Reply.json(200, ReckoningJson.outcome(reckoning, question.answer(), reader).toString());
    } catch (NotReckonable contradiction) {
      JsonObject trouble = trouble("", contradiction.sentence().shownTo(reader), new JsonArray());
      return Reply.json(422, new JsonObject().add("troubles", new JsonArray().add(trouble)).toString());
    }
  }

  static Reply list(Reader reader) {
    JsonArray all = new JsonArray();
    for (Reckoning reckoning : Stages.reckonings()) all.add(ReckoningJson.declaration(reckoning, reader));
    return Reply.json(200, all.toString());
  }

  private static JsonArray troubles(Map<Field, Reading> readings, Reader reader) {
    JsonArray troubles = new JsonArray();
    for (Map.Entry<Field, Reading> reading : readings.entrySet()) {
      String name = reading.getKey().name();
      if (reading.getValue() instanceof Reading.Refused refused) {
        troubles.add(trouble(name, refused.sentence().shownTo(reader), new JsonArray()));
      } else if (reading.getValue() instanceof Reading.Asked asked) {
        JsonArray meanings = new JsonArray();
        for (String meaning : asked.meanings()) meanings.add(meaning);
        troubles.add(trouble(name, asked.question().shownTo(reader), meanings));
      }
    }
    return troubles;
  }

  private static JsonObject trouble(String input, String sentence, JsonArray meanings) {
    return new JsonObject().add("input", input).add("sentence", sentence).add("meanings", meanings);
  }
}
