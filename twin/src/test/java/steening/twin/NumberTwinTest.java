package steening.twin;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The bottom of the core gives the same bits and the same texts in both worlds. */
class NumberTwinTest {
  private static final int MANY = 5000;
  private static Browser browser;

  // The same arguments in every run, so that what fails once fails again.
  private final Random random = new Random(7);

  @BeforeAll
  static void open() throws IOException {
    browser = Browser.with("/probe/probe");
  }

  @AfterAll
  static void close() {
    browser.close();
  }

  @Test
  void numbersAreWrittenAlike() {
    List<String> questions = new ArrayList<>();
    for (int i = 0; i < MANY; i++) {
      double tie = (random.nextInt(200_000) - 100_000) / 8.0;
      double money = random.nextInt(1_000_000) / 100.0 + 0.005;
      for (double value : new double[] {ordinary(), tie, money}) {
        questions.add("fixed " + bits(value) + " " + random.nextInt(6));
        questions.add("upTo " + bits(value) + " " + random.nextInt(6));
        questions.add("significant " + bits(value) + " " + (1 + random.nextInt(6)));
      }
    }
    double[] odds = {
      0, -0.0, Double.NaN, Double.POSITIVE_INFINITY, Double.MIN_VALUE, Double.MAX_VALUE, 1e22, 5.3e17
    };
    for (double odd : odds) {
      questions.add("fixed " + bits(odd) + " 3");
      questions.add("upTo " + bits(odd) + " 3");
      questions.add("significant " + bits(odd) + " 3");
    }
    assertAlike(questions);
  }

  @Test
  void numbersAreReadAlike() {
    List<String> questions = new ArrayList<>(List.of(
        "parse .", "parse -", "parse +.5", "parse 1e3", "parse 1,5", "parse 007.50", "parse NaN"));
    for (int i = 0; i < MANY; i++) {
      questions.add("parse " + random.nextInt(1000) + "." + random.nextInt(100));
      questions.add("parse " + (random.nextLong() >>> 3 + random.nextInt(40)) + "." + random.nextInt(1_000_000));
    }
    assertAlike(questions);
  }

  @Test
  void elementaryFunctionsAgreeToTheLastBit() {
    List<String> questions = new ArrayList<>();
    for (int i = 0; i < MANY; i++) {
      questions.add("ln " + bits(Math.abs(ordinary())));
      questions.add("log10 " + bits(Math.abs(ordinary())));
      questions.add("exp " + bits(random.nextDouble() * 1400 - 700));
      questions.add("sqrt " + bits(Math.abs(ordinary())));
      questions.add("pow " + bits(Math.abs(ordinary())) + " " + bits(random.nextDouble() * 8 - 4));
    }
    for (double odd : new double[] {0, -1, 1, 10, 1000, Double.NaN, Double.POSITIVE_INFINITY, Double.MIN_VALUE}) {
      for (String function : List.of("ln", "log10", "exp", "sqrt")) questions.add(function + " " + bits(odd));
    }
    assertAlike(questions);
  }

  @Test
  void studentsDistributionAgreesToTheLastBit() {
    List<String> questions = new ArrayList<>();
    for (int i = 0; i < MANY; i++) {
      int degrees = 1 + random.nextInt(40);
      questions.add("tail " + bits(random.nextDouble() * 24 - 8) + " " + degrees);
      questions.add("exceeded " + bits(0.001 + random.nextDouble() * 0.4) + " " + degrees);
    }
    for (double odd : new double[] {0, -0.0, 1e9, Double.NaN, Double.POSITIVE_INFINITY, Double.MIN_VALUE}) {
      questions.add("tail " + bits(odd) + " 4");
    }
    questions.add("tail " + bits(1) + " 0");
    assertAlike(questions);
  }

  @Test
  void momentsAreReadAndWrittenAlike() {
    List<String> questions = new ArrayList<>(List.of(
        "moment 2026-02-29T10:00Z", "moment 2026-05-06T24:00Z", "moment yesterday"));
    for (int i = 0; i < MANY; i++) {
      long millis = (random.nextLong() >>> 20) - (1L << 43);
      if (Math.abs(millis) < 250_000_000_000_000L) {
        questions.add("instant " + millis + " " + (random.nextInt(2161) - 1080));
      }
      String date = "20" + two(100) + "-" + two(13) + "-" + two(32);
      String clock = two(25) + ":" + two(60);
      questions.add("moment " + date + "T" + clock + "-0" + random.nextInt(10) + ":30");
    }
    assertAlike(questions);
  }

  @Test
  void aDifferenceWouldBeSeen() {
    String question = "platform " + bits(1000);
    assertThat(browser.call("answer", question)).isNotEqualTo(Probe.answer(question));
  }

  private static void assertAlike(List<String> questions) {
    String[] there = browser.call("answer", String.join("\n", questions)).split("\n", -1);
    String[] here = Probe.answer(String.join("\n", questions)).split("\n", -1);
    assertThat(there).as("answers").hasSize(questions.size() + 1).hasSameSizeAs(here);
    List<String> different = new ArrayList<>();
    for (int i = 0; i < questions.size(); i++) {
      if (!here[i].equals(there[i])) different.add(questions.get(i) + ": JVM " + here[i] + ", browser " + there[i]);
    }
    assertThat(different).isEmpty();
  }

  /** Of either sign, between a ten thousandth and a million. */
  private double ordinary() {
    double size = Math.pow(10, random.nextDouble() * 10 - 4);
    return random.nextBoolean() ? size : -size;
  }

  private String two(int below) {
    int number = random.nextInt(below);
    return number < 10 ? "0" + number : Integer.toString(number);
  }

  private static String bits(double value) {
    return Long.toString(Double.doubleToLongBits(value));
  }
}
