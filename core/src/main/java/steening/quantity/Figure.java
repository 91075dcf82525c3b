package steening.quantity;

import java.math.BigDecimal;
import steening.language.Reader;
import steening.language.Shown;
import steening.number.Decimal;

/** A quantity as a person reads it: in the reader's unit of the scale, to the decimals that unit is read to. */
public record Figure(Quantity quantity, Scale scale) implements Shown {
  private static final int FINEST_FRACTION = 16;

  /** In millimetres: with one, slots 10 and 12 would read alike. */
  private static final int SLOT_DECIMALS = 2;

  public Figure {
    if (quantity.dimension() != scale.dimension()) {
      throw new IllegalArgumentException(scale + " does not measure " + quantity.dimension());
    }
  }

  @Override
  public String shownTo(Reader reader) {
    Unit unit = scale.of(reader);
    if (unit == Unit.SLOT) return fixed(Unit.INCH, 3) + " in (" + Decimal.upTo(quantity.in(unit), 0) + " slot)";
    String number = number(reader);
    if (unit == Unit.ONE) return number;
    return isMoney() ? money(number, unit) : number + " " + unit.printed();
  }

  /** Without the unit. Inches that are whole sixteenths are written as the trade writes them: {@code 7 7/8}. */
  public String number(Reader reader) {
    Unit unit = scale.of(reader);
    if (unit == Unit.ONE) return Decimal.significant(quantity.in(unit), 4);
    if (isReadByFigures()) return Decimal.significant(quantity.in(unit), 3);
    if (scale == Scale.SPECIFIC_DRAWDOWN || scale == Scale.WELL_LOSS) return Decimal.significant(quantity.in(unit), 4);
    if (scale == Scale.SLOT) return fixed(unit, SLOT_DECIMALS);
    return scale == Scale.DIAMETER && unit == Unit.INCH ? inches() : fixed(unit, unit.decimals());
  }

  private boolean isReadByFigures() {
    return scale == Scale.GRAIN || scale == Scale.CONDUCTIVITY || scale == Scale.TRACE;
  }

  private boolean isMoney() {
    return scale == Scale.MONEY || scale == Scale.PRICE;
  }

  /** The sign stands before the number: {@code $28.00/ft}. */
  private static String money(String number, Unit unit) {
    String rest = unit.printed().substring(Unit.DOLLAR.symbol().length());
    return number.startsWith("-") ? "-$" + number.substring(1) + rest : "$" + number + rest;
  }

  private String inches() {
    double sixteenths = quantity.in(Unit.INCH) * FINEST_FRACTION;
    if (sixteenths > 0 && sixteenths == Math.floor(sixteenths)) return fraction((long) sixteenths);
    return Decimal.shortest(new BigDecimal(fixed(Unit.INCH, Unit.INCH.decimals())));
  }

  /** What was measured is rounded as it was measured, not as the double nearest to it. */
  private String fixed(Unit unit, int places) {
    if (quantity instanceof Length length) return length.in(unit, places).toPlainString();
    return Decimal.fixed(quantity.in(unit), places);
  }

  private static String fraction(long sixteenths) {
    long whole = sixteenths / FINEST_FRACTION;
    long rest = sixteenths % FINEST_FRACTION;
    long parts = FINEST_FRACTION;
    while (rest > 0 && rest % 2 == 0) {
      rest /= 2;
      parts /= 2;
    }
    if (rest == 0) return Long.toString(whole);
    return (whole == 0 ? "" : whole + " ") + rest + "/" + parts;
  }
}
