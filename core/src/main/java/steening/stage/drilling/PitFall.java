package steening.stage.drilling;

import java.util.Optional;
import steening.bore.Annulus;
import steening.bore.Bore;
import steening.language.Phrase;
import steening.quantity.Length;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.reckoning.Coefficient;
import steening.reckoning.Outcome;
import steening.reckoning.Term;

/**
 * How far the mud pit falls for the hole that was drilled, at most: as if every cutting were shovelled out.
 *
 * <p>y = V / A; V hole drilled, A area of the pit. Where the area was not given, that of the least pit: twice the
 * hole's volume, 4 ft deep (common practice, no source), which falls furthest.
 */
final class PitFall {
  private static final Length LEAST_PIT_DEPTH = Length.feet(4);
  private static final Phrase FALL = Phrase.of("fall that the hole explains", "descenso que explica el barreno");
  private static final Phrase AREA = Phrase.of("area of the pit", "área de la fosa");
  private static final Phrase LOST = Phrase.of("mud lost", "lodo perdido");

  private PitFall() {}

  /**
   * The answer {@code fall}, for the hole drilled between two depths.
   *
   * @param bit diameter of the hole
   */
  static Outcome of(Length bit, Optional<Quantity> pitArea, Length from, Length to) {
    Term drilled = HoleVolume.volume(Bore.straight(bit, from, to), from, to);
    Term area = pitArea.map(a -> Term.given("A", AREA, Scale.AREA, a)).orElseGet(() -> leastArea(bit, to));
    Term fall = Coefficient.giving(Scale.DIAMETER, 1).of(Scale.VOLUME).of(Scale.AREA, -1).term()
        .times(drilled)
        .over(area)
        .named("y", FALL, Scale.DIAMETER);
    return Outcome.empty().with("fall", fall);
  }

  /** What a measured fall lost beyond that: the answer {@code lost}. */
  static Outcome lost(Outcome explained, Length measured, Quantity pitArea) {
    Term fell = Term.given("Y", DrillingEntries.PIT_DROP.label(), Scale.DIAMETER, measured);
    Term lost = Coefficient.giving(Scale.LIQUID, 1).of(Scale.AREA).of(Scale.DIAMETER).term()
        .times(Term.given("A", AREA, Scale.AREA, pitArea))
        .times(fell.minus(explained.term("fall")))
        .named("X", LOST, Scale.LIQUID);
    return explained.with("lost", lost);
  }

  private static Term leastArea(Length bit, Length depth) {
    Term hole = Annulus.cylinder(
        Term.given("D", DrillingEntries.HOLE_DIAMETER.label(), Scale.DIAMETER, bit),
        Term.given("z", Phrase.of("hole depth", "profundidad del barreno"), Scale.DEPTH, depth),
        Scale.VOLUME);
    return Term.number(2)
        .times(hole)
        .over(Term.given(
            "k", Phrase.of("depth of the least pit", "profundidad de la fosa mínima"), Scale.DEPTH, LEAST_PIT_DEPTH))
        .named("A", Phrase.of("area of the least pit: twice the hole", "área de la fosa mínima: dos veces el barreno"),
            Scale.AREA);
  }
}
