package steening.stage.casing;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import steening.language.Phrase;
import steening.quantity.Length;
import steening.quantity.Quantity;
import steening.quantity.Unit;

/**
 * A published table of minutes by temperature and nominal pipe size. Where two rows share a temperature, the colder one
 * holds, which is the slower.
 *
 * @param sizes the largest nominal size of each column, inches
 */
record CureTable(String code, Phrase name, List<Double> sizes, List<Row> rows) {
  /** What is left of a whole degree or inch after arithmetic with doubles. */
  static final double HAIR = 1e-6;

  /** Minutes by size, up to a temperature, °F. */
  record Row(double warmest, List<Integer> minutes) {}

  CureTable {
    sizes = List.copyOf(sizes);
    rows = List.copyOf(rows);
  }

  static CureTable of(String code, Phrase name, Double... sizes) {
    return new CureTable(code, name, List.of(sizes), List.of());
  }

  /** One more row, each warmer than the one before. */
  CureTable upTo(double warmest, Integer... minutes) {
    List<Row> more = new ArrayList<>(rows);
    more.add(new Row(warmest, List.of(minutes)));
    return new CureTable(code, name, sizes, more);
  }

  /** Empty where the table does not reach. */
  OptionalInt minutes(Quantity temperature, Length size) {
    for (Row row : rows) {
      if (temperature.in(Unit.FAHRENHEIT) > row.warmest() + HAIR) continue;
      for (int i = 0; i < sizes.size(); i++) {
        if (size.inInches() <= sizes.get(i) + HAIR) return OptionalInt.of(row.minutes().get(i));
      }
      return OptionalInt.empty();
    }
    return OptionalInt.empty();
  }
}
