package steening.stage.drilling.fluid;

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
import steening.stage.drilling.DrillingEntries;
import steening.stage.drilling.hole.HoleVolume;

/**
 * How far the mud pit falls for the hole that was drilled, at most: as if every cutting were shovelled out.
 *
 * <p>y = V / A; V hole drilled, A area of the pit. Where the area was not given, that of the least pit: twice the
 * hole's volume, 4 ft deep (common practice, no source), which falls furthest.
 */
public final class PitFall {
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
  public static Outcome of(Length bit, Optional<Quantity> pitArea, Length from, Length to) {
    Term drilled = HoleVolume.volume(Bore.straight(bit, from, to), from, to);
    Term area = pitArea.map(a -> Term.given("A", AREA, Scale.AREA, a)).orElseGet(() -> leastArea(bit, to));
    Term fall = Coefficient.giving(Scale.DIAMETER, 1).of(Scale.VOLUME).of(Scale.AREA, -1).term()
        .times(drilled)
        .over(area)
        .named("y", FALL, Scale.DIAMETER);
    return Outcome.empty().with("fall", fall);
  }

  /** What a measured fall lost beyond that: the answer {@code lost}. */
  public static Outcome lost(Outcome explained, Length measured, Quantity pitArea) {
    Term fell = Term.given("Y", DrillingEntries.PIT_DROP.label(), Scale.DIAMETER, measured);
    Term lost = Coefficient.giving(Scale.LIQUID, 1).of(Scale.AREA).of(Scale.DIAMETER).term()
        .times(Term.given("A", AREA, Scale.AREA, pitArea))
        .times(fell.minus(explained.term("fall")))
        .named("X", LOST, Scale.LIQUID);
    return explained.with("lost", lost);
  }

  /** The same where no hole was drilled meanwhile. */
  public static Outcome lost(Length measured, Quantity pitArea) {
    Term lost = Coefficient.giving(Scale.LIQUID, 1).of(Scale.AREA).of(Scale.DIAMETER).term()
        .times(Term.given("A", AREA, Scale.AREA, pitArea))
        .times(Term.given("Y", DrillingEntries.PIT_DROP.label(), Scale.DIAMETER, measured))
        .named("X", LOST, Scale.LIQUID);
    return Outcome.empty().with("lost", lost);
  }

  /** What was lost, by the minute, and its share of what the pump gives: {@code loss-rate} and {@code share}. */
  public static Outcome lossRate(Outcome lost, Quantity minutes, Quantity pumpRate) {
    Term rate = perMinute(lost.term("lost"), minutes)
        .named("q", Phrase.of("loss by the minute", "pérdida por minuto"), Scale.FLOW);
    return lost.with("loss-rate", rate).with("share", share(rate, pumpRate));
  }

  /** What part of the pump rate a loss is, as a named term. */
  public static Term share(Term loss, Quantity pumpRate) {
    return Coefficient.giving(Scale.SHARE, 1).term()
        .times(loss)
        .over(Term.given("P", DrillingEntries.PUMP_RATE.label(), Scale.FLOW, pumpRate))
        .named("s", Phrase.of("share of the pump rate", "parte del gasto de la bomba"), Scale.SHARE);
  }

  /** What a rise of the pit is in mud: the answer {@code gained}. */
  static Outcome gained(Outcome before, Length rose, Quantity pitArea) {
    Term gained = Coefficient.giving(Scale.LIQUID, 1).of(Scale.AREA).of(Scale.DIAMETER).term()
        .times(Term.given("A", AREA, Scale.AREA, pitArea))
        .times(Term.given("Y", DrillingEntries.PIT_RISE.label(), Scale.DIAMETER, rose))
        .named("X", Phrase.of("gain of the pit", "aumento en la fosa"), Scale.LIQUID);
    return before.with("gained", gained);
  }

  /** The same by the minute: {@code gain-rate}. */
  static Outcome gainRate(Outcome gained, Quantity minutes) {
    Term rate = perMinute(gained.term("gained"), minutes)
        .named("q", Phrase.of("gain by the minute", "aumento por minuto"), Scale.FLOW);
    return gained.with("gain-rate", rate);
  }

  private static Term perMinute(Term liquid, Quantity minutes) {
    return Coefficient.giving(Scale.FLOW, 1).of(Scale.LIQUID).of(Scale.MINUTES, -1).term()
        .times(liquid)
        .over(Term.given(
            "t", Phrase.of("time since the reading before", "tiempo desde la lectura anterior"), Scale.MINUTES,
            minutes));
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
