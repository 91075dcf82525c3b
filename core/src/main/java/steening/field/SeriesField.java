package steening.field;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.journal.Body;
import steening.language.Phrase;
import steening.language.Reader;
import steening.quantity.Quantity;
import steening.quantity.Scale;

/**
 * Several amounts of one kind, in order: {@code 0.20 0.27 0.30 m}, {@code 0.20, 0.27, 0.30 m}, {@code 7 7/8 in; 8 in}.
 * The unit stands once at the end, or with every amount.
 */
public final class SeriesField extends Valued<List<Quantity>> {
  private static final int LONGEST = 1000;

  private final QuantityField each;
  private final int fewest;
  private final String usExample;
  private final String metricExample;

  private SeriesField(QuantityField each, boolean required, int fewest, String usExample, String metricExample) {
    super(each.name(), each.label(), required);
    this.each = each;
    this.fewest = fewest;
    this.usExample = usExample;
    this.metricExample = metricExample;
  }

  /**
   * A series under the name, the label and the bounds of one of its amounts.
   *
   * @param fewest how many amounts there must be
   */
  public static SeriesField of(QuantityField each, int fewest, String usExample, String metricExample) {
    return new SeriesField(each, each.isRequired(), fewest, usExample, metricExample);
  }

  /** A series as one text, for callers that hold a list. */
  public static String joined(List<String> amounts) {
    return String.join("; ", amounts);
  }

  @Override
  public SeriesField optional() {
    return new SeriesField(each, false, fewest, usExample, metricExample);
  }

  public Scale scale() {
    return each.scale();
  }

  @Override
  public Optional<List<Quantity>> in(Body body) {
    return text(body).flatMap(text -> Series.amounts(text, scale().us()));
  }

  @Override
  public String holds() {
    return "series of " + each.holds();
  }

  @Override
  public String example(Reader reader) {
    return reader.metric() ? metricExample : usExample;
  }

  @Override
  protected Reading understand(String text, Reader reader, boolean sure) {
    if (Series.hasUnclearCommas(text)) return comma(text, reader);
    Optional<Series> series = Series.read(text, scale().of(reader));
    if (series.isEmpty()) return refused(text, reader);
    List<String> items = series.get().items();
    if (items.size() < fewest || items.size() > LONGEST) return wrongCount(items.size(), reader);
    for (String item : items) {
      Reading reading = each.read(item, reader, sure);
      if (reading instanceof Reading.Refused) return reading;
      if (reading instanceof Reading.Asked asked) return asked(asked, series.get(), item);
    }
    return new Reading.Taken(series.get().text());
  }

  /** The same question, with answers for the whole series. */
  private static Reading asked(Reading.Asked asked, Series series, String unclear) {
    List<String> meanings = new ArrayList<>();
    for (String meaning : asked.meanings()) {
      List<String> meant = new ArrayList<>(series.items());
      meant.set(meant.indexOf(unclear), meaning);
      meanings.add(meaning.equals(unclear) ? series.text() : joined(meant));
    }
    return new Reading.Asked(asked.question(), meanings);
  }

  private Reading wrongCount(int count, Reader reader) {
    return new Reading.Refused(
        Phrase.of(
            "{0}: {1} given, where {2} to {3} are needed. Example: {4}.",
            "{0}: hay {1} y hacen falta de {2} a {3}. Ejemplo: {4}.",
            label(), Integer.toString(count), Integer.toString(fewest), Integer.toString(LONGEST), example(reader)));
  }

  private Reading comma(String text, Reader reader) {
    List<String> meanings = new ArrayList<>();
    List<String> candidates = new ArrayList<>(List.of(text.replace(',', '.')));
    boolean mayBeAList = text.lastIndexOf(' ', text.lastIndexOf(',')) < 0 && text.indexOf(';') < 0;
    if (mayBeAList) candidates.add(text.replace(",", "; "));
    for (String candidate : candidates) {
      if (understand(candidate, reader, true) instanceof Reading.Taken taken) meanings.add(taken.text());
    }
    if (meanings.isEmpty()) return refused(text, reader);
    return new Reading.Asked(
        Phrase.of(
            "{0}: do the commas in {1} mean decimal points?", "{0}: ¿las comas en {1} son puntos decimales?",
            label(), text),
        meanings);
  }
}
