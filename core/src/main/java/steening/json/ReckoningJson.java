package steening.json;

import com.eclipsesource.json.Json;
import com.eclipsesource.json.JsonArray;
import com.eclipsesource.json.JsonObject;
import com.eclipsesource.json.JsonValue;
import java.util.List;
import java.util.Map;
import steening.field.ChoiceField;
import steening.field.Field;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.language.Reader;
import steening.number.Decimal;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Answer;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Term;
import steening.reckoning.Working;

/** Reckonings and their answers as JSON, for the command line and the HTTP interface alike. */
public final class ReckoningJson {
  private static final int FIGURES = 4;
  private static final int PRECISE_FIGURES = 12;

  private ReckoningJson() {}

  /**
   * {@code {"reckoning":…,"answers":{name:{value,unit,precise}},"working":[…],"source":…,"validity":[…],
   * "remarks":[…]}};
   * an answer that names something is {@code {word}}, in the reader's language.
   */
  public static JsonObject outcome(Reckoning reckoning, Outcome outcome, Reader reader) {
    JsonObject answers = new JsonObject();
    for (Map.Entry<String, Term> answer : outcome.answers().entrySet()) {
      answers.add(answer.getKey(), value(answer.getValue().quantity(), answer.getValue().scale(), reader));
    }
    for (Map.Entry<String, Phrase> answer : outcome.words().entrySet()) {
      answers.add(answer.getKey(), new JsonObject().add("word", answer.getValue().shownTo(reader)));
    }
    JsonArray working = new JsonArray();
    for (Working.Line line : outcome.working(reader).lines()) working.add(line(line, reader));
    return new JsonObject()
        .add("reckoning", reckoning.name())
        .add("answers", answers)
        .add("working", working)
        .add("source", reckoning.source().publication().shownTo(reader))
        .add("read", word(reckoning.source().read().name()))
        .add("validity", phrases(reckoning.validity(), reader))
        .add("remarks", phrases(outcome.remarks(), reader));
  }

  /** A quantity as {@code {"value":22.78,"unit":"ft3","precise":22.7796123}}, in the reader's unit. */
  public static JsonObject value(Quantity quantity, Scale scale, Reader reader) {
    Unit unit = scale.of(reader);
    double value = quantity.in(unit);
    return new JsonObject()
        .add("value", number(value, FIGURES))
        .add("unit", unit.symbol())
        .add("precise", number(value, PRECISE_FIGURES));
  }

  /** What a reckoning is called with and what it answers. */
  public static JsonObject declaration(Reckoning reckoning, Reader reader) {
    JsonArray inputs = new JsonArray();
    for (Field field : reckoning.inputs()) inputs.add(input(field, reader));
    JsonArray answers = new JsonArray();
    for (Answer answer : reckoning.answers()) {
      answers.add(new JsonObject()
          .add("name", answer.name())
          .add("label", answer.label().shownTo(reader))
          .add("quantity", answer.measured().map(scale -> scale.dimension().words()).orElse("word"))
          .add("unit", answer.measured().map(scale -> scale.of(reader).symbol()).orElse("")));
    }
    return new JsonObject()
        .add("name", reckoning.name())
        .add("stage", reckoning.stage())
        .add("title", reckoning.title().shownTo(reader))
        .add("inputs", inputs)
        .add("answers", answers)
        .add("source", reckoning.source().publication().shownTo(reader))
        .add("read", word(reckoning.source().read().name()))
        .add("validity", phrases(reckoning.validity(), reader));
  }

  private static JsonObject input(Field field, Reader reader) {
    JsonObject input = new JsonObject()
        .add("name", field.name())
        .add("label", field.label().shownTo(reader))
        .add("quantity", field.holds())
        .add("required", field.isRequired())
        .add("example", field.example(reader));
    if (field instanceof QuantityField amount) {
      Unit unit = amount.scale().of(reader);
      JsonArray range = new JsonArray();
      range.add(amount.least().map(q -> number(q.in(unit), FIGURES)).orElse(Json.NULL));
      range.add(amount.most().map(q -> number(q.in(unit), FIGURES)).orElse(Json.NULL));
      input.add("unit", unit.symbol()).add("range", range);
    }
    if (field instanceof ChoiceField choice) {
      JsonArray options = new JsonArray();
      for (ChoiceField.Option option : choice.options()) options.add(option.code());
      input.add("options", options);
    }
    return input;
  }

  private static JsonObject line(Working.Line line, Reader reader) {
    return new JsonObject()
        .add("symbol", line.symbol())
        .add("label", line.label().shownTo(reader))
        .add("formula", line.formula())
        .add("figures", line.figures())
        .add("value", line.value())
        .add("unit", line.unit());
  }

  private static JsonArray phrases(List<Phrase> phrases, Reader reader) {
    JsonArray texts = new JsonArray();
    for (Phrase phrase : phrases) texts.add(phrase.shownTo(reader));
    return texts;
  }

  /** The text of a number goes in as it is, so that no platform prints it its own way. */
  private static JsonValue number(double value, int figures) {
    return Json.parse(Decimal.significant(value, figures));
  }

  private static String word(String constant) {
    StringBuilder word = new StringBuilder();
    for (char c : constant.toCharArray()) word.append(c == '_' ? ' ' : Character.toLowerCase(c));
    return word.toString();
  }
}
