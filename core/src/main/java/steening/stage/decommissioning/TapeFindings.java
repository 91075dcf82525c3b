package steening.stage.decommissioning;

import static steening.stage.decommissioning.DecommissioningFindings.depth;
import static steening.stage.decommissioning.DecommissioningFindings.look;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.bore.Annulus;
import steening.bore.Bagged;
import steening.bore.Bore;
import steening.bore.Filled;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.reckoning.Outcome;
import steening.reckoning.Term;
import steening.well.Fill;
import steening.well.Plug;
import steening.well.Sounding;

/** The tape on a plug against where it should stand by what went in. */
final class TapeFindings {
  /** Placed over reckoned for the rise: less is a bridge, more is a void (a judgement; common practice, no source). */
  private static final double BRIDGED = 0.8;

  private static final double LOST = 1.3;

  private TapeFindings() {}

  static List<Finding> of(Plugging plugging) {
    List<Finding> findings = new ArrayList<>();
    for (Plug plug : plugging.plugs().plugs()) {
      for (Sounding aside : plug.fill().aside()) findings.add(datumUnknown(aside));
      plug.fill().lastTag().flatMap(tag -> onTag(plugging, plug, tag)).ifPresent(findings::add);
    }
    return findings;
  }

  private static Optional<Finding> onTag(Plugging plugging, Plug plug, Fill.Tag tag) {
    if (tag.depth().isLessThan(Length.ZERO)) return Optional.of(aboveGround(tag));
    Optional<Outcome> expected = plugging.expectedTop(plug, tag.poured());
    if (expected.isEmpty()) return Optional.empty();
    Length should = (Length) expected.get().quantity(Plugging.TOP);
    double ratio = ratio(plugging, plug, tag).orElse(Double.MAX_VALUE);
    boolean high = ratio < BRIDGED && should.minus(tag.depth()).isMoreThan(Plugging.AGREES);
    boolean low = ratio > LOST && tag.depth().minus(should.max(Length.ZERO)).isMoreThan(Plugging.AGREES);
    if (!high && !low) return Optional.empty();
    Phrase text = Phrase.of(
        "In hole {0}, after {1}, the tape finds the plug at {2}; {3} was expected.",
        "En el barreno {0}, tras {1}, la sonda halla el tapón a {2}; se esperaba {3}.",
        plugging.number(), Bagged.said(tag.bags()), depth(tag.depth()), depth(should));
    Finding finding = high ? bridged(text) : lost(text);
    return Optional.of(finding.comparing(depth(tag.depth()), depth(should)).shownBy(expected.get())
        .from(plug.entries()));
  }

  private static Optional<Double> ratio(Plugging plugging, Plug plug, Fill.Tag tag) {
    Term volume = Term.given("V", Phrase.of("put in", "vertido"), Scale.VOLUME, tag.poured());
    Annulus annulus = new Annulus(plugging.bore(), Bore.NONE);
    return Outcome.ifReckonable(() -> new Filled(annulus, tag.depth(), plug.to(), volume).outcome())
        .map(o -> o.quantity("ratio").coherent());
  }

  private static Finding bridged(Phrase text) {
    return Finding.of("decommissioning.bridged", Weight.STOP, DecommissioningStage.NAME, text)
        .because(Phrase.of(
            "It rose faster than what went in can fill: a bridge with a void below it.",
            "Subió más de lo que lo vertido puede llenar: un puente con hueco debajo."))
        .so(Phrase.of(
            "Break it before anything more goes in, with a rod or the tremie, and sound again.",
            "Rómpalo antes de verter más, con varilla o tremie, y sondee de nuevo."));
  }

  private static Finding lost(Phrase text) {
    return look("plug-low", text)
        .because(Phrase.of(
            "A wider hole, a void or a loss into the ground.", "Barreno más ancho, un hueco o una pérdida al terreno."))
        .so(Phrase.of(
            "Go on from where it stands, slowly, and sound after every few bags.",
            "Siga desde donde está, despacio, y sondee cada pocos sacos."));
  }

  private static Finding aboveGround(Fill.Tag tag) {
    Figure found = depth(tag.depth());
    return look("tape-above-ground", Phrase.of(
            "The tape finds the plug at {0}: that is above the ground.",
            "La sonda halla el tapón a {0}: eso es sobre el terreno.", found))
        .because(Phrase.of(
            "Read from the ground, and marked as read from the casing?",
            "¿Leído desde el terreno y marcado desde el ademe?"))
        .so(Phrase.of("Correct the reading.", "Corrija la lectura."))
        .from(List.of(tag.entry()));
  }

  private static Finding datumUnknown(Sounding aside) {
    return look("datum-unknown", Phrase.of(
            "The tape on the plug, {0}, was read from the top of casing, and how high that stands is not known.",
            "La sonda sobre el tapón, {0}, se leyó desde la boca del ademe, y no se sabe su altura.",
            depth(aside.reading())))
        .so(Phrase.of(
            "Read it from the ground, or write down the stick-up.",
            "Léala desde el terreno, o anote la altura del ademe."))
        .from(List.of(aside.entry()));
  }
}
