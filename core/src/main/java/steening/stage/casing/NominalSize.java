package steening.stage.casing;

import java.util.List;
import steening.quantity.Length;
import steening.quantity.Unit;

/**
 * The nominal size that a plastic pipe is sold by. Source of the outside diameters: a published PVC pipe data table,
 * ASTM D1785 series, seen.
 */
record NominalSize(double inches, double outside) {
  private static final List<NominalSize> SERIES = List.of(
      new NominalSize(2, 2.375), new NominalSize(2.5, 2.875), new NominalSize(3, 3.5), new NominalSize(4, 4.5),
      new NominalSize(5, 5.563), new NominalSize(6, 6.625), new NominalSize(8, 8.625), new NominalSize(10, 10.75),
      new NominalSize(12, 12.75));

  /** The larger of the limits that the table gives for outside diameters. */
  private static final double TOLERANCE = 0.015;

  /** The largest size that is not wider; a pipe outside the table is taken by its diameter, which is never less. */
  static Length of(Length outside) {
    NominalSize last = SERIES.get(SERIES.size() - 1);
    if (outside.inInches() > last.outside() + TOLERANCE) return outside;
    return SERIES.stream().filter(s -> s.outside() <= outside.inInches() + TOLERANCE).reduce((a, b) -> b)
        .map(s -> Length.of(s.inches(), Unit.INCH)).orElse(outside);
  }
}
