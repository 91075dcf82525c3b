package steening.stage.test;

import java.util.Optional;
import steening.language.UnitSystem;
import steening.quantity.Scale;
import steening.reckoning.Coefficient;
import steening.reckoning.Term;

/**
 * The straight-line form of the well function, W(u) = 2.303 log(2.25 T t / (r² S)), turned round for what is wanted.
 *
 * <p>Source: Cooper and Jacob 1946. Range: u below 0.05. The 2.25 is 4 e^−γ = 2.2458 as every handbook rounds it; it
 * makes S 0.2 % larger than the exact number would.
 */
final class JacobConstants {
  private static final double LN_10 = 2.302585092994046;
  private static final double FOUR_PI = 12.566370614359172;
  private static final double HANDBOOK = 2.25;

  /** A line so flat that it meets zero only beyond all times. */
  private static final double TOO_FLAT = 100;

  private JacobConstants() {}

  /** 2.303 Q / (4 π Δs): 264 Q / Δs in gpm, feet and gpd/ft. */
  static Term transmissivity(Term rate, Term slope) {
    return Coefficient.giving(Scale.TRANSMISSIVITY, LN_10 / FOUR_PI).of(Scale.FLOW).of(Scale.DEPTH, -1).term()
        .times(rate).over(slope);
  }

  /** The minute at which the line meets zero drawdown. */
  static Optional<Term> zeroTime(StraightLine line) {
    double cycles = line.start().in(UnitSystem.METRIC) / line.slope().in(UnitSystem.METRIC);
    if (Math.abs(cycles) > TOO_FLAT) return Optional.empty();
    return Optional.of(Term.number(1).over(Term.number(10).power(line.start().over(line.slope()))));
  }

  /** 2.25 T t₀ / r². */
  static Term storativity(Term transmissivity, Term zeroTime, Term distance) {
    return Coefficient.giving(Scale.NUMBER, HANDBOOK)
        .of(Scale.TRANSMISSIVITY).of(Scale.MINUTES).of(Scale.DISTANCE, -2).term()
        .times(transmissivity).times(zeroTime).over(distance.squared());
  }

  /** r² S / (4 T t). */
  static Term u(Term distance, Term storativity, Term transmissivity, Term minutes) {
    return Coefficient.giving(Scale.NUMBER, 0.25)
        .of(Scale.DISTANCE, 2).of(Scale.TRANSMISSIVITY, -1).of(Scale.MINUTES, -1).term()
        .times(distance.squared()).times(storativity).over(transmissivity.times(minutes));
  }
}
