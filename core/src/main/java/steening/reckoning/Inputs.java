package steening.reckoning;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import steening.field.CountField;
import steening.field.Field;
import steening.field.QuantityField;
import steening.field.Valued;
import steening.journal.Body;
import steening.language.Phrase;
import steening.quantity.Dimension;
import steening.quantity.Length;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.quantity.Scale;

/** What a reckoning is given: values by the field they are declared as, or the texts that were typed. */
public final class Inputs {
  private final Body typed;
  private final Map<Field, Object> values;

  private Inputs(Body typed, Map<Field, Object> values) {
    this.typed = typed;
    this.values = values;
  }

  /** Inputs as texts that were read and taken by their fields. */
  public static Inputs of(Body typed) {
    return new Inputs(typed, Map.of());
  }

  public static Inputs none() {
    return of(Body.EMPTY);
  }

  public <T> Inputs with(Valued<T> field, T value) {
    Map<Field, Object> more = new LinkedHashMap<>(values);
    more.put(field, value);
    return new Inputs(typed, more);
  }

  /** Text as it would have been typed. */
  public Inputs with(Field field, String text) {
    return new Inputs(typed.with(field.name(), text), values);
  }

  public <T> Optional<T> find(Valued<T> field) {
    Object held = values.get(field);
    if (held == null) return field.in(typed);
    @SuppressWarnings("unchecked") // only with() puts a value in, under its own field
    T value = (T) held;
    return Optional.of(value);
  }

  /** The value of a required field. */
  public <T> T value(Valued<T> field) {
    return find(field).orElseThrow(() -> new IllegalArgumentException("nothing given for " + field.name()));
  }

  /** The amount of a required field. */
  public Quantity amount(QuantityField field) {
    return value(field);
  }

  public Length length(QuantityField field) {
    return (Length) amount(field);
  }

  public Optional<String> text(Field field) {
    return field.text(typed);
  }

  /** The amount as the first term of a formula, under the field's own label. */
  public Term given(String symbol, QuantityField field) {
    return Term.given(symbol, field.label(), field.scale(), amount(field));
  }

  /** The same, with a quantity to fall back on where the field was left empty. */
  public Term given(String symbol, QuantityField field, Quantity otherwise) {
    return Term.given(symbol, field.label(), field.scale(), find(field).orElse(otherwise));
  }

  public Term given(String symbol, CountField field) {
    return count(symbol, field.label(), value(field));
  }

  /** A count that no field holds. */
  public static Term count(String symbol, Phrase label, double count) {
    return Term.given(symbol, label, Scale.NUMBER, new Measure(Dimension.NUMBER, count));
  }
}
