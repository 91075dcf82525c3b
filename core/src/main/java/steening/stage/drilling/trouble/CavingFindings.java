package steening.stage.drilling.trouble;

import static steening.stage.drilling.DrillingFindings.depth;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Outcome;
import steening.stage.drilling.Drilling;
import steening.stage.drilling.DrillingFold;
import steening.stage.drilling.DrillingStage;
import steening.well.CasingString;
import steening.well.Hole;
import steening.well.Well;

/** Fill on connections: walls that fall in, seen before the casing cannot be lowered. */
final class CavingFindings {
  /** Cuttings settle this much while a rod is added. Common practice, no source. */
  private static final Length SETTLED = Length.of(0.5, Unit.FOOT);

  /** Shovelled out, over what the bit cut; a judgement, no source. */
  private static final double MUCH_MORE = 1.25;

  private CavingFindings() {}

  static List<Finding> of(Well well) {
    List<Troubles.Fill> fills = well.get(Troubles.PART).fills();
    boolean lowered = !well.get(CasingString.PART).pieces().isEmpty();
    List<Finding> findings = new ArrayList<>();
    if (fills.isEmpty() || lowered) return findings;
    Troubles.Fill last = fills.get(fills.size() - 1);
    Optional<Outcome> reckoned = reckoned(well, last);
    if (SETTLED.isLessThan(Length.ZERO.minus(last.height()))) findings.add(below(last));
    if (last.height().isMoreThan(SETTLED)) findings.add(filled(well, fills, reckoned));
    reckoned.flatMap(o -> excess(last, o)).ifPresent(findings::add);
    return findings;
  }

  /** Nothing where no bit is known, or where the fill is tagged below the hole. */
  static Optional<Outcome> reckoned(Well well, Troubles.Fill fill) {
    Optional<Length> bit = well.get(Drilling.PART).rig().map(Drilling.Rig::bit)
        .or(() -> well.get(Hole.PART).bore().reaches().stream().reduce((a, b) -> b).map(r -> r.diameter()));
    return bit.flatMap(
        b -> Outcome.ifReckonable(() -> HoleFill.of(fill.hole(), fill.tagged(), b, fill.shovelled())));
  }

  /** Drilled through since, it is still to be remembered before the rods come out. */
  private static Finding filled(Well well, List<Troubles.Fill> fills, Optional<Outcome> reckoned) {
    Troubles.Fill last = fills.get(fills.size() - 1);
    boolean drilledOn = DrillingFold.depthSoFar(well).isMoreThan(last.hole());
    Finding finding = Finding.of(
            "drilling.fill", drilledOn ? Weight.NOTE : Weight.LOOK, DrillingStage.NAME,
            Phrase.of(
                "{0} of fill: tagged at {1} with the hole at {2}.",
                "{0} de relleno: tocado a {1} con el barreno a {2}.",
                depth(last.height()), depth(last.tagged()), depth(last.hole())))
        .comparing(depth(last.tagged()), depth(last.hole()))
        .because(cause(fills))
        .so(Phrase.of(
            "Raise the mud's viscosity and keep the hole full to the top before tripping; then clean out and tag"
                + " again.",
            "Suba la viscosidad y mantenga lleno el barreno antes de sacar la tubería; luego limpie y toque otra vez."))
        .from(fills.stream().map(Troubles.Fill::entry).toList());
    return reckoned.map(finding::shownBy).orElse(finding);
  }

  private static Phrase cause(List<Troubles.Fill> fills) {
    Troubles.Fill last = fills.get(fills.size() - 1);
    if (fills.size() > 1 && last.height().isMoreThan(fills.get(fills.size() - 2).height())) {
      return Phrase.of(
          "The walls cave, and it grows: {0} the time before.", "Las paredes se derrumban, y va en aumento: {0} la vez"
              + " anterior.", depth(fills.get(fills.size() - 2).height().max(Length.ZERO)));
    }
    return Phrase.of(
        "The walls cave, or cuttings settle in thin mud.",
        "Las paredes se derrumban, o los recortes se asientan en lodo delgado.");
  }

  private static Optional<Finding> excess(Troubles.Fill last, Outcome reckoned) {
    boolean much = reckoned.answers().containsKey(HoleFill.RATIO.name())
        && reckoned.quantity(HoleFill.RATIO.name()).coherent() > MUCH_MORE;
    if (!much) return Optional.empty();
    Figure shovelled = new Figure(last.shovelled().orElseThrow(), Scale.VOLUME);
    Figure due = reckoned.figure(HoleFill.DUE.name());
    return Optional.of(Finding.of(
            "drilling.cuttings-excess", Weight.LOOK, DrillingStage.NAME,
            Phrase.of(
                "{0} of cuttings were shovelled out; a hole of {1} gives about {2}.",
                "Se sacaron {0} de recortes; un barreno de {1} da unos {2}.", shovelled, depth(last.hole()), due))
        .comparing(shovelled, due)
        .because(Phrase.of(
            "The hole is wider than its bit: it caves or washes out.",
            "El barreno es más ancho que la barrena: se derrumba o se socava."))
        .so(Phrase.of(
            "Thicken the mud and slow the pump; count on more pack and grout.",
            "Espese el lodo y baje la bomba; cuente con más filtro y lechada."))
        .shownBy(reckoned)
        .from(List.of(last.entry())));
  }

  private static Finding below(Troubles.Fill last) {
    return Finding.of(
            "drilling.tag-below-hole", Weight.LOOK, DrillingStage.NAME,
            Phrase.of(
                "Fill is tagged at {0}, below the hole's depth of {1}.",
                "El relleno se tocó a {0}, por debajo de los {1} del barreno.",
                depth(last.tagged()), depth(last.hole())))
        .comparing(depth(last.tagged()), depth(last.hole()))
        .so(Phrase.of("Count the rods; correct the one that is wrong.",
        "Cuente los tubos; corrija el dato equivocado."))
        .from(List.of(last.entry()));
  }
}
