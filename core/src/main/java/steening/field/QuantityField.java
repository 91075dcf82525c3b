package steening.field;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.journal.Body;
import steening.language.Phrase;
import steening.language.Reader;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Notation;
import steening.quantity.Quantity;
import steening.quantity.Scale;

/**
 * An amount with its unit. Outside the possible range it is refused; outside the usual range it is asked about, with
 * the readings that would be usual. A comma is always asked about.
 */
public final class QuantityField extends Valued<Quantity> {
  private final Scale scale;
  private final Bounds possible;
  private final Bounds usual;
  private final String usExample;
  private final String metricExample;

  private QuantityField(
      String name,
      Phrase label,
      boolean required,
      Scale scale,
      Bounds possible,
      Bounds usual,
      String usExample,
      String metricExample) {
    super(name, label, required);
    this.scale = scale;
    this.possible = possible;
    this.usual = usual;
    this.usExample = usExample;
    this.metricExample = metricExample;
  }

  /** A field with no bounds yet. The examples are shown when something was not understood. */
  public static QuantityField of(String name, Scale scale, Phrase label, String usExample, String metricExample) {
    return new QuantityField(name, label, true, scale, Bounds.NONE, Bounds.NONE, usExample, metricExample);
  }

  /** What is possible at all; the rest is refused. Texts with units, both ends allowed. */
  public QuantityField between(String least, String most) {
    Bounds bounds = Bounds.of(amount(least), amount(most));
    return new QuantityField(name(), label(), isRequired(), scale, bounds, usual, usExample, metricExample);
  }

  /** What the firm meets; the rest is asked about. */
  public QuantityField usually(String least, String most) {
    Bounds bounds = Bounds.of(amount(least), amount(most));
    return new QuantityField(name(), label(), isRequired(), scale, possible, bounds, usExample, metricExample);
  }

  @Override
  public QuantityField optional() {
    return new QuantityField(name(), label(), false, scale, possible, usual, usExample, metricExample);
  }

  /** The same field under another name, for a reckoning that asks for the same thing in other words. */
  public QuantityField named(String name) {
    return new QuantityField(name, label(), isRequired(), scale, possible, usual, usExample, metricExample);
  }

  /** The same field with another label. */
  public QuantityField labelled(String english, String spanish) {
    Phrase label = Phrase.of(english, spanish);
    return new QuantityField(name(), label, isRequired(), scale, possible, usual, usExample, metricExample);
  }

  public Scale scale() {
    return scale;
  }

  public Optional<Quantity> least() {
    return possible.least();
  }

  public Optional<Quantity> most() {
    return possible.most();
  }

  @Override
  public Optional<Quantity> in(Body body) {
    return text(body).flatMap(t -> Notation.read(t, scale.us())).map(Notation.Typed::quantity);
  }

  public Optional<Length> length(Body body) {
    return in(body).map(q -> (Length) q);
  }

  public boolean isPossible(Quantity quantity) {
    return possible.hold(quantity);
  }

  public boolean isUsual(Quantity quantity) {
    return usual.hold(quantity);
  }

  boolean hasUsual() {
    return usual != Bounds.NONE;
  }

  @Override
  public String holds() {
    return scale.dimension().words();
  }

  @Override
  public String example(Reader reader) {
    return reader.metric() ? metricExample : usExample;
  }

  @Override
  protected Reading understand(String text, Reader reader, boolean sure) {
    if (text.indexOf(',') >= 0) return comma(text, reader);
    Optional<Notation.Typed> typed = Notation.read(text, scale.of(reader));
    if (typed.isEmpty()) return refused(text, reader);
    Quantity quantity = typed.get().quantity();
    if (!isPossible(quantity)) return impossible(typed.get(), reader);
    return sure || isUsual(quantity) ? new Reading.Taken(typed.get().text()) : unusual(typed.get(), reader);
  }

  private Reading impossible(Notation.Typed typed, Reader reader) {
    List<String> slips = Slips.of(typed, this, reader);
    if (!slips.isEmpty()) {
      return new Reading.Asked(
          Phrase.of(
              "{0}: {1} is not possible. Did you mean {2}?", "{0}: {1} no es posible. ¿Quiso decir {2}?",
              label(), typed.text(), slips.get(0)),
          slips);
    }
    return new Reading.Refused(
        Phrase.of(
            "{0}: {1} is outside {2} to {3}. Example: {4}.",
            "{0}: {1} está fuera de {2} a {3}. Ejemplo: {4}.",
            label(), new Figure(typed.quantity(), scale), bound(least()), bound(most()), example(reader)));
  }

  private Object bound(Optional<Quantity> quantity) {
    return quantity.<Object>map(q -> new Figure(q, scale)).orElse("…");
  }

  private Reading unusual(Notation.Typed typed, Reader reader) {
    List<String> slips = Slips.of(typed, this, reader);
    List<String> meanings = new ArrayList<>(List.of(typed.text()));
    meanings.addAll(slips);
    Phrase question =
        slips.isEmpty()
            ? Phrase.of("{0}: {1} is unusual. Is it right?", "{0}: {1} no es usual. ¿Está bien?", label(), typed.text())
            : Phrase.of(
                "{0}: {1} is unusual. Did you mean {2}?", "{0}: {1} no es usual. ¿Quiso decir {2}?",
                label(), typed.text(), slips.get(0));
    return new Reading.Asked(question, meanings);
  }

  private Reading comma(String text, Reader reader) {
    List<String> meanings = new ArrayList<>();
    for (String candidate : List.of(text.replace(',', '.'), text.replace(",", ""))) {
      Optional<Notation.Typed> typed = Notation.read(candidate, scale.of(reader));
      if (typed.isPresent() && isPossible(typed.get().quantity())) meanings.add(typed.get().text());
    }
    if (meanings.isEmpty()) return refused(text, reader);
    return new Reading.Asked(
        Phrase.of(
            "{0}: does the comma in {1} mean a decimal point?", "{0}: ¿la coma en {1} es punto decimal?",
            label(), text),
        meanings);
  }

  private Quantity amount(String text) {
    return Notation.read(text, scale.us())
        .map(Notation.Typed::quantity)
        .orElseThrow(() -> new IllegalArgumentException(name() + ": not an amount: " + text));
  }
}
