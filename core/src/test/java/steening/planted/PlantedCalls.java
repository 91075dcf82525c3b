package steening.planted;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import java.util.function.DoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;

/** Does in each method one thing that the core may not, so that the test has something to find. */
public final class PlantedCalls {
  String joined(double feet) {
    return feet + " ft";
  }

  String joinedSingle(float feet) {
    return "depth " + feet;
  }

  String joinedInPlace(String text, double feet) {
    text += feet;
    return text;
  }

  StringBuilder appended(double feet) {
    return new StringBuilder().append(feet);
  }

  String formatted(int feet) {
    return "%d ft".formatted(feet);
  }

  String formattedFrom(double feet) {
    return String.format("%.2f", feet);
  }

  String valueOf(double feet) {
    return String.valueOf(feet);
  }

  String boxed(Double feet) {
    return feet.toString();
  }

  DoubleFunction<String> byReference() {
    return Double::toString;
  }

  double parsed(String text) {
    return Double.parseDouble(text);
  }

  double converted(BigDecimal decimal) {
    return decimal.doubleValue();
  }

  double logarithm(double x) {
    return Math.log10(x);
  }

  long rounded(double x) {
    return Math.round(x);
  }

  double sum(DoubleStream stream) {
    return stream.sum();
  }

  Map<String, String> unordered() {
    return new HashMap<>();
  }

  Map<String, String> unorderedPairs() {
    return Map.of("a", "b", "c", "d");
  }

  Set<String> unorderedFew() {
    return Set.of("a", "b");
  }

  Set<String> unorderedMany(String... names) {
    return Set.of(names);
  }

  Map<Integer, List<String>> unorderedGroups(List<String> names) {
    return names.stream().collect(Collectors.groupingBy(String::length));
  }

  LocalDate today() {
    return LocalDate.now();
  }

  Instant read(String text) {
    return Instant.parse(text);
  }

  long milliseconds() {
    return System.currentTimeMillis();
  }

  long nanoseconds() {
    return System.nanoTime();
  }

  String identity() {
    return UUID.randomUUID().toString();
  }

  int chance() {
    return new Random().nextInt();
  }

  String lower(String text) {
    return text.toLowerCase();
  }

  Locale place() {
    return Locale.US;
  }

  Thread thread() {
    return new Thread(() -> {});
  }

  ThreadLocal<String> hidden() {
    return new ThreadLocal<>();
  }

  void printed() {
    System.out.println();
  }

  Class<?> lookedUp() throws ClassNotFoundException {
    return Class.forName("steening.page.Desk");
  }
}
