package steening.stage.drilling.start;

import java.util.List;
import java.util.Optional;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Scale;
import steening.quantity.Volume;
import steening.reckoning.Outcome;
import steening.stage.drilling.Drilling;
import steening.stage.drilling.DrillingStage;
import steening.stage.drilling.fluid.PitVolume;
import steening.well.Plan;
import steening.well.Well;

/** A pit that does not hold twice the planned hole: it carries sand round and may run over. */
final class PitSize {
  private PitSize() {}

  /** Nothing where the pit was not measured, or no hole is planned. */
  static Optional<Finding> of(Well well) {
    Plan plan = well.get(Plan.PART);
    Optional<Drilling.Rig> rig = well.get(Drilling.PART).rig();
    Optional<Volume> holds = rig.flatMap(r -> r.pitArea().flatMap(
        area -> r.pitDepth().map(depth -> new Volume(area.coherent() * depth.coherent()))));
    if (holds.isEmpty() || plan.hole().isEmpty() || plan.length(Plan.DEPTH).isEmpty()) return Optional.empty();
    return Outcome.ifReckonable(() -> PitVolume.of(plan.hole(), plan.length(Plan.DEPTH).get()))
        .filter(needed -> holds.get().coherent() < needed.quantity("pit").coherent())
        .map(needed -> finding(rig.get(), new Figure(holds.get(), Scale.LIQUID), needed));
  }

  private static Finding finding(Drilling.Rig rig, Figure holds, Outcome needed) {
    return Finding.of(
            "drilling.pit-small", Weight.LOOK, DrillingStage.NAME,
            Phrase.of(
                "The mud pit holds {0}; the planned hole asks for {1} at least, twice its volume.",
                "La fosa tiene {0}; el barreno planeado pide {1} por lo menos, dos veces su volumen.",
                holds, needed.figure("pit")))
        .comparing(holds, needed.figure("pit"))
        .because(Phrase.of(
            "In a small pit sand does not settle: it goes round, wears the pump and plugs the aquifer.",
            "En una fosa chica la arena no se asienta: da vueltas, gasta la bomba y tapa el acuífero."))
        .so(Phrase.of(
            "Set a second pit or tank, or shovel out at every rod.",
            "Ponga otra fosa o tanque, o límpiela en cada tubo."))
        .shownBy(needed)
        .from(List.of(rig.entry()));
  }
}
