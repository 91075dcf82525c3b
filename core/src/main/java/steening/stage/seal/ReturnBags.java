package steening.stage.seal;

import java.util.Optional;
import steening.finding.Expectation;
import steening.language.Phrase;
import steening.quantity.Scale;
import steening.reckoning.Outcome;
import steening.reckoning.Term;

/**
 * After how many bags grout should be seen at the surface: n = (V + H) / Y; V annulus as drilled, H what hose and
 * tremie hold, Y yield of a bag. Source: geometry. Range: a hole of the drilled size; a washed-out one takes more.
 */
final class ReturnBags {
  private ReturnBags() {}

  /** Beside the bags of the annulus, where it is known what the tremie holds. */
  static Optional<Expectation> of(Sealing sealing, Outcome planned) {
    return sealing.held().flatMap(held -> Outcome.ifReckonable(() -> bags(sealing, planned, held)))
        .map(o -> new Expectation(
            Phrase.of(
                "grout back at the surface, hose and tremie full, after bag",
                "lechada de regreso, manguera y tremie llenas, tras el saco"),
            o.figure("bags"), Optional.empty(), o));
  }

  private static Outcome bags(Sealing sealing, Outcome planned, Term held) {
    Term yield = GroutMix.of(sealing.recipe()).term(GroutMix.YIELD.name());
    Term filled = planned.term("liquid").plus(held).over(yield)
        .named("f", Phrase.of("bags until it returns", "sacos hasta que regresa"), Scale.NUMBER);
    return Outcome.empty()
        .with("held", held)
        .with("filled", filled)
        .with("bags", filled.roundedUp().named("F", Phrase.of("whole bags", "sacos enteros"), Scale.NUMBER));
  }
}
