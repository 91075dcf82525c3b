package steening.stage.test;

import steening.field.ChoiceField;
import steening.language.Phrase;
import steening.number.Decimal;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.well.DepthFrom;

/** Words that several texts of this room share. */
final class TestWords {
  private TestWords() {}

  /** {@code from top of casing}. */
  static Phrase from(DepthFrom from) {
    return Phrase.of("from {0}", "desde {0}", point(from));
  }

  static Phrase point(DepthFrom from) {
    return DepthFrom.FIELD.options().stream()
        .filter(o -> DepthFrom.of(o.code()) == from)
        .map(ChoiceField.Option::label)
        .findFirst().orElseThrow();
  }

  static Figure depth(Length length) {
    return new Figure(length, Scale.DEPTH);
  }

  static Figure capacity(Quantity quantity) {
    return new Figure(quantity, Scale.SPECIFIC_CAPACITY);
  }

  /** What the same number would be in another unit, as it would have been typed. */
  static String typed(Quantity quantity, Unit typedIn, Unit meant) {
    return Decimal.upTo(quantity.in(typedIn), 4) + " " + meant.symbol();
  }
}
