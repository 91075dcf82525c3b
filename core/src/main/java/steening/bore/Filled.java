package steening.bore;

import java.util.List;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Coefficient;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.reckoning.Term;

/**
 * What a volume tells of a hole, when it was seen to fill a stretch of the annulus.
 *
 * <p>Da = √((V / (π/4) + d² p) / Δz); V what went in, Δz the stretch, p as much of it as has the pipe in it, d its
 * outside diameter. With pipe all the way: √(d² + V / (π/4 Δz)). Source: geometry; the comparison of placed and
 * computed volume is asked for by California's monitoring-well standards, section 11 (seen). Accuracy: that of the two
 * soundings, which tell on a short stretch: 0.2 ft on 6 ft is 3 % of the volume.
 *
 * @param top upper end, below ground
 * @param bottom lower end
 */
public record Filled(Annulus annulus, Length top, Length bottom, Term volume) {
  private static final Phrase RISE = Phrase.of("stretch filled", "tramo llenado");
  private static final Phrase HOLDS =
      Phrase.of("what the stretch holds by the drilled size", "lo que cabe en el tramo según lo perforado");
  private static final Phrase APPARENT = Phrase.of("apparent diameter", "diámetro aparente");
  private static final Phrase RATIO = Phrase.of("put in over reckoned", "vertido entre calculado");
  private static final Phrase PER_LENGTH = Phrase.of("put in per length", "vertido por longitud");
  private static final Phrase PIPE = Phrase.of("outside diameter of the pipe", "diámetro exterior del tubo");
  private static final Phrase IN_PIPE = Phrase.of("stretch with pipe in it", "tramo con tubo");

  /** An apparent diameter as it is said: to a hundredth of an inch, which is closer than anybody sounds. */
  public static Figure said(Outcome filled) {
    double hundredths = ((Length) filled.quantity("apparent-diameter")).inInches() * 100;
    return new Figure(Length.of(Math.floor(hundredths + 0.5) / 100, Unit.INCH), Scale.DIAMETER);
  }

  /** The answers {@code apparent-diameter}, {@code holds}, {@code ratio}, {@code per-length}. */
  public Outcome outcome() {
    Term holds = annulus.volume("V₀", HOLDS, top, bottom);
    Term rise = Term.given("Δz", RISE, Scale.DEPTH, bottom.minus(top));
    Term perLength = Coefficient.giving(Scale.CAPACITY, 1).of(Scale.VOLUME).of(Scale.DEPTH, -1).term()
        .times(volume).over(rise).named("g", PER_LENGTH, Scale.CAPACITY);
    return Outcome.empty()
        .with("apparent-diameter", apparent(rise))
        .with("holds", holds)
        .with("ratio", volume.over(holds).named("R", RATIO, Scale.NUMBER))
        .with("per-length", perLength);
  }

  private Term apparent(Term rise) {
    List<Reach> pipes = annulus.pipe().reaches().stream()
        .filter(r -> r.from().isLessThan(bottom) && r.to().isMoreThan(top)).toList();
    if (pipes.size() > 1) {
      throw new NotReckonable(
          "The pipe changes its diameter within the stretch.", "El tubo cambia de diámetro dentro del tramo.");
    }
    if (pipes.isEmpty()) {
      return annulus.apparentDiameter(Length.ZERO, volume, rise).named("Da", APPARENT, Scale.DIAMETER);
    }
    Reach pipe = pipes.get(0);
    Length inPipe = pipe.to().min(bottom).minus(pipe.from().max(top));
    if (inPipe.equals(bottom.minus(top))) {
      return annulus.apparentDiameter(pipe.diameter(), volume, rise).named("Da", APPARENT, Scale.DIAMETER);
    }
    Term diameter = Term.given("d", PIPE, Scale.DIAMETER, pipe.diameter());
    Term filled = volume.over(Annulus.quarterPi(Scale.VOLUME, Scale.DIAMETER, Scale.DEPTH));
    Term around = diameter.squared().times(Term.given("p", IN_PIPE, Scale.DEPTH, inPipe));
    return filled.plus(around).over(rise).squareRoot().named("Da", APPARENT, Scale.DIAMETER);
  }
}
