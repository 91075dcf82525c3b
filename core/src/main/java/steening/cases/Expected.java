package steening.cases;

import java.math.BigDecimal;
import steening.number.Decimal;

/**
 * One answer as published.
 *
 * @param answer the name of the answer
 * @param value the digits of an amount; or a word, in English
 * @param unit as files write it; empty for a pure number and for a word
 * @param tolerance of an amount; a word is right or wrong
 */
record Expected(String answer, String value, String unit, Tolerance tolerance) {
  static Expected amount(String answer, BigDecimal value, String unit, Tolerance tolerance) {
    return new Expected(answer, Decimal.shortest(value), unit, tolerance);
  }

  static Expected word(String answer, String word) {
    return new Expected(answer, word, "", Tolerance.EXACTLY);
  }
}
