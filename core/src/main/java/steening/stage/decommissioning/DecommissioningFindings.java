package steening.stage.decommissioning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.journal.Dates;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.well.MovedOver;
import steening.well.Plugs;
import steening.well.Well;

/** Holes that are open and should not be, and plugs that are not what they were meant to be. */
final class DecommissioningFindings {
  private DecommissioningFindings() {}

  static List<Finding> of(Well well) {
    List<Finding> findings = new ArrayList<>();
    for (Plugging plugging : Plugging.all(well)) {
      open(plugging).ifPresent(findings::add);
      findings.addAll(ClosingFindings.of(plugging));
      findings.addAll(PlaceFindings.of(plugging));
      findings.addAll(TapeFindings.of(plugging));
      findings.addAll(MaterialFindings.of(plugging));
    }
    List<Well> holes = new ArrayList<>(well.earlier());
    holes.add(well);
    for (Well hole : holes) for (Plugs.Misfit m : hole.get(Plugs.PART).misfits()) findings.add(misfit(well, m));
    return findings;
  }

  static Figure depth(Length depth) {
    return new Figure(depth, Scale.DEPTH);
  }

  private static Optional<Finding> open(Plugging plugging) {
    if (plugging.isDone()) return Optional.empty();
    Figure bottom = depth(plugging.bottom());
    List<Plugging.Stretch> open = plugging.open();
    if (!plugging.plugs().isBegun() || plugging.plugs().plugs().isEmpty()) {
      Optional<MovedOver> away = plugging.hole().get(MovedOver.AWAY);
      Phrase text = away.map(moved -> Phrase.of(
              "Hole {0}, {1} deep, was given up on {2} and is not plugged.",
              "El barreno {0}, de {1}, se abandonó el {2} y no está sellado.",
              plugging.number(), depth(moved.depth()), Dates.format(moved.at().date())))
          .orElse(Phrase.of(
              "Hole {0}, {1} deep, is to be closed and has no plug yet.",
              "El barreno {0}, de {1}, se va a cerrar y aún no tiene tapón.", plugging.number(), bottom));
      return Optional.of(Finding.of("decommissioning.open-hole", Weight.LOOK, DecommissioningStage.NAME, text)
          .because(Phrase.of(
              "An open hole swallows children and animals, and leads dirty water down.",
              "Un barreno abierto traga niños y animales, y lleva agua sucia abajo."))
          .so(Phrase.of(
              "Cover it now. Plug it from the bottom before the rig leaves; your local code says how and how soon.",
              "Tápelo ya. Séllelo desde el fondo antes de irse; su norma local dice cómo y cuándo."))
          .from(away.map(m -> List.of(m.entry())).orElse(List.of())));
    }
    if (open.isEmpty()) return Optional.empty();
    Plugging.Stretch first = open.get(0);
    return Optional.of(Finding.of("decommissioning.still-open", Weight.LOOK, DecommissioningStage.NAME, Phrase.of(
            "Hole {0} is still open from {1} up to {2}.", "El barreno {0} sigue abierto de {1} a {2}.",
            plugging.number(), depth(first.to()), depth(first.from())))
        .comparing(depth(first.to()), depth(first.from()))
        .so(Phrase.of(
            "Fill it from below, and sound the top again.", "Llénelo desde abajo y sondee de nuevo el tope.")));
  }

  private static Finding misfit(Well well, Plugs.Misfit misfit) {
    Finding finding = misfit.isUpsideDown()
        ? look("upside-down", Phrase.of(
            "Plug from {0} to {1}: the bottom is not below the top, so this was left out.",
            "Tapón de {0} a {1}: el fondo no está bajo el tope, así que no se tomó en cuenta.",
            depth(misfit.from()), depth(misfit.to())))
        : look("no-such-hole", Phrase.of(
            "Hole {0} was plugged, but this job has only {1}.", "Se selló el barreno {0}, pero este trabajo tiene {1}.",
            Integer.toString(misfit.hole()), Integer.toString(well.number())));
    return finding.so(Phrase.of("Correct the entry.", "Corrija el registro.")).from(List.of(misfit.entry()));
  }

  static Finding look(String what, Phrase text) {
    return Finding.of("decommissioning." + what, Weight.LOOK, DecommissioningStage.NAME, text);
  }
}
