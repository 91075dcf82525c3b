package steening.journal;

import java.time.DateTimeException;
import java.time.LocalDate;

/** Calendar dates as {@code 2026-05-06}. The platform's own parser weighs a third of a megabyte in a browser. */
public final class Dates {
  private Dates() {}

  /**
   * Reads year, month and day in this order, with hyphens.
   *
   * @throws IllegalArgumentException when the text is anything else, or no such day exists
   */
  public static LocalDate parse(String text) {
    if (text.length() == 10 && text.charAt(4) == '-' && text.charAt(7) == '-') {
      int year = number(text, 0, 4);
      int month = number(text, 5, 7);
      int day = number(text, 8, 10);
      if (year >= 0 && month >= 0 && day >= 0) {
        try {
          return LocalDate.of(year, month, day);
        } catch (DateTimeException e) {
          throw new IllegalArgumentException("no such day: \"" + text + "\"");
        }
      }
    }
    throw new IllegalArgumentException("not a date: \"" + text + "\"; example 2026-05-06");
  }

  public static String format(LocalDate date) {
    String year = Integer.toString(date.getYear());
    String padding = "0000".substring(Math.min(4, year.length()));
    return padding + year + "-" + two(date.getMonthValue()) + "-" + two(date.getDayOfMonth());
  }

  private static String two(int number) {
    return number < 10 ? "0" + number : Integer.toString(number);
  }

  private static int number(String text, int from, int to) {
    int value = 0;
    for (int i = from; i < to; i++) {
      char c = text.charAt(i);
      if (c < '0' || c > '9') return -1;
      value = value * 10 + (c - '0');
    }
    return value;
  }
}
