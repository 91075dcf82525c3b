package steening.stage.seal;

import java.util.List;
import java.util.Optional;
import steening.bore.Annulus;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.quantity.Volume;
import steening.reckoning.Outcome;
import steening.reckoning.Term;
import steening.well.Fill;

/**
 * Grout that was pumped between two tapes without lifting the top: Minn. 4727.0980 subp. 4 (seen) has one stop and
 * change once more than a cubic yard, or what ten feet of the hole hold, went in so; it is written for exploratory
 * holes.
 */
final class NoRise {
  private static final Volume CUBIC_YARD = Volume.of(27, Unit.CUBIC_FOOT);
  private static final Length TEN_FEET = Length.feet(10);

  private NoRise() {}

  static Optional<Finding> of(Sealing sealing) {
    List<Fill.Tag> tags = sealing.grout().tags();
    if (tags.size() < 2) return Optional.empty();
    Fill.Tag last = tags.get(tags.size() - 1);
    Fill.Tag before = tags.get(tags.size() - 2);
    boolean looked = before.bags() > 0 && last.bags() > before.bags() && !sealing.isNextDay(last);
    boolean rose = before.depth().minus(last.depth()).isMoreThan(Grouted.READ_TO);
    Optional<Length> hole = sealing.annulus().hole().diameterBelow(last.depth());
    if (!looked || rose || !sealing.isDeep(last) || hole.isEmpty()) return Optional.empty();
    Outcome limits = limits(last.poured().minus(before.poured()), hole.get());
    if (limits.quantity("over").coherent() <= 0) return Optional.empty();
    return Optional.of(finding(before, last, limits));
  }

  private static Outcome limits(Volume pumped, Length hole) {
    Term in = Term.given("V", Phrase.of("pumped between the tapes", "bombeado entre las sondas"), Scale.VOLUME, pumped);
    Term ten = Annulus.cylinder(
            Term.given("D", Phrase.of("hole diameter", "diámetro del barreno"), Scale.DIAMETER, hole),
            Term.given("h", Phrase.of("ten feet", "tres metros"), Scale.DEPTH, TEN_FEET), Scale.VOLUME)
        .named("V₁", Phrase.of("what ten feet of the hole hold", "lo que cabe en 3 m de barreno"), Scale.VOLUME);
    Term yard = Term.given("V₂", Phrase.of("a cubic yard", "una yarda cúbica"), Scale.VOLUME, CUBIC_YARD);
    Term limit = ten.least(yard)
        .named("m", Phrase.of("stop and change beyond", "parar y cambiar más allá de"), Scale.VOLUME);
    return Outcome.empty()
        .with("pumped", Liquids.asLiquid(in).named("G", in.label(), Scale.LIQUID))
        .with("limit", Liquids.asLiquid(limit).named("M", limit.label(), Scale.LIQUID))
        .with("over", in.minus(limit).named("x", Phrase.of("over that", "por encima"), Scale.VOLUME));
  }

  private static Finding finding(Fill.Tag before, Fill.Tag last, Outcome limits) {
    return Finding.of("seal.no-rise", Weight.STOP, SealStage.NAME, Phrase.of(
            "{0} went in since the tape at {1}, and the top is at {2}: it has not risen.",
            "Entraron {0} desde la sonda a {1}, y el tope está a {2}: no subió.",
            limits.figure("pumped"), new Figure(before.depth(), Scale.DEPTH), new Figure(last.depth(), Scale.DEPTH)))
        .comparing(limits.figure("pumped"), limits.figure("limit"))
        .because(Phrase.of(
            "It is being lost. Beyond {0}, ten feet of hole or a cubic yard, one rule has you stop and change"
                + " (Minn. 4727.0980).",
            "Se está perdiendo. Más allá de {0}, 3 m de barreno o una yarda cúbica, una norma manda parar y cambiar"
                + " (Minn. 4727.0980).",
            limits.figure("limit")))
        .so(Phrase.of(
            "Stop the pump. Go on with a thicker mix, or chips across the zone where your rules allow them; ask the"
                + " authority before more grout is lost.",
            "Pare la bomba. Siga con mezcla más espesa, o pellets frente a la zona si su norma lo permite; consulte a"
                + " la autoridad antes de perder más."))
        .shownBy(limits).from(List.of(before.entry(), last.entry()));
  }
}
