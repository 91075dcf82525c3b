package steening.journal;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;

/**
 * An instant together with the clock it was read from: milliseconds since 1970-01-01T00:00Z, and the offset of the
 * local clock in minutes. Two moments at one instant with different offsets are different moments but neither is
 * earlier.
 */
public record Moment(long epochMillis, int offsetMinutes) {
  private static final int MINUTES_A_DAY = 24 * 60;

  public Moment {
    if (Math.abs(offsetMinutes) > 18 * 60) {
      throw new IllegalArgumentException("offset beyond 18 hours: " + offsetMinutes);
    }
  }

  /**
   * Reads {@code 2026-05-06T14:05:00-05:00}; seconds and milliseconds may be left out, {@code Z} is offset zero.
   *
   * @throws IllegalArgumentException when the text is anything else
   */
  public static Moment parse(String text) {
    try {
      int zone = zoneStart(text);
      LocalDate date = Dates.parse(text.substring(0, 10));
      if (text.charAt(10) != 'T' && text.charAt(10) != ' ') throw unreadable(text);
      String clock = text.substring(11, zone);
      int hour = digits(clock, 0, 2);
      int minute = digits(clock, 3, 5);
      int second = clock.length() > 5 ? digits(clock, 6, 8) : 0;
      int millis = clock.length() > 8 ? digits(clock, 9, 12) : 0;
      if (!isShapedAsClock(clock) || hour > 23 || minute > 59 || second > 59) throw unreadable(text);
      int offset = offset(text.substring(zone));
      long seconds = date.atTime(hour, minute, second).toEpochSecond(ZoneOffset.UTC) - offset * 60L;
      return new Moment(seconds * 1000 + millis, offset);
    } catch (IndexOutOfBoundsException e) {
      throw unreadable(text);
    }
  }

  public boolean isAfter(Moment other) {
    return epochMillis > other.epochMillis;
  }

  /** Minutes from an earlier moment to this one; negative when this one is the earlier. */
  public double minutesSince(Moment earlier) {
    return (epochMillis - earlier.epochMillis) / 60000.0;
  }

  public Moment plusMinutes(long minutes) {
    return new Moment(epochMillis + minutes * 60000, offsetMinutes);
  }

  /** The date on the local clock. */
  public LocalDate date() {
    return local().toLocalDate();
  }

  /** Hour and minute on the local clock: {@code 14:05}. */
  public String clock() {
    LocalDateTime local = local();
    return two(local.getHour()) + ":" + two(local.getMinute());
  }

  /** The form that {@link #parse} reads; milliseconds only where there are any. */
  @Override
  public String toString() {
    LocalDateTime local = local();
    long millis = Math.floorMod(epochMillis, 1000L);
    String fraction = millis == 0 ? "" : "." + (millis < 100 ? "0" : "") + (millis < 10 ? "0" : "") + millis;
    return Dates.format(local.toLocalDate()) + "T" + clock() + ":" + two(local.getSecond()) + fraction + zone();
  }

  private String zone() {
    if (offsetMinutes == 0) return "Z";
    int size = Math.abs(offsetMinutes) % MINUTES_A_DAY;
    return (offsetMinutes < 0 ? "-" : "+") + two(size / 60) + ":" + two(size % 60);
  }

  private LocalDateTime local() {
    return LocalDateTime.ofEpochSecond(
        Math.floorDiv(epochMillis, 1000L) + offsetMinutes * 60L, 0, ZoneOffset.UTC);
  }

  private static int zoneStart(String text) {
    for (int i = 16; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == 'Z' || c == '+' || c == '-') return i;
    }
    throw unreadable(text);
  }

  /** Whether hours, minutes, seconds and milliseconds stand apart by their own signs: {@code 14:05:00.250}. */
  private static boolean isShapedAsClock(String clock) {
    int length = clock.length();
    return clock.charAt(2) == ':'
        && (length == 5 || clock.charAt(5) == ':' && (length == 8 || clock.charAt(8) == '.' && length == 12));
  }

  private static int offset(String zone) {
    if (zone.equals("Z")) return 0;
    int minutes = digits(zone, 4, 6);
    if (zone.length() != 6 || zone.charAt(3) != ':' || minutes > 59) throw unreadable(zone);
    int size = digits(zone, 1, 3) * 60 + minutes;
    return zone.charAt(0) == '-' ? -size : size;
  }

  private static int digits(String text, int from, int to) {
    int value = 0;
    for (int i = from; i < to; i++) {
      char c = text.charAt(i);
      if (c < '0' || c > '9') throw unreadable(text);
      value = value * 10 + (c - '0');
    }
    return value;
  }

  private static String two(int number) {
    return number < 10 ? "0" + number : Integer.toString(number);
  }

  private static IllegalArgumentException unreadable(String text) {
    return new IllegalArgumentException("not a time: \"" + text + "\"; example 2026-05-06T14:05:00-05:00");
  }
}
