package steening.stage.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.bore.Bagged;
import steening.bore.Filled;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.reckoning.Outcome;
import steening.well.Fill;

/** Sand that hangs in the annulus above a void: the tape finds it too high for what went in. */
final class Bridge {
  /** Likelier than not. */
  private static final double LIKELY = 0.5;

  private Bridge() {}

  /**
   * What speaks for a bridge under the last tape, the whole pack first, then the last lot, then that lot by what
   * the hole took so far; none where nothing does.
   */
  static Optional<Outcome> evidence(Pouring pouring) {
    Optional<Fill.Tag> tag = pouring.pack().lastTag().filter(t -> t.bags() > 0);
    return tag.flatMap(t -> under(pouring, t, Standing.before(pouring, t)));
  }

  /**
   * The same for any tag.
   *
   * @param stood the last tag before it that no bridge was under
   */
  static Optional<Outcome> under(Pouring pouring, Fill.Tag tag, Optional<Fill.Tag> stood) {
    return likely(pouring.upTo(tag), tag)
        .or(() -> pouring.since(tag).flatMap(r -> likely(r, tag)))
        .or(() -> stood.filter(s -> s.bags() < tag.bags()).flatMap(s -> byHole(pouring, s, tag)));
  }

  /** A hole that took more than its size so far is not at once as narrow as it was drilled. */
  private static Optional<Outcome> byHole(Pouring pouring, Fill.Tag stood, Fill.Tag tag) {
    return Outcome.ifReckonable(() -> pouring.between(stood, tag)
            .comparedByHole(tag.depth(), Standing.hole(pouring, Optional.of(stood))))
        .filter(o -> Run.chance(o) > LIKELY);
  }

  private static Optional<Outcome> likely(Run run, Fill.Tag tag) {
    return Outcome.ifReckonable(() -> run.compared(tag.depth())).filter(o -> Run.chance(o) > LIKELY);
  }

  static Optional<Finding> finding(Pouring pouring) {
    return evidence(pouring).map(outcome -> finding(pouring, pouring.pack().lastTag().orElseThrow(), outcome));
  }

  private static Finding finding(Pouring pouring, Fill.Tag tag, Outcome outcome) {
    Figure found = new Figure(tag.depth(), Scale.DEPTH);
    Figure expected = outcome.figure(ExpectedTape.TAPE.name());
    Phrase text = Phrase.of(
        "After bag {0} the tape finds the pack at {1}; {2} was expected, give or take {3}. It stands {4} too high.",
        "Tras el saco {0} la sonda halla el filtro a {1}; se esperaba {2}, más o menos {3}. Está {4} demasiado alto.",
        Integer.toString(tag.bags()), found, expected, outcome.figure(ExpectedTape.BAND.name()),
        new Figure(Length.ofMetres(-outcome.quantity("difference").coherent()), Scale.DEPTH));
    return Finding.of("pack.bridged", Weight.STOP, PackStage.NAME, text)
        .comparing(found, expected).because(cause(pouring, tag)).so(next(pouring, expected)).shownBy(outcome)
        .from(entries(pouring, tag));
  }

  private static Phrase cause(Pouring pouring, Fill.Tag tag) {
    Phrase wall = Phrase.of(
        "Only swelling clay or a caved wall could narrow a hole so: ask the log.",
        "Solo una arcilla que hincha o un derrumbe estrecharía así el barreno: consulte el registro.");
    return Optional.of(pouring.lately(tag))
        .flatMap(run ->
            Outcome.ifReckonable(() -> run.filled(tag.depth()).outcome()).flatMap(o -> hanging(pouring, run, tag, o)))
        .map(hanging -> Phrase.of("{0} {1}", "{0} {1}", hanging, wall))
        .orElse(Phrase.of("A bridge, most likely. {0}", "Probablemente un puente. {0}", wall));
  }

  /** How long plug and void are, if the plug holds all of the last lot. */
  private static Optional<Phrase> hanging(Pouring pouring, Run run, Fill.Tag tag, Outcome filled) {
    return Outcome.ifReckonable(() -> BridgeVoid.of(
            run.annulus(), run.from(), tag.depth(), run.volume(), pouring.screenTop(), pouring.screenBottom()))
        .map(o -> Phrase.of(
            "The last {0} would make the hole {1} wide. A bridge, most likely: a plug {2} long over a void of {3}, {4}"
                + " deep.{5}",
            "Lo último, {0}, daría un barreno de {1}. Probablemente un puente: un tapón de {2} sobre un hueco de {3},"
                + " {4} de alto.{5}",
            Bagged.said(tag.bags() - pouring.before(tag).map(Fill.Tag::bags).orElse(0)),
            Filled.said(filled), o.figure(BridgeVoid.PLUG.name()), o.figure(BridgeVoid.VOLUME.name()),
            o.figure(BridgeVoid.HEIGHT.name()), bareScreen(o)));
  }

  private static Phrase bareScreen(Outcome hanging) {
    boolean bare = hanging.answers().containsKey(BridgeVoid.BARE.name())
        && hanging.quantity(BridgeVoid.BARE.name()).coherent() > 0;
    if (!bare) return Phrase.same("");
    return Phrase.of(
        " It leaves {0} of the screen without sand.", " Deja {0} de rejilla sin arena.",
        hanging.figure(BridgeVoid.BARE.name()));
  }

  private static Phrase next(Pouring pouring, Figure expected) {
    Phrase tape = pouring.readFromCasing()
        .map(up -> Phrase.of(
            "{0} ({1} from the top of casing)", "{0} ({1} desde la boca del ademe)", expected,
            new Figure(((Length) expected.quantity()).plus(up), Scale.DEPTH)))
        .orElse(Phrase.of("{0}", "{0}", expected));
    return Phrase.of(
        "Stop pouring; no chips, no grout on it. Break it with water or air inside the screen, or jet down the"
            + " tremie, and"
            + " stand clear of the casing while pressure is on. Then sound again: the tape should find {0}.{1}",
        "Deje de verter; ni pellets ni lechada encima. Rómpalo con agua o aire dentro de la rejilla, o con chorro por"
            + " la"
            + " tremie, lejos de la boca mientras haya presión. Sondee de nuevo: la sonda debe hallar {0}.{1}",
        tape, then(pouring, (Length) expected.quantity()));
  }

  /** What is still to pour once the bridge is broken. */
  private static Phrase then(Pouring pouring, Length top) {
    return pouring.plannedTop().filter(planned -> planned.isLessThan(top))
        .flatMap(planned -> Outcome.ifReckonable(() ->
            Bagged.of(pouring.annulus(), planned, top, pouring.nextBag(), Bagged.NO_OVERAGE)))
        .map(o -> Phrase.of(
            " If it does, {0} more as drilled to the planned top.",
            " Si es así, {0} más según lo perforado hasta el tope planeado.",
            Bagged.said(o.quantity(Bagged.BAGS.name()))))
        .orElse(Phrase.same(""));
  }

  private static List<String> entries(Pouring pouring, Fill.Tag tag) {
    List<String> entries = new ArrayList<>();
    int from = pouring.before(tag).map(Fill.Tag::bags).orElse(0);
    pouring.before(tag).ifPresent(b -> entries.add(b.entry()));
    int bags = 0;
    for (Fill.Pour pour : pouring.pack().pours()) {
      bags += pour.bags();
      if (bags > from && bags <= tag.bags()) entries.add(pour.entry());
    }
    entries.add(tag.entry());
    return entries;
  }
}
