package steening.cases;

import com.eclipsesource.json.JsonValue;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import steening.field.SeriesField;

/** What stands in a JSON text, as a hand would type it. */
final class JsonText {
  private JsonText() {}

  /** Numbers without an exponent, a list as a series, null as nothing. */
  static String of(JsonValue value) {
    if (value.isNull()) return "";
    if (value.isString()) return value.asString();
    if (value.isNumber()) return new BigDecimal(value.toString()).toPlainString();
    if (!value.isArray()) return value.toString();
    List<String> items = new ArrayList<>();
    for (JsonValue item : value.asArray()) items.add(of(item));
    return SeriesField.joined(items);
  }
}
