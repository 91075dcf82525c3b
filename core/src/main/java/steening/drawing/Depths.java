package steening.drawing;

import steening.language.Reader;
import steening.number.Decimal;
import steening.quantity.Length;
import steening.quantity.Scale;

/** Depths as they stand beside a drawing: without needless zeros, with or without the unit. */
final class Depths {
  /** A depth is read to about a tenth of a foot (common practice, no source); less is no difference to draw. */
  static final Length READ_TO = new Length(30_480_000);

  private Depths() {}

  static String unit(Reader reader) {
    return Scale.DEPTH.of(reader).printed();
  }

  static String number(Length depth, Reader reader) {
    return Decimal.upTo(depth.in(Scale.DEPTH.of(reader)), 2);
  }

  /** A depth that was reckoned and not measured, to the decimal that a tape is read to. */
  static String expected(Length depth, Reader reader) {
    return Decimal.upTo(depth.in(Scale.DEPTH.of(reader)), 1);
  }

  static String withUnit(Length depth, Reader reader) {
    return number(depth, reader) + " " + unit(reader);
  }

  /** Two depths: {@code 118–138}. */
  static String range(Length from, Length to, Reader reader) {
    return number(from, reader) + "–" + number(to, reader);
  }

  static Length middle(Length from, Length to) {
    return new Length(from.nanometres() / 2 + to.nanometres() / 2);
  }

  static boolean differ(Length one, Length other) {
    Length gap = one.minus(other);
    return gap.isMoreThan(READ_TO) || Length.ZERO.minus(gap).isMoreThan(READ_TO);
  }
}
