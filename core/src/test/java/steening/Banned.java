package steening;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What the core may not call, and why. Most of it works in both worlds, and says something else in each.
 *
 * <p>A name is banned with everything that begins with it: {@code java.util.Random.} is the whole class, {@code
 * java.lang.String.format(} one method with all its variants.
 */
final class Banned {
  private static final String NUMBERS =
      "numbers are written by Decimal: the platforms round ties and print digits differently";
  private static final String READING =
      "numbers are read by Decimal: a browser's parser is off by one unit on long texts";
  private static final String ELEMENTARY =
      "use Elementary: the platforms' own functions differ in the last digits and more";
  private static final String SUMS = "add in a loop: the JVM compensates for rounding here, a browser does not";
  private static final String ORDER =
      "its order is another in each world, even in each run; use LinkedHashMap, TreeMap and the like";
  private static final String CLOCK = "the moment comes in with the request";
  private static final String IDENTITY = "ids come in with the pen";
  private static final String CHANCE = "the same request must have the same reply";
  private static final String DATES =
      "use Dates and Moment: the platform's reader weighs a third of a megabyte in a browser";
  private static final String MACHINE = "depends on the machine it runs on; only Locale.ROOT is everywhere the same";
  private static final String PURE = "the core runs no threads, reads and writes nothing and looks nothing up";
  private static final String TEXT = "does something else in a browser";

  private static final Map<String, String> REASONS = new LinkedHashMap<>();

  static {
    ban(NUMBERS, "java.lang.String.format(", "java.lang.String.formatted(", "java.util.Formatter.");
    ban(NUMBERS, "java.lang.Double.toString(", "java.lang.Float.toString(", "java.math.BigDecimal.valueOf(double)");
    ban(NUMBERS, "java.lang.String.valueOf(double)", "java.lang.String.valueOf(float)");
    for (String builder : new String[] {"java.lang.StringBuilder", "java.lang.StringBuffer"}) {
      ban(NUMBERS, builder + ".append(double)", builder + ".append(float)");
      ban(NUMBERS, builder + ".insert(int, double)", builder + ".insert(int, float)");
    }
    ban(READING, "java.lang.Double.parseDouble(", "java.lang.Double.valueOf(java.lang.String)");
    ban(READING, "java.lang.Float.parseFloat(", "java.lang.Float.valueOf(java.lang.String)");
    ban(READING, "java.math.BigDecimal.doubleValue(");
    ban(ELEMENTARY, "java.lang.Math.", "java.lang.StrictMath.");
    ban(SUMS, "java.util.stream.DoubleStream.sum(", "java.util.stream.DoubleStream.average(");
    ban(SUMS, "java.util.stream.Collectors.summingDouble(", "java.util.stream.Collectors.averagingDouble(");
    ban(SUMS, "java.util.stream.Collectors.summarizingDouble(", "java.util.DoubleSummaryStatistics.");

    ban(ORDER, "java.util.HashMap.<init>", "java.util.HashSet.<init>", "java.util.IdentityHashMap.<init>");
    ban(ORDER, "java.util.WeakHashMap.<init>", "java.util.Map.copyOf(", "java.util.Set.copyOf(");
    ban(ORDER, "java.util.Map.of(java.lang.Object, java.lang.Object, ", "java.util.Map.ofEntries(");
    ban(ORDER, "java.util.Set.of(java.lang.Object, ", "java.util.Set.of([Ljava.lang.Object;)");
    ban(ORDER, "java.util.stream.Collectors.toSet(", "java.util.stream.Collectors.toUnmodifiableSet(");
    ban(ORDER, "java.util.stream.Collectors.toUnmodifiableMap(");
    String function = "java.util.function.Function";
    String toMap = "java.util.stream.Collectors.toMap(" + function + ", " + function;
    ban(ORDER, toMap + ")", toMap + ", java.util.function.BinaryOperator)");
    ban(ORDER, "java.util.stream.Collectors.groupingBy(" + function + ")");
    ban(ORDER, "java.util.stream.Collectors.groupingBy(" + function + ", java.util.stream.Collector)");

    String[] times = {
      "Instant", "LocalDate", "LocalTime", "LocalDateTime", "OffsetTime", "OffsetDateTime", "ZonedDateTime", "Year",
      "YearMonth", "MonthDay", "Duration", "Period"
    };
    for (String time : times) {
      ban(CLOCK, "java.time." + time + ".now(");
      ban(DATES, "java.time." + time + ".parse(");
    }
    ban(CLOCK, "java.time.Clock.", "java.lang.System.currentTimeMillis(", "java.lang.System.nanoTime(");
    ban(CLOCK, "java.util.Date.", "java.util.Calendar.", "java.util.GregorianCalendar.", "java.util.Timer.");
    ban(MACHINE, "java.time.ZoneId.systemDefault(", "java.util.TimeZone.", "java.util.Locale.");
    ban(MACHINE, "java.lang.String.toLowerCase()", "java.lang.String.toUpperCase()");
    ban(MACHINE, "java.util.ResourceBundle.", "java.util.Currency.", "java.lang.Runtime.");
    ban(IDENTITY, "java.util.UUID.");
    ban(CHANCE, "java.util.Random.", "java.util.SplittableRandom.", "java.lang.System.identityHashCode(");
    ban(CHANCE, "java.util.Collections.shuffle(");
    ban(PURE, "java.lang.System.", "java.lang.Thread.", "java.lang.ThreadLocal.");
    ban(PURE, "java.lang.Process", "java.util.Scanner.");
    ban(PURE, "java.lang.Class.forName(", "java.lang.Class.getResource", "java.lang.Class.getDeclared");
    ban(PURE, "java.lang.ClassLoader.", "java.util.ServiceLoader.", "java.lang.Throwable.printStackTrace(");
    ban(PURE, "java.util.Collection.parallelStream(", "java.util.Arrays.parallel");
    ban(TEXT, "java.lang.String.codePoints(", "java.lang.String.stripIndent(");
  }

  /** Equal in both worlds, though their class is banned. */
  private static final Set<String> ALLOWED =
      Set.of(
          "java.lang.Math.abs", "java.lang.Math.min", "java.lang.Math.max", "java.lang.Math.sqrt",
          "java.lang.Math.floor", "java.lang.Math.ceil", "java.lang.Math.floorDiv", "java.lang.Math.floorMod",
          "java.lang.Math.addExact", "java.lang.Math.subtractExact", "java.lang.Math.multiplyExact",
          "java.lang.Math.negateExact", "java.lang.Math.incrementExact", "java.lang.Math.toIntExact",
          "java.lang.System.arraycopy",
          "java.util.Locale.ROOT");

  /** The one class that may, because it is where the others are sent. */
  private static final Map<String, String> EXCEPT = Map.of(
      "steening.number.Decimal", "java.math.BigDecimal.doubleValue(");

  private Banned() {}

  /**
   * @param caller a class of the core
   * @param called a method with its parameters, a constructor or a field, by its full name
   * @return why not, or empty when it may
   */
  static Optional<String> reason(String caller, String called) {
    int end = called.indexOf('(');
    if (ALLOWED.contains(end < 0 ? called : called.substring(0, end))) return Optional.empty();
    if (EXCEPT.containsKey(caller) && called.startsWith(EXCEPT.get(caller))) return Optional.empty();
    return REASONS.keySet().stream().filter(called::startsWith).findFirst().map(REASONS::get);
  }

  private static void ban(String reason, String... names) {
    for (String name : names) REASONS.put(name, reason);
  }
}
