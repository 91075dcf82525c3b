package steening.stage.drilling.fluid;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.language.Phrase;
import steening.pipe.Buoyancy;
import steening.quantity.Density;
import steening.quantity.Dimension;
import steening.quantity.Figure;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.stage.drilling.Drilling;
import steening.stage.drilling.DrillingStage;
import steening.well.Well;

/** The mud as last read. */
public final class MudFindings {
  /** Practice of drilling manuals; from memory. A flowing well needs more. */
  private static final Density HEAVY = Density.of(9.0, Unit.POUND_PER_GALLON);

  /** Practice of drilling manuals; from memory. */
  private static final Quantity SANDY = new Measure(Dimension.NUMBER, 0.02);

  /** Sand that settles on the screen; common practice, from memory. */
  private static final Quantity SEALING = new Measure(Dimension.NUMBER, 0.04);

  /** A mud balance reads to 0.1 lb/gal (published construction tables, seen). */
  private static final Density BALANCE = Density.of(0.1, Unit.POUND_PER_GALLON);

  private MudFindings() {}

  public static List<Finding> of(Well well) {
    List<Drilling.Mud> muds = well.get(Drilling.PART).muds();
    List<Finding> findings = new ArrayList<>();
    FlowFindings.of(well).ifPresent(findings::add);
    if (muds.isEmpty()) return findings;
    heavy(well, muds.get(muds.size() - 1)).ifPresent(findings::add);
    belowWater(muds.get(muds.size() - 1)).ifPresent(findings::add);
    muds.stream().filter(m -> m.funnel().isPresent()).reduce((a, b) -> b).flatMap(mud -> FunnelFindings.of(well, mud))
        .ifPresent(findings::add);
    muds.stream().filter(m -> m.sand().isPresent()).reduce((a, b) -> b).flatMap(mud -> sandy(well, mud))
        .ifPresent(findings::add);
    findings.addAll(KickFindings.of(well));
    findings.addAll(PitFindings.of(well));
    return findings;
  }

  /** Weight that holds a head back is not too much. */
  private static Optional<Finding> heavy(Well well, Drilling.Mud mud) {
    Quantity needed = FlowingHead.balance(well, mud).map(o -> o.quantity("with-margin")).orElse(HEAVY);
    Quantity allowed = needed.coherent() > HEAVY.coherent() ? needed : HEAVY;
    if (mud.weight().coherent() <= allowed.coherent()) return Optional.empty();
    Figure measured = new Figure(mud.weight(), Scale.DENSITY);
    Figure most = new Figure(allowed, Scale.DENSITY);
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

  private static Optional<Finding> sandy(Well well, Drilling.Mud mud) {
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
        .so(sand.coherent() > SEALING.coherent() && FunnelFindings.isDrilled(well) ? screenNext() : Phrase.of(
            "Shovel out the pit: sand wears the pump and plugs the aquifer.",
            "Limpie la fosa: la arena desgasta la bomba y tapa el acuífero."))
        .from(List.of(mud.entry())));
  }

  private static Phrase screenNext() {
    return Phrase.of(
        "Above {0} it settles on the screen and in the pack: clean the pit, thin the mud and circulate until it is"
            + " clean, before the screen goes in; not thin where the well may flow.",
        "Con más de {0} se asienta en la rejilla y en el filtro: limpie la fosa, adelgace el lodo y circule hasta que"
            + " salga limpio, antes de bajar la rejilla; no adelgace donde el pozo pueda fluir.",
        new Figure(SEALING, Scale.SHARE));
  }

  private static Optional<Finding> belowWater(Drilling.Mud mud) {
    if (mud.weight().coherent() >= Buoyancy.WATER.coherent() - BALANCE.coherent()) return Optional.empty();
    Figure measured = new Figure(mud.weight(), Scale.DENSITY);
    Figure water = new Figure(Buoyancy.WATER, Scale.DENSITY);
    return Optional.of(Finding.of(
            "drilling.mud-below-water", Weight.LOOK, DrillingStage.NAME,
            Phrase.of(
                "The mud is entered as {0}; water alone weighs {1}.",
                "El lodo está registrado con {0}; el agua sola pesa"
                    + " {1}.", measured, water))
        .comparing(measured, water)
        .because(Phrase.of("The balance is off, or the mud full of air.", "La balanza está mal, o el lodo lleva aire."))
        .so(Phrase.of(
            "Check the balance with clean water, let the mud stand, and weigh again.",
            "Revise la balanza con agua limpia, deje reposar el lodo y pese otra vez."))
        .from(List.of(mud.entry())));
  }
}
