package steening.stage.drilling;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.language.Phrase;
import steening.quantity.Density;
import steening.quantity.Dimension;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Outcome;
import steening.well.Well;

/** The mud as last read, and every fall of the pit that the hole does not explain. */
final class MudFindings {
  /** Practice of drilling manuals; from memory. A flowing well needs more. */
  private static final Density HEAVY = Density.of(9.0, Unit.POUND_PER_GALLON);

  /** Practice of drilling manuals; from memory. */
  private static final Quantity SANDY = new Measure(Dimension.NUMBER, 0.02);

  /** A pit is read to about this. Common practice, no source. */
  private static final Length READS = Length.of(2, Unit.INCH);

  /** The reading may stand before the rod it was taken after. Common practice, no source. */
  private static final Length A_ROD = Length.feet(20);

  private MudFindings() {}

  static List<Finding> of(Well well) {
    List<Drilling.Mud> muds = well.get(Drilling.PART).muds();
    List<Finding> findings = new ArrayList<>();
    if (muds.isEmpty()) return findings;
    heavy(muds.get(muds.size() - 1)).ifPresent(findings::add);
    muds.stream().filter(m -> m.sand().isPresent()).reduce((a, b) -> b).flatMap(MudFindings::sandy)
        .ifPresent(findings::add);
    Length before = Length.ZERO;
    for (Drilling.Mud mud : muds) {
      lost(well.get(Drilling.PART), before, mud).ifPresent(findings::add);
      before = mud.depth();
    }
    return findings;
  }

  private static Optional<Finding> heavy(Drilling.Mud mud) {
    if (mud.weight().coherent() <= HEAVY.coherent()) return Optional.empty();
    Figure measured = new Figure(mud.weight(), Scale.DENSITY);
    Figure most = new Figure(HEAVY, Scale.DENSITY);
    return Optional.of(Finding.of(
            "drilling.mud-heavy", Weight.LOOK, DrillingStage.NAME,
            Phrase.of(
                "The mud weighs {0}; up to {1} is usual.", "El lodo pesa {0}; lo usual es hasta {1}.", measured, most))
        .comparing(measured, most)
        .because(Phrase.of(
            "Drilled solids in the mud, unless it was weighted on purpose.",
            "Sólidos perforados en el lodo, salvo que se haya densificado a propósito."))
        .so(Phrase.of(
            "Clean the pit or thin with clean water; not where the well may flow.",
            "Limpie la fosa o adelgace con agua limpia; no donde el pozo pueda ser surgente."))
        .from(List.of(mud.entry())));
  }

  private static Optional<Finding> sandy(Drilling.Mud mud) {
    Measure sand = mud.sand().orElseThrow();
    if (sand.coherent() <= SANDY.coherent()) return Optional.empty();
    Figure measured = new Figure(sand, Scale.SHARE);
    Figure most = new Figure(SANDY, Scale.SHARE);
    return Optional.of(Finding.of(
            "drilling.mud-sandy", Weight.LOOK, DrillingStage.NAME,
            Phrase.of(
                "The mud carries {0} sand; at most {1} is advised.",
                "El lodo lleva {0} de arena; se aconseja {1} a lo más.", measured, most))
        .comparing(measured, most)
        .because(Phrase.of("The pit is too small, or full.", "La fosa es muy chica o está llena."))
        .so(Phrase.of(
            "Shovel out the pit: sand wears the pump and plugs the aquifer.",
            "Limpie la fosa: la arena desgasta la bomba y tapa el acuífero."))
        .from(List.of(mud.entry())));
  }

  private static Optional<Finding> lost(Drilling drilling, Length before, Drilling.Mud mud) {
    Length fell = mud.pitDrop().orElse(Length.ZERO);
    boolean comparable = drilling.rig().isPresent() && mud.depth().isMoreThan(Length.ZERO);
    if (!comparable || !fell.isMoreThan(READS)) return Optional.empty();
    Drilling.Rig rig = drilling.rig().get();
    Outcome explained = PitFall.of(rig.bit(), rig.pitArea(), before.min(mud.depth()), mud.depth().plus(A_ROD));
    Length expected = (Length) explained.quantity("fall");
    if (!fell.minus(expected).isMoreThan(READS)) return Optional.empty();
    Outcome working = rig.pitArea().map(area -> PitFall.lost(explained, fell, area)).orElse(explained);
    Figure measured = new Figure(fell, Scale.DIAMETER);
    return Optional.of(Finding.of(
            "drilling.lost-circulation", Weight.LOOK, DrillingStage.NAME,
            Phrase.of(
                "The mud pit fell {0}; the hole drilled since then, and a rod more, explain {1} at most.",
                "La fosa bajó {0}; el barreno perforado desde entonces, y un tubo más, explican {1} a lo más.",
                measured, explained.figure("fall")))
        .comparing(measured, explained.figure("fall"))
        .because(Phrase.of("Mud is going into the ground.", "El lodo se está yendo al terreno."))
        .so(Phrase.of(
            "Keep the hole full. Write down the depth, the rate of loss and what you added.",
            "Mantenga lleno el barreno. Anote la profundidad, la pérdida y lo que agregó."))
        .shownBy(working)
        .from(List.of(mud.entry())));
  }
}
