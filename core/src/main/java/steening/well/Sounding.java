package steening.well;

import java.util.Optional;
import steening.field.QuantityField;
import steening.journal.Entry;
import steening.journal.Moment;
import steening.language.Phrase;
import steening.quantity.Length;
import steening.quantity.Scale;

/**
 * One reading of the weighted tape: how far down the top of a fill was found.
 *
 * @param reading as read
 * @param from the point it was read from
 * @param depth below ground; empty for a reading from the top of casing made before the stick-up was known
 */
public record Sounding(Length reading, DepthFrom from, Optional<Length> depth, Moment at, String entry) {
  /** The field of every entry that holds such a reading, beside {@link DepthFrom#FIELD}. */
  public static final QuantityField READING = QuantityField.of(
          "reading", Scale.DEPTH, Phrase.of("tape reading", "lectura de la sonda"), "91.1 ft", "27.77 m")
      .between("-20 ft", "6000 ft").usually("0 ft", "600 ft");

  /** The sounding in an entry, with the stick-up of that time; empty where the entry has no reading. */
  public static Optional<Sounding> in(Entry entry, Well well) {
    Optional<Length> reading = READING.length(entry.body());
    if (reading.isEmpty()) return Optional.empty();
    DepthFrom from = DepthFrom.FIELD.text(entry.body()).map(DepthFrom::of).orElse(DepthFrom.GROUND);
    Optional<Length> depth = well.get(CasingString.PART).belowGround(reading.get(), from);
    return Optional.of(new Sounding(reading.get(), from, depth, entry.happenedAt(), entry.id()));
  }
}
