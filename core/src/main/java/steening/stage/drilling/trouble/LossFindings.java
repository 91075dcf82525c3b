package steening.stage.drilling.trouble;

import static steening.stage.drilling.DrillingFindings.depth;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.language.Phrase;
import steening.quantity.Length;
import steening.reckoning.Outcome;
import steening.stage.drilling.Drilling;
import steening.stage.drilling.DrillingFold;
import steening.stage.drilling.DrillingStage;
import steening.well.Fill;
import steening.well.Losses;
import steening.well.Well;

/** Mud that went into the ground, as the driller wrote it down; remembered until the grout goes in. */
final class LossFindings {
  /** The entry may stand before its rod. Common practice, no source. */
  private static final Length A_ROD = Length.feet(20);

  private LossFindings() {}

  static List<Finding> of(Well well) {
    List<Finding> findings = new ArrayList<>();
    Length deepest = DrillingFold.depthSoFar(well);
    boolean grouted = well.get(Fill.GROUT).isBegun();
    for (Losses.Zone zone : well.get(Losses.PART).zones()) {
      if (deepest.isMoreThan(Length.ZERO) && zone.to().isMoreThan(deepest.plus(A_ROD))) {
        findings.add(below(zone, deepest));
      } else if (!grouted) {
        findings.add(lost(well, zone));
      }
    }
    return findings;
  }

  /** Rate and share of the pump, as far as the entry and the rig tell. */
  static Optional<Outcome> rate(Well well, Losses.Zone zone) {
    return CirculationLoss.of(zone.rate(), zone.share(), TroubleFold.rig(well).map(Drilling.Rig::pumpRate));
  }

  private static Finding lost(Well well, Losses.Zone zone) {
    boolean back = zone.cameBack().orElse(false);
    Optional<Outcome> rate = rate(well, zone);
    Finding finding = Finding.of(
            "drilling.circulation-lost", back ? Weight.NOTE : Weight.LOOK, DrillingStage.NAME,
            rate.map(r -> measured(zone, r)).orElseGet(() -> Phrase.of(
                "Mud was lost at {0} to {1}; how fast is not written down.",
                "Se perdió lodo de {0} a {1}; no se anotó cuánto.", depth(zone.from()), depth(zone.to()))))
        .because(Phrase.of(
            "Open gravel, a crack, or mud too heavy for the ground; the hole may be washed out there.",
            "Grava abierta, una grieta, o lodo muy pesado para el terreno; ahí puede estar socavado."))
        .so(back ? later() : Remedy.after(zone.tried()))
        .from(List.of(zone.entry()));
    return rate.map(finding::shownBy).orElse(finding);
  }

  private static Phrase measured(Losses.Zone zone, Outcome rate) {
    return Phrase.of(
        "Mud lost at {0} to {1}: {2}, which is {3} of the pump rate.",
        "Lodo perdido de {0} a {1}: {2}, o sea {3} del gasto de la bomba.",
        depth(zone.from()), depth(zone.to()), rate.figure("loss-rate"), rate.figure("share"));
  }

  private static Phrase later() {
    return Phrase.of(
        "It came back. Expect pack and grout to take more than reckoned there: have bags to spare, and sound often.",
        "Volvió. Ahí el filtro y la lechada pueden llevar más de lo calculado: tenga sacos de sobra y sondee seguido.");
  }

  private static Finding below(Losses.Zone zone, Length deepest) {
    return Finding.of(
            "drilling.loss-below-hole", Weight.LOOK, DrillingStage.NAME,
            Phrase.of(
                "Mud is said to be lost at {0} to {1}, but the hole is {2} deep.",
                "Según el registro se perdió lodo de {0} a {1}, pero el barreno tiene {2}.",
                depth(zone.from()), depth(zone.to()), depth(deepest)))
        .comparing(depth(zone.to()), depth(deepest))
        .so(Phrase.of("Correct the depth of the loss.", "Corrija la profundidad de la pérdida."))
        .from(List.of(zone.entry()));
  }
}
