package steening.well;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.field.TextField;
import steening.language.Phrase;
import steening.number.Decimal;
import steening.quantity.Length;
import steening.quantity.Unit;

/**
 * The grade of pack as the bag has it: two sieves that it lies between, as in {@code 16-30}, or sizes, as in {@code
 * 0.6-1.2 mm}.
 *
 * <p>Source of the openings: ASTM E11 (memory).
 */
public record Grade(String text) {
  /** Of the lot poured last; none where nobody wrote it. */
  public static final Part<Optional<Grade>> PART = Part.ofHole("pack-grade", Optional.empty());

  public static final TextField FIELD =
      TextField.of("grade", Phrase.of("grade", "granulometría"), "20-30").optional();

  private static final double FINEST_MM = 0.03;
  private static final double COARSEST_MM = 50;
  private static final int[] NUMBERS = {
    4, 6, 8, 10, 12, 14, 16, 18, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 100
  };
  private static final double[] OPENINGS_MM = {
    4.75, 3.35, 2.36, 2.00, 1.70, 1.40, 1.18, 1.00, 0.850, 0.710, 0.600, 0.500, 0.425, 0.355, 0.300, 0.250, 0.212,
    0.180, 0.150
  };

  /** The opening of the finer sieve; none where the text names no two sieves or sizes. */
  public Optional<Length> finest() {
    return ends().flatMap(ends -> size(ends.get(0)));
  }

  /** The opening of the wider sieve; likewise. */
  public Optional<Length> coarsest() {
    return ends().flatMap(ends -> size(ends.get(1)));
  }

  /** In millimetres, the finer first. */
  private Optional<List<Double>> ends() {
    List<Double> numbers = numbers();
    if (numbers.size() != 2) return Optional.empty();
    if (text.contains("mm")) {
      return Optional.of(List.of(
          Math.min(numbers.get(0), numbers.get(1)), Math.max(numbers.get(0), numbers.get(1))));
    }
    Optional<Double> fine = opening(numbers.get(1));
    return opening(numbers.get(0))
        .flatMap(coarse -> fine.filter(f -> f < coarse).map(f -> List.of(f, coarse)));
  }

  private static Optional<Double> opening(double number) {
    for (int i = 0; i < NUMBERS.length; i++) if (NUMBERS[i] == number) return Optional.of(OPENINGS_MM[i]);
    return Optional.empty();
  }

  private static Optional<Length> size(double millimetres) {
    return millimetres > FINEST_MM && millimetres < COARSEST_MM
        ? Optional.of(Length.of(millimetres, Unit.MILLIMETRE)) : Optional.empty();
  }

  /** The numbers in the text, in its order. */
  private List<Double> numbers() {
    List<Double> numbers = new ArrayList<>();
    StringBuilder digits = new StringBuilder();
    for (char c : (text + " ").toCharArray()) {
      if (c >= '0' && c <= '9' || c == '.') {
        digits.append(c);
      } else if (!digits.isEmpty()) {
        Decimal.parse(digits.toString()).ifPresent(d -> numbers.add(Decimal.nearest(d)));
        digits.setLength(0);
      }
    }
    return numbers;
  }
}
