package steening.cases;

import com.eclipsesource.json.Json;
import com.eclipsesource.json.JsonArray;
import com.eclipsesource.json.JsonObject;
import com.eclipsesource.json.JsonValue;
import java.util.List;
import steening.language.Reader;
import steening.number.Decimal;

/** Verdicts as {@code {"passed":n,"failed":n,"notCovered":n,"cases":[…]}}. */
public final class VerdictsJson {
  private VerdictsJson() {}

  public static JsonObject of(List<Verdict> verdicts, Reader reader) {
    JsonArray cases = new JsonArray();
    for (Verdict verdict : verdicts) cases.add(one(verdict, reader));
    return new JsonObject()
        .add("passed", count(verdicts, Verdict.Status.PASSED))
        .add("failed", count(verdicts, Verdict.Status.FAILED))
        .add("notCovered", count(verdicts, Verdict.Status.NOT_COVERED))
        .add("cases", cases);
  }

  private static JsonObject one(Verdict verdict, Reader reader) {
    return new JsonObject()
        .add("id", verdict.id())
        .add("file", verdict.file())
        .add("reckoning", verdict.reckoning())
        .add("status", verdict.status().words())
        .add("expected", number(verdict.expected()))
        .add("got", number(verdict.got()))
        .add("unit", verdict.unit())
        .add("reason", verdict.reason().shownTo(reader));
  }

  /** The digits as they are; null where there are none, and words as text. */
  private static JsonValue number(String text) {
    if (text.isEmpty()) return Json.NULL;
    return Decimal.parse(text).isPresent() ? Json.parse(text) : Json.value(text);
  }

  private static int count(List<Verdict> verdicts, Verdict.Status status) {
    return (int) verdicts.stream().filter(v -> v.status() == status).count();
  }
}
