package steening.reckoning;

import steening.language.UnitSystem;
import steening.number.Elementary;
import steening.quantity.Scale;
import steening.quantity.Unit;

/**
 * The factor in front of a formula, worked out from its coherent (SI) value and the units of what it joins, so that no
 * conversion factor is typed anywhere: π/4 for cubic feet from inches squared and feet is 0.00545415.
 */
public final class Coefficient {
  private final double coherent;
  private final double us;
  private final double metric;

  private Coefficient(double coherent, double us, double metric) {
    this.coherent = coherent;
    this.us = us;
    this.metric = metric;
  }

  /** Begins with what the formula answers, and the factor it has in coherent units. */
  public static Coefficient giving(Scale answer, double coherent) {
    return new Coefficient(coherent, 1 / size(answer, UnitSystem.US), 1 / size(answer, UnitSystem.METRIC));
  }

  /** The formula multiplies by this scale, to a power; divides, where the power is negative. */
  public Coefficient of(Scale scale, int power) {
    double usFactor = us;
    double metricFactor = metric;
    for (int i = 0; i < Math.abs(power); i++) {
      double usSize = size(scale, UnitSystem.US);
      double metricSize = size(scale, UnitSystem.METRIC);
      usFactor = power > 0 ? usFactor * usSize : usFactor / usSize;
      metricFactor = power > 0 ? metricFactor * metricSize : metricFactor / metricSize;
    }
    return new Coefficient(coherent, usFactor, metricFactor);
  }

  public Coefficient of(Scale scale) {
    return of(scale, 1);
  }

  /** The same to a power that is not whole, as formulas fitted to measurements have it. */
  public Coefficient of(Scale scale, double power) {
    double usFactor = Elementary.pow(size(scale, UnitSystem.US), power);
    double metricFactor = Elementary.pow(size(scale, UnitSystem.METRIC), power);
    return new Coefficient(coherent, us * usFactor, metric * metricFactor);
  }

  public Term term() {
    return Term.coefficient(coherent * us, coherent * metric);
  }

  /** The size of one unit in coherent units; scales with a shifted zero have no size. */
  private static double size(Scale scale, UnitSystem system) {
    Unit unit = system == UnitSystem.METRIC ? scale.metric() : scale.us();
    return unit.toCoherent(1) - unit.toCoherent(0);
  }
}
