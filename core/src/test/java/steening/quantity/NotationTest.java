package steening.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import steening.number.Decimal;

class NotationTest {
  /** Nanometres by hand: a foot 304 800 000, an inch 25 400 000. */
  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '~', value = {
    "57' 3\"       | 17449800000 | 57' 3\"",
    "57' 3 1/2\"   | 17462500000 | 57' 3 1/2\"",
    "57' 3-1/2\"   | 17462500000 | 57' 3-1/2\"",
    "57' 3.5\"     | 17462500000 | 57' 3.5\"",
    "57'3\"        | 17449800000 | 57'3\"",
    "57' 3''       | 17449800000 | 57' 3''",
    "57' 3         | 17449800000 | 57' 3",
    "57 ft 3 in    | 17449800000 | 57 ft 3 in",
    "57ft3in       | 17449800000 | 57ft3in",
    "57’ 3”        | 17449800000 | 57’ 3”",
    "57′ 3½″       | 17462500000 | 57′ 3½″",
    "57'           | 17373600000 | 57'",
    "57.25'        | 17449800000 | 57.25'",
    "57.25 ft      | 17449800000 | 57.25 ft",
    "57.25ft       | 17449800000 | 57.25ft",
    "57 FT         | 17373600000 | 57 FT",
    "57.25         | 17449800000 | 57.25 ft",
    "57 3          | 17449800000 | 57 3 ft",
    "57 3 1/2      | 17462500000 | 57 3 1/2 ft",
    "57 3 ft       | 17449800000 | 57 3 ft",
    "57 7/8        | 17640300000 | 57 7/8 ft",
    "-2' 6\"       | -762000000  | -2' 6\"",
    "-0' 6\"       | -152400000  | -0' 6\"",
    "-2.5 ft       | -762000000  | -2.5 ft",
    "−2.5 ft       | -762000000  | −2.5 ft",
    "-2 1/2 ft     | -762000000  | -2 1/2 ft",
    "7 7/8 in      | 200025000   | 7 7/8 in",
    "7-7/8\"       | 200025000   | 7-7/8\"",
    "7⅞ in         | 200025000   | 7⅞ in",
    "7.875 in      | 200025000   | 7.875 in",
    "7/8 in        | 22225000    | 7/8 in",
    ".020 in       | 508000      | .020 in",
    "20 slot       | 508000      | 20 slot",
    "20-slot       | 508000      | 20-slot",
    "17.45 m       | 17450000000 | 17.45 m",
    "1/3 in        | 8466667     | 1/3 in",
    "0.01 ft       | 3048000     | 0.01 ft",
  })
  void readsLengths(String typed, long nanometres, String kept) {
    Notation.Typed read = Notation.read(typed, Unit.FOOT).orElseThrow();
    assertThat(read.quantity()).isEqualTo(new Length(nanometres));
    assertThat(read.text()).isEqualTo(kept);
  }

  @ParameterizedTest
  @CsvSource({
    "28 gpm, GALLON_PER_MINUTE, 28", "1.8 L/s, LITRE_PER_SECOND, 1.8", "1.8 l/s, LITRE_PER_SECOND, 1.8",
    "28 GPM, GALLON_PER_MINUTE, 28",
    "28 gal/min, GALLON_PER_MINUTE, 28", "9.5 lb/gal, POUND_PER_GALLON, 9.5", "9.5 ppg, POUND_PER_GALLON, 9.5",
    "50 lb, POUND, 50",
    "50 lbs, POUND, 50", "40 psi, PSI, 40", "0.5 ft3, CUBIC_FOOT, 0.5", "0.5 ft³, CUBIC_FOOT, 0.5",
    "0.5 cu ft, CUBIC_FOOT, 0.5",
    "16 fl oz, FLUID_OUNCE, 16", "1/2 gal, GALLON, 0.5", "2 1/2 gal, GALLON, 2.5", "20 %, PERCENT, 20",
    "20%, PERCENT, 20",
    "50 °F, FAHRENHEIT, 50", "-83.1 °, DEGREE, -83.1", "35 s/qt, FUNNEL_SECOND, 35",
    "8.5 in²/ft, SQUARE_INCH_PER_FOOT, 8.5"
  })
  void readsOtherAmounts(String typed, Unit unit, double value) {
    Notation.Typed read = Notation.read(typed, unit).orElseThrow();
    assertThat(read.unit()).isEqualTo(unit);
    assertThat(read.quantity()).isEqualTo(unit.dimension().of(unit.toCoherent(value)));
    assertThat(read.text()).isEqualTo(typed);
  }

  @ParameterizedTest
  @ValueSource(strings = {
    "", "ft", "'", "\"", "deep", "57 deep", "57 gal", "57' 12\"", "57' -3\"", "57.5' 3\"", "57 13", "57' 3 ft",
    "57,25 ft", "57' 3' 2\"",
    "1e3 ft", "7/0 in", "7//8 in", "7 7/8/2 in", "7 - 7/8 in", "--5 ft", "5.5.5 ft", "ft 57", "57 ft ft", "NaN ft",
    "12345678901234567890 m"
  })
  void readsNoNonsense(String typed) {
    assertThat(Notation.read(typed, Unit.FOOT)).isEmpty();
  }

  @Test
  void readsTwoNumbersAsFeetAndInchesOnlyWhereFeetAreMeant() {
    assertThat(Notation.read("17 45", Unit.METRE)).isEmpty();
    assertThat(Notation.read("7 5", Unit.INCH)).isEmpty();
    assertThat(Notation.read("7 7/8", Unit.INCH).orElseThrow().quantity()).isEqualTo(new Length(200025000));
  }

  /** What is kept says its unit itself: it is read alike whatever a bare number would mean. */
  @Test
  void readsWhatItKeeps() {
    SplittableRandom random = new SplittableRandom(20260506);
    for (int i = 0; i < 20_000; i++) {
      Unit unit = Unit.values()[random.nextInt(Unit.values().length)];
      String typed = number(random) + (random.nextBoolean() ? "" : " " + unit.symbol());
      Notation.Typed first = Notation.read(typed, unit).orElseThrow(() -> new AssertionError(typed + " as " + unit));
      for (Unit bare : Unit.values()) {
        if (bare.dimension() != unit.dimension() || unit == Unit.ONE) continue;
        Notation.Typed again = Notation.read(first.text(), bare).orElseThrow();
        assertThat(again.quantity()).as(typed).isEqualTo(first.quantity());
        assertThat(again.text()).isEqualTo(first.text());
      }
    }
  }

  private static String number(SplittableRandom random) {
    String sign = random.nextInt(5) == 0 ? "-" : "";
    int whole = random.nextInt(1000);
    return switch (random.nextInt(4)) {
      case 0 -> sign + whole;
      case 1 -> sign + Decimal.fixed(whole / 7.0, random.nextInt(6));
      case 2 -> sign + whole + " " + (1 + random.nextInt(15)) + "/16";
      default -> sign + whole + "-" + (1 + random.nextInt(7)) + "/8";
    };
  }
}
