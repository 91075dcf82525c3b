package steening.stage.seal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.bore.CarriedTop;
import steening.bore.Overbreak;
import steening.bore.Taken;
import steening.finding.Finding;
import steening.journal.Moment;
import steening.language.Phrase;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.quantity.Volume;
import steening.reckoning.Outcome;
import steening.reckoning.Term;
import steening.stage.seal.placing.TremieDepth;
import steening.stage.seal.placing.TremieFitFindings;
import steening.well.Fill;

/** Where the grout stands by the last tape, and by what was pumped since. */
final class Standing {
  /** Bags, meter and hole together, as a share of the volume (common practice, no source). */
  private static final double UNEVEN = 0.04;

  private Standing() {}

  /**
   * Where the top should be now, give or take: from the last tape at the rate the hole showed below it; from the bottom
   * in a hole of the drilled size where no tape was read yet.
   */
  static Optional<Outcome> expected(Sealing sealing) {
    Optional<Fill.Tag> tag = sealing.grout().lastTag().filter(t -> t.bags() > 0);
    if (tag.isEmpty()) return Outcome.ifReckonable(() -> fromBottom(sealing));
    Volume since = sealing.grout().volume().minus(tag.get().poured());
    if (!(since.cubicMetres() > 0) || !sealing.bottom().isMoreThan(tag.get().depth())) return Optional.empty();
    return Outcome.ifReckonable(() -> fromTape(sealing, tag.get(), since));
  }

  private static Outcome fromBottom(Sealing sealing) {
    Term in = inHole(sealing);
    Term top = sealing.annulus().top("z", GroutTop.TOP.label(), sealing.bottom(), in);
    Term rise = Term.number(UNEVEN).times(CarriedTop.rise(sealing.annulus(), sealing.bottom(), top, in));
    Term spread = rise.squared().plus(CarriedTop.read(Grouted.READ_TO).squared()).squareRoot();
    return CarriedTop.banded(
        Outcome.empty().with(GroutTop.TOP.name(), top),
        spread.named("s", CarriedTop.SPREAD.label(), Scale.DEPTH));
  }

  private static Outcome fromTape(Sealing sealing, Fill.Tag tag, Volume since) {
    Term placed = Term.given(
        "Vₛ", Phrase.of("grout in the hole at the tape", "lechada en el barreno al sondear"), Scale.VOLUME,
        sealing.inHole(tag));
    Overbreak hole =
        sealing.ground().having(new Taken(sealing.annulus(), tag.depth(), sealing.bottom(), true, placed));
    Term pumped = Term.given(
        "V", Phrase.of("pumped since the tape", "bombeado desde la sonda"), Scale.VOLUME, since);
    return CarriedTop.of(GroutTop.TOP, sealing.annulus(), tag.depth(), pumped, hole, Grouted.READ_TO);
  }

  /** What was pumped, less what hose and tremie hold. */
  static Term inHole(Sealing sealing) {
    Term pumped = Term.given(
        "P", Phrase.of("grout pumped", "lechada bombeada"), Scale.VOLUME, sealing.grout().volume());
    Optional<Term> held = sealing.held();
    return held.map(h -> Liquids.asVolume(h).named("H′", h.label(), Scale.VOLUME))
        .map(pumped::minus).map(v -> v.most(Term.number(0)))
        .map(v -> v.named("V", Phrase.of("grout in the annulus", "lechada en el espacio anular"), Scale.VOLUME))
        .orElse(pumped);
  }

  /** Where it stood at a moment at the highest, in a hole no wider than drilled; none before any was pumped. */
  static Optional<Length> topAt(Sealing sealing, Moment when) {
    Volume poured = Volume.NONE;
    for (Fill.Pour pour : sealing.grout().pours()) if (!pour.at().isAfter(when)) poured = poured.plus(pour.volume());
    if (!(poured.cubicMetres() > 0)) return Optional.empty();
    Optional<Fill.Tag> tag = sealing.grout().tags().stream().filter(t -> t.bags() > 0 && !t.at().isAfter(when))
        .reduce((a, b) -> b);
    Length from = tag.map(Fill.Tag::depth).orElse(sealing.bottom());
    Volume held = sealing.held().map(t -> (Volume) t.quantity()).orElse(Volume.NONE);
    Volume since = poured.minus(tag.map(Fill.Tag::poured).orElse(held));
    if (!(since.cubicMetres() > 0)) return Optional.of(from);
    return Outcome.ifReckonable(() -> GroutTop.of(sealing.annulus(), from, since))
        .map(o -> (Length) o.quantity(GroutTop.TOP.name()));
  }

  /** Whether the tremie fits and hangs as it should. */
  static List<Finding> ofTremie(Sealing sealing) {
    List<Finding> findings = new ArrayList<>();
    TremieFitFindings.of(sealing.tremie(), sealing.annulus()).ifPresent(findings::add);
    new TremieDepth(sealing.tremie(), sealing.bottom(), sealing.grout().isBegun(), when -> topAt(sealing, when))
        .finding().ifPresent(findings::add);
    return findings;
  }
}
