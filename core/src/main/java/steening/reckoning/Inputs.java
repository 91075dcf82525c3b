package steening.reckoning;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import steening.field.CountField;
import steening.field.Field;
import steening.field.QuantityField;
import steening.journal.Body;
import steening.language.Phrase;
import steening.quantity.Dimension;
import steening.quantity.Length;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.quantity.Scale;

/** What a reckoning is given: amounts and counts by the field they are declared as, or the texts that were typed. */
public final class Inputs {
  private final Body typed;
  private final Map<Field, Quantity> amounts;

  private Inputs(Body typed, Map<Field, Quantity> amounts) {
    this.typed = typed;
    this.amounts = amounts;
  }

  /** Inputs as texts that were read and taken by their fields. */
  public static Inputs of(Body typed) {
    return new Inputs(typed, Map.of());
  }

  public static Inputs none() {
    return of(Body.EMPTY);
  }

  public Inputs with(QuantityField field, Quantity quantity) {
    return withAmount(field, quantity);
  }

  public Inputs with(CountField field, int count) {
    return withAmount(field, new Measure(Dimension.NUMBER, count));
  }

  /** Text for a field that holds neither an amount nor a count. */
  public Inputs with(Field field, String text) {
    return new Inputs(typed.with(field.name(), text), amounts);
  }

  private Inputs withAmount(Field field, Quantity quantity) {
    Map<Field, Quantity> more = new LinkedHashMap<>(amounts);
    more.put(field, quantity);
    return new Inputs(typed, more);
  }

  public Optional<Quantity> find(QuantityField field) {
    Quantity amount = amounts.get(field);
    return amount != null ? Optional.of(amount) : field.in(typed);
  }

  /** The amount of a required field. */
  public Quantity amount(QuantityField field) {
    return find(field).orElseThrow(() -> new IllegalArgumentException("nothing given for " + field.name()));
  }

  public Length length(QuantityField field) {
    return (Length) amount(field);
  }

  public Optional<Integer> find(CountField field) {
    Quantity amount = amounts.get(field);
    return amount != null ? Optional.of((int) amount.coherent()) : field.in(typed);
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
    int count = find(field).orElseThrow(() -> new IllegalArgumentException("nothing given for " + field.name()));
    return count(symbol, field.label(), count);
  }

  /** A count that no field holds. */
  public static Term count(String symbol, Phrase label, double count) {
    return Term.given(symbol, label, Scale.NUMBER, new Measure(Dimension.NUMBER, count));
  }
}
