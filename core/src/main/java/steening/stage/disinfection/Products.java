package steening.stage.disinfection;

import java.util.List;
import steening.language.Phrase;
import steening.number.Decimal;
import steening.quantity.Dimension;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.quantity.Unit;

/** The strengths that stand on labels (common practice, no source). */
final class Products {
  /** Household bleach old and new, and what pool shops sell. */
  static final List<Quantity> BLEACH = List.of(percent(5.25), percent(6), percent(8.25), percent(12.5));

  static final Quantity DRY = percent(65);

  private Products() {}

  /** A strength as labels print it, {@code 5.25 %}: one decimal less would make another product of it. */
  static Phrase label(Quantity strength) {
    return Phrase.same(Decimal.upTo(strength.in(Unit.PERCENT), 2) + " %");
  }

  private static Quantity percent(double value) {
    return new Measure(Dimension.NUMBER, Unit.PERCENT.toCoherent(value));
  }
}
