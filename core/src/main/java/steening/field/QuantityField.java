package steening.field;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.journal.Body;
import steening.language.Phrase;
import steening.language.Reader;
import steening.quantity.Dimension;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Notation;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Unit;

/**
 * An amount with its unit. Outside the possible range it is refused; outside the usual range it is asked about, with the
 * readings that would be usual: another unit, another sign, another meaning of a comma.
 */
public final class QuantityField extends Field {
  private final Scale scale;
  private final Quantity least;
  private final Quantity most;
  private final Quantity usualLeast;
  private final Quantity usualMost;
  private final String usExample;
  private final String metricExample;

  private QuantityField(
      String name, Phrase label, boolean required, Scale scale, Quantity[] range, String usExample, String metricExample) {
    super(name, label, required);
    this.scale = scale;
    this.least = range[0];
    this.most = range[1];
    this.usualLeast = range[2];
    this.usualMost = range[3];
    this.usExample = usExample;
    this.metricExample = metricExample;
  }

  /** A field with no bounds yet. The examples are shown when something was not understood. */
  public static QuantityField of(String name, Scale scale, Phrase label, String usExample, String metricExample) {
    return new QuantityField(name, label, true, scale, new Quantity[4], usExample, metricExample);
  }

  /** What is possible at all; the rest is refused. Texts with units, both ends allowed. */
  public QuantityField between(String least, String most) {
    Quantity[] range = {amount(least), amount(most), usualLeast, usualMost};
    return new QuantityField(name(), label(), isRequired(), scale, range, usExample, metricExample);
  }

  /** What the firm meets; the rest is asked about. */
  public QuantityField usually(String least, String most) {
    Quantity[] range = {this.least, this.most, amount(least), amount(most)};
    return new QuantityField(name(), label(), isRequired(), scale, range, usExample, metricExample);
  }

  @Override
  public QuantityField optional() {
    Quantity[] range = {least, most, usualLeast, usualMost};
    return new QuantityField(name(), label(), false, scale, range, usExample, metricExample);
  }

  /** The same field under another name, for a reckoning that asks for the same thing in other words. */
  public QuantityField named(String name) {
    Quantity[] range = {least, most, usualLeast, usualMost};
    return new QuantityField(name, label(), isRequired(), scale, range, usExample, metricExample);
  }

  /** The same field with another label. */
  public QuantityField labelled(String english, String spanish) {
    Quantity[] range = {least, most, usualLeast, usualMost};
    return new QuantityField(name(), Phrase.of(english, spanish), isRequired(), scale, range, usExample, metricExample);
  }

  public Scale scale() {
    return scale;
  }

  public Optional<Quantity> least() {
    return Optional.ofNullable(least);
  }

  public Optional<Quantity> most() {
    return Optional.ofNullable(most);
  }

  /** The amount in a body whose texts were checked when they were taken. */
  public Optional<Quantity> in(Body body) {
    return text(body).flatMap(t -> Notation.read(t, scale.us())).map(Notation.Typed::quantity);
  }

  public Optional<Length> length(Body body) {
    return in(body).map(q -> (Length) q);
  }

  public boolean isUsual(Quantity quantity) {
    double size = quantity.coherent();
    return (usualLeast == null || size >= usualLeast.coherent()) && (usualMost == null || size <= usualMost.coherent());
  }

  @Override
  public String holds() {
    return scale.dimension().name().toLowerCase().replace('_', ' ');
  }

  @Override
  public String example(Reader reader) {
    return reader.metric() ? metricExample : usExample;
  }

  @Override
  Reading understand(String text, Reader reader, boolean sure) {
    Unit bare = scale.of(reader);
    if (text.indexOf(',') >= 0) return comma(text, reader);
    Optional<Notation.Typed> typed = Notation.read(text, bare);
    if (typed.isEmpty()) return refused(text, reader);
    Quantity quantity = typed.get().quantity();
    if (!isPossible(quantity)) return impossible(text, quantity, reader);
    if (sure || isUsual(quantity)) return new Reading.Taken(typed.get().text());
    return asked(typed.get(), reader);
  }

  private Reading impossible(String text, Quantity quantity, Reader reader) {
    List<String> twins = twins(text, reader);
    if (!twins.isEmpty()) {
      List<String> meanings = new ArrayList<>(twins);
      return new Reading.Asked(
          Phrase.of(
              "{0}: {1} is not possible. Did you mean {2}?", "{0}: {1} no es posible. ¿Quiso decir {2}?", label(), text, twins.get(0)),
          meanings);
    }
    return new Reading.Refused(
        Phrase.of(
            "{0}: {1} is outside {2} to {3}. Example: {4}.",
            "{0}: {1} está fuera de {2} a {3}. Ejemplo: {4}.",
            label(), new Figure(quantity, scale), bound(least), bound(most), example(reader)));
  }

  private Object bound(Quantity quantity) {
    return quantity == null ? "…" : new Figure(quantity, scale);
  }

  private Reading asked(Notation.Typed typed, Reader reader) {
    List<String> meanings = new ArrayList<>();
    meanings.add(typed.text());
    meanings.addAll(twins(typed.text(), reader));
    Phrase question =
        meanings.size() > 1
            ? Phrase.of(
                "{0}: {1} is unusual. Did you mean {2}?", "{0}: {1} no es usual. ¿Quiso decir {2}?", label(), typed.text(), meanings.get(1))
            : Phrase.of("{0}: {1} is unusual. Is it right?", "{0}: {1} no es usual. ¿Está bien?", label(), typed.text());
    return new Reading.Asked(question, meanings);
  }

  private Reading comma(String text, Reader reader) {
    List<String> meanings = new ArrayList<>();
    for (String candidate : List.of(text.replace(',', '.'), text.replace(",", ""))) {
      Notation.read(candidate, scale.of(reader)).filter(t -> isPossible(t.quantity())).ifPresent(t -> meanings.add(t.text()));
    }
    if (meanings.isEmpty()) return refused(text, reader);
    return new Reading.Asked(
        Phrase.of(
            "{0}: does the comma in {1} mean a decimal point?", "{0}: ¿la coma en {1} es punto decimal?", label(), text),
        meanings);
  }

  /** The usual amounts that the same number would be in another unit or with the other sign. */
  private List<String> twins(String text, Reader reader) {
    List<String> twins = new ArrayList<>();
    String number = numberOf(text, scale.of(reader));
    if (scale.dimension() == Dimension.ANGLE) offer(twins, text.startsWith("-") ? text.substring(1) : "-" + text);
    for (Unit unit : Unit.values()) {
      if (unit.dimension() == scale.dimension() && number != null) offer(twins, number + " " + unit.symbol());
    }
    return twins;
  }

  private void offer(List<String> twins, String candidate) {
    Optional<Notation.Typed> typed = Notation.read(candidate, scale.us());
    boolean good = typed.isPresent() && isPossible(typed.get().quantity()) && isUsual(typed.get().quantity());
    boolean bounded = usualLeast != null || usualMost != null;
    if (good && bounded) twins.add(typed.get().text());
  }

  private static String numberOf(String text, Unit bare) {
    int end = 0;
    while (end < text.length() && "0123456789.-/ ".indexOf(text.charAt(end)) >= 0) end++;
    String number = text.substring(0, end).trim();
    return Notation.read(number, bare).isPresent() ? number : null;
  }

  private boolean isPossible(Quantity quantity) {
    double size = quantity.coherent();
    return (least == null || size >= least.coherent()) && (most == null || size <= most.coherent());
  }

  private Quantity amount(String text) {
    return Notation.read(text, scale.us())
        .map(Notation.Typed::quantity)
        .orElseThrow(() -> new IllegalArgumentException(name() + ": not an amount: " + text));
  }
}
