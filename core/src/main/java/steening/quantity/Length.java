package steening.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * A length or a depth, held exactly in whole nanometres: 0.01 ft, 0.001 in and 1/64 in are all whole, so a tally of ten
 * joints of 10.10 ft is 101.00 ft. A depth is counted down from the ground surface and is negative above it. Range
 * about ± 9 million kilometres.
 */
public record Length(long nanometres) implements Quantity, Comparable<Length> {
  public static final Length ZERO = new Length(0);
  private static final BigDecimal NANOMETRES = new BigDecimal(1_000_000_000L);
  private static final double NANOMETRES_A_METRE = 1e9;

  public static Length feet(long feet) {
    return new Length(Math.multiplyExact(feet, 304_800_000L));
  }

  public static Length of(double value, Unit unit) {
    return ofMetres(unit.toCoherent(value));
  }

  /** To the nearest nanometre. */
  public static Length ofMetres(double metres) {
    double scaled = metres * NANOMETRES_A_METRE;
    if (!(Math.abs(scaled) < 9e18)) throw new IllegalArgumentException("no such length");
    return new Length((long) Math.floor(scaled + 0.5));
  }

  static Length exactly(BigDecimal value, BigDecimal metresAUnit) {
    BigDecimal scaled = value.multiply(metresAUnit).multiply(NANOMETRES).setScale(0, RoundingMode.HALF_UP);
    if (scaled.precision() > 18) throw new IllegalArgumentException("no such length");
    return new Length(scaled.longValue());
  }

  public Length plus(Length other) {
    return new Length(Math.addExact(nanometres, other.nanometres));
  }

  public Length minus(Length other) {
    return new Length(Math.subtractExact(nanometres, other.nanometres));
  }

  public Length times(long factor) {
    return new Length(Math.multiplyExact(nanometres, factor));
  }

  public Length min(Length other) {
    return compareTo(other) <= 0 ? this : other;
  }

  public Length max(Length other) {
    return compareTo(other) >= 0 ? this : other;
  }

  public boolean isMoreThan(Length other) {
    return compareTo(other) > 0;
  }

  public boolean isLessThan(Length other) {
    return compareTo(other) < 0;
  }

  public double inFeet() {
    return in(Unit.FOOT);
  }

  public double inInches() {
    return in(Unit.INCH);
  }

  /** Rounded only once: seven and seven eighths are 7.875 inches and not a hair more. */
  @Override
  public double in(Unit unit) {
    return unit.dimension() == Dimension.LENGTH ? (double) nanometres / unit.nanometres() : Quantity.super.in(unit);
  }

  /** The decimal in a unit, half up. */
  BigDecimal in(Unit unit, int places) {
    return new BigDecimal(nanometres).divide(new BigDecimal(unit.nanometres()), places, RoundingMode.HALF_UP);
  }

  @Override
  public Dimension dimension() {
    return Dimension.LENGTH;
  }

  @Override
  public double coherent() {
    return nanometres / NANOMETRES_A_METRE;
  }

  @Override
  public int compareTo(Length other) {
    return Long.compare(nanometres, other.nanometres);
  }
}
