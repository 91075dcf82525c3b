package steening.field;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.journal.Body;
import steening.journal.Dates;
import steening.language.Phrase;
import steening.language.Reader;

/** A day: {@code 2026-05-06}. Month and day with strokes between are asked about: half the world turns them round. */
public final class DateField extends Valued<LocalDate> {
  private DateField(String name, Phrase label, boolean required) {
    super(name, label, required);
  }

  public static DateField of(String name, Phrase label) {
    return new DateField(name, label, true);
  }

  @Override
  public DateField optional() {
    return new DateField(name(), label(), false);
  }

  @Override
  public Optional<LocalDate> in(Body body) {
    return text(body).map(Dates::parse);
  }

  @Override
  public String holds() {
    return "date";
  }

  @Override
  public String example(Reader reader) {
    return "2026-05-06";
  }

  @Override
  protected Reading understand(String text, Reader reader, boolean sure) {
    try {
      return new Reading.Taken(Dates.format(Dates.parse(text)));
    } catch (IllegalArgumentException other) {
      List<String> meanings = meanings(text.replace('.', '/').replace('-', '/').split("/"));
      if (meanings.isEmpty()) return refused(text, reader);
      return new Reading.Asked(
          meanings.size() == 1
              ? Phrase.of("{0}: does {1} mean {2}?", "{0}: ¿{1} es {2}?", label(), text, meanings.get(0))
              : Phrase.of(
                  "{0}: does {1} mean {2} or {3}?", "{0}: ¿{1} es {2} o {3}?",
                  label(), text, meanings.get(0), meanings.get(1)),
          meanings);
    }
  }

  /** Year, month, day; or else month first, then day first; only days that exist. */
  private static List<String> meanings(String[] parts) {
    List<String> meanings = new ArrayList<>();
    if (parts.length != 3) return meanings;
    if (parts[0].length() == 4) {
      offer(meanings, parts[0], parts[1], parts[2]);
      return meanings;
    }
    String year = parts[2].length() == 2 ? "20" + parts[2] : parts[2];
    offer(meanings, year, parts[0], parts[1]);
    offer(meanings, year, parts[1], parts[0]);
    return meanings;
  }

  private static void offer(List<String> meanings, String year, String month, String day) {
    try {
      String date = Dates.format(Dates.parse(year + "-" + two(month) + "-" + two(day)));
      if (!meanings.contains(date)) meanings.add(date);
    } catch (IllegalArgumentException noSuchDay) {
      // The other order may be a day.
    }
  }

  private static String two(String number) {
    return number.length() == 1 ? "0" + number : number;
  }
}
